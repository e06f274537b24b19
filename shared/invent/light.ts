import { CHROMATICITY, type Emitter, type Programme, type StaticColour } from '../profile/index.ts';
import type { Random } from '../random/index.ts';
import type { ColourId, Making, ProgrammeId } from './types.ts';
import type { Wordbook } from './wordbook.ts';

/** Lumens a watt of each colour of emitter: round figures of the kind (from memory), which an invention scatters about. */
const LUMENS_A_WATT: Readonly<Record<string, number>> = Object.freeze({
	red: 28,
	green: 47,
	blue: 8.6,
	amber: 24,
	white: 60,
	'warm-white': 52,
	'cool-white': 62,
	lime: 55,
	cyan: 40,
});

/** An eye sees next to nothing of it, whatever it draws: as good as a figure may be that is only told (from memory). */
const ULTRAVIOLET_LUMENS = 0.4;

type Levels = Readonly<Record<string, number>>;

/** Ways to mix each static colour, the first whose emitters are there is taken. */
const MIXES: Readonly<Record<ColourId, readonly Levels[]>> = Object.freeze({
	red: [{ red: 255 }],
	green: [{ green: 255 }],
	blue: [{ blue: 255 }],
	amber: [{ amber: 255 }, { red: 255, green: 90 }],
	yellow: [{ red: 230, green: 240 }],
	orange: [
		{ red: 255, amber: 120 },
		{ red: 255, green: 55 },
	],
	cyan: [{ cyan: 255 }, { green: 240, blue: 130 }],
	turquoise: [{ green: 210, blue: 70 }],
	magenta: [{ red: 250, blue: 240 }],
	pink: [
		{ red: 255, blue: 90, white: 70 },
		{ red: 255, green: 60, blue: 110 },
	],
	violet: [{ red: 105, blue: 255 }],
	white: [{ white: 255 }, { 'warm-white': 200, 'cool-white': 200 }, { red: 215, green: 245, blue: 115 }],
	'warm-white': [{ 'warm-white': 255 }, { white: 150, amber: 240 }, { red: 255, green: 160, blue: 35 }],
	'cool-white': [{ 'cool-white': 255 }, { white: 240, blue: 60 }, { red: 170, green: 240, blue: 170 }],
	ultraviolet: [{ ultraviolet: 255 }],
});

/** Programmes that need no microphone, and those that do. */
const PLAIN: readonly ProgrammeId[] = ['change', 'fade', 'pulse', 'strobe'];
const SOUND: readonly ProgrammeId[] = ['step', 'swell', 'flash', 'run'];

/** Seconds a step, slowest and fastest, from least to most of each. */
const PACES: Readonly<Record<'change' | 'fade' | 'pulse' | 'strobe' | 'sound', readonly [number, number][]>> =
	Object.freeze({
		change: [
			[12, 0.3],
			[20, 0.5],
			[32, 0.8],
		],
		fade: [
			[30, 0.8],
			[55, 1.2],
			[90, 2],
		],
		pulse: [
			[8, 0.4],
			[10, 0.5],
			[14, 0.8],
		],
		strobe: [
			[1, 0.08],
			[1, 0.1],
			[0.8, 0.07],
		],
		sound: [
			[2, 0.2],
			[2, 0.3],
			[1.5, 0.2],
		],
	});

/** What a fixture has to give light with. */
export interface InventedLight {
	readonly emitters: readonly Emitter[];
	readonly held: readonly StaticColour[];
	readonly programmes: readonly Programme[];
	readonly microphone: boolean;
}

/** Emitters, static colours of them, and programmes of those. */
export function inventLight({ level, law, random, names }: Making, words: Wordbook): InventedLight {
	const lit = emitterIds(random.fork('emitters'), level === 'easy', law === 'dip');
	const watts = random.int(5, 28);
	const emitters = lit.map((id): Emitter => {
		const own = Math.max(3, watts + random.int(-2, 2));
		const lumens = own * (LUMENS_A_WATT[id] ?? 1) * (0.85 + 0.3 * random.next());
		const [x = 0, y = 0] = CHROMATICITY[id] ?? [];
		return {
			id,
			name: names.emitters[id] ?? id,
			xy: [x, y],
			lumens: id === 'ultraviolet' ? ULTRAVIOLET_LUMENS : Math.round(lumens),
			watts: own,
			ultraviolet: id === 'ultraviolet',
		};
	});
	const colours = (Object.keys(MIXES) as ColourId[]).filter((id) => mixOf(id, lit) !== null);
	const microphone = law === 'dip' || random.chance(0.75);
	const counts = countsOf({ level, law, random, colours: colours.length, microphone });
	const held = staticIds(random.fork('held'), colours, lit, counts.held).map(
		(id): StaticColour => ({
			id,
			name: words.text(`held.${id}`).toLowerCase(),
			levels: scattered(random.fork(`mix ${id}`), mixOf(id, lit) ?? {}),
		}),
	);
	const some = random.fork('programmes');
	const sound = microphone ? some.shuffle(SOUND).slice(0, counts.sound) : [];
	const chosen = [...some.shuffle(PLAIN).slice(0, counts.programmes - sound.length), ...sound];
	const programmes = (level === 'easy' ? chosen : some.shuffle(chosen)).map((id) =>
		programme(some.fork(id), id, held, words),
	);
	return { emitters, held, programmes, microphone };
}

/** Which colours it mixes: red, green and blue with some more, or only whites. */
function emitterIds(random: Random, isPlain: boolean, hasMany: boolean): string[] {
	if (!hasMany && random.chance(0.08)) return ['warm-white', 'cool-white', ...(random.chance(0.5) ? ['amber'] : [])];
	const white = random.pick(['white', 'white', 'warm-white', 'cool-white']);
	const more = random.shuffle([white, 'amber', 'lime', 'cyan', 'ultraviolet']);
	return ['red', 'green', 'blue', ...more.slice(0, isPlain ? random.int(0, 1) : random.int(0, 3))];
}

/** Levels of a colour with these emitters; null where they do not make it. */
const mixOf = (id: ColourId, lit: readonly string[]): Levels | null =>
	MIXES[id].find((levels) => Object.keys(levels).every((each) => lit.includes(each))) ?? null;

/** A mix a little off, as makers' differ; a single emitter stays full. */
const scattered = (random: Random, levels: Levels): Record<string, number> =>
	Object.fromEntries(
		Object.entries(levels).map(([id, level]) => [
			id,
			Object.keys(levels).length === 1 ? level : Math.min(255, Math.max(20, level + random.int(-18, 18))),
		]),
	);

/** Colours to choose from: one of ultraviolet among them where the fixture has it, so that its caution has something to go with. */
function staticIds(random: Random, colours: readonly ColourId[], lit: readonly string[], count: number): ColourId[] {
	const first: ColourId[] = lit.includes('ultraviolet') ? ['ultraviolet'] : [];
	const others = random.shuffle(colours.filter((id) => !first.includes(id)));
	return random.shuffle([...first, ...others].slice(0, count));
}

interface Counting extends Pick<Making, 'level' | 'law' | 'random'> {
	readonly colours: number;
	readonly microphone: boolean;
}

/** How many of each: by DIP switches as many as some of them can say, with one more to follow a leader. */
function countsOf({ level, law, random, colours, microphone }: Counting): {
	held: number;
	programmes: number;
	sound: number;
} {
	if (law === 'dip') {
		if (level === 'easy' || colours < 10) return { held: 4, programmes: 3, sound: 1 };
		const programmes = random.int(5, 7);
		return { held: 15 - programmes, programmes, sound: programmes - 4 };
	}
	const sound = microphone ? random.int(1, level === 'easy' ? 1 : 4) : 0;
	const held = Math.min(colours, level === 'easy' ? random.int(4, 6) : random.int(5, 11));
	return { held, programmes: random.int(2, 4) + sound, sound };
}

function programme(random: Random, id: ProgrammeId, held: readonly StaticColour[], words: Wordbook): Programme {
	const isSound = SOUND.includes(id);
	const kind = isSound ? 'sound' : (id as 'change' | 'fade' | 'pulse' | 'strobe');
	const least = id === 'change' || id === 'fade' ? 3 : 1;
	const most = id === 'strobe' || id === 'flash' ? 1 : 6;
	const plain = held.filter(({ levels }) => levels['ultraviolet'] === undefined);
	const colours = random.shuffle(plain).slice(0, random.int(least, Math.max(least, most)));
	const [slowest, fastest] = random.pick(PACES[kind]);
	return {
		id,
		name: words.text(`programme.${id}`),
		kind,
		...(isSound ? { answer: id as 'step' | 'swell' | 'flash' | 'run' } : {}),
		colours: colours.map((each) => each.id),
		slowest,
		fastest,
	};
}
