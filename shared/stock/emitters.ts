import { CHROMATICITY, type Emitter, ULTRAVIOLET } from '../profile/index.ts';

/** Usual emitters. Permanent. */
export type EmitterId =
	| 'red'
	| 'green'
	| 'blue'
	| 'amber'
	| 'white'
	| 'warm-white'
	| 'cool-white'
	| 'lime'
	| 'cyan'
	| 'ultraviolet';

/** A usual emitter: how a chart names it, and lumens for each watt (round figures, common practice). */
interface Usual {
	readonly id: EmitterId;
	readonly pattern: RegExp;
	readonly lumensAWatt: number;
}

/** The more particular name before the plainer one: `warm white` before `white`. */
const USUAL: readonly Usual[] = [
	{ id: 'warm-white', pattern: /\bwarm(?:[ -]?white)?\b|\bww\b/i, lumensAWatt: 80 },
	{ id: 'cool-white', pattern: /\b(?:cool|cold)(?:[ -]?white)?\b|\bcw\b/i, lumensAWatt: 90 },
	{ id: 'ultraviolet', pattern: ULTRAVIOLET, lumensAWatt: 0.05 },
	{ id: 'white', pattern: /\bwhite\b/i, lumensAWatt: 90 },
	{ id: 'red', pattern: /\bred\b/i, lumensAWatt: 30 },
	{ id: 'green', pattern: /\bgreen\b/i, lumensAWatt: 50 },
	{ id: 'blue', pattern: /\bblue\b/i, lumensAWatt: 10 },
	{ id: 'amber', pattern: /\bamber\b/i, lumensAWatt: 25 },
	{ id: 'lime', pattern: /\blime\b/i, lumensAWatt: 90 },
	{ id: 'cyan', pattern: /\bcyan\b/i, lumensAWatt: 40 },
];

/** The emitter that a slot's name speaks of; null where it names none, or more than one. */
export function emitterIn(name: string): EmitterId | null {
	const found = USUAL.filter(({ pattern }) => pattern.test(name));
	const [first, second] = found;
	// `warm white` speaks of white as well
	const isOne = first && (!second || (second.id === 'white' && found.length === 2 && /white$/.test(first.id)));
	return isOne ? first.id : null;
}

/** Emitters by id, all figures assumed: each draws the same share of the watts, and gives what its like does. */
export function emittersFrom(
	ids: readonly EmitterId[],
	names: Readonly<Record<EmitterId, string>>,
	watts: number,
	lumens: number | null,
): Emitter[] {
	const each = watts / ids.length;
	const usual = USUAL.filter(({ id }) => ids.includes(id));
	const sum = usual.reduce((total, { lumensAWatt }) => total + lumensAWatt * each, 0);
	return usual.map(({ id, lumensAWatt }) => {
		const [x, y] = CHROMATICITY[id] as readonly [number, number];
		const flux = (lumensAWatt * each * (lumens ?? sum)) / sum;
		return {
			id,
			name: names[id],
			xy: [x, y],
			lumens: round(flux),
			watts: round(each),
			ultraviolet: id === 'ultraviolet',
		};
	});
}

const round = (amount: number): number => Math.round(amount * 100) / 100;

/** Levels of red, green, blue, white and amber that make a named colour, where no emitter of that name is there. */
const MIXES: readonly (readonly [RegExp, Readonly<Record<string, number>>])[] = [
	[/\bwarm\b/i, { red: 255, green: 150, blue: 50 }],
	[/\b(?:cool|cold)\b/i, { red: 200, green: 220, blue: 255 }],
	[/\bwhite\b/i, { red: 255, green: 220, blue: 200 }],
	[/\byellow\b/i, { red: 255, green: 200 }],
	[/\borange\b/i, { red: 255, green: 80 }],
	[/\bamber\b|\bgold\b/i, { red: 255, green: 120 }],
	[/\bcyan\b|\bturquoise\b/i, { green: 220, blue: 200 }],
	[/\bmagenta\b|\bpink\b|\brose\b/i, { red: 255, blue: 150 }],
	[/\bpurple\b|\bviolet\b|\blavender\b|\bindigo\b/i, { red: 110, blue: 255 }],
	[/\blime\b/i, { red: 160, green: 255 }],
];

/** Levels that make the colour a band is named for; null where it names none, or the emitters cannot make it. */
export function mixFor(words: string, ids: readonly string[]): Record<string, number> | null {
	const own = emitterIn(words);
	if (own && ids.includes(own)) return { [own]: 255 };
	const white = ids.find((id) => id.endsWith('white'));
	const [, mix] = MIXES.find(([pattern]) => pattern.test(words)) ?? [];
	if (!mix) return null;
	if (/white|warm|cool|cold/i.test(words) && white) return { [white]: 255 };
	const has = Object.keys(mix).every((id) => ids.includes(id));
	return has ? mix : null;
}
