import type { Colour } from './values.ts';

/**
 * Attributes of the standard (DIN SPEC 15800, annexes A and B, read) that a profile has a counterpart for. Case does not count in
 * their names; a number in them says which of several alike.
 */
export type Role =
	| { readonly is: 'intensity' | 'speed' | 'shutter' | 'strobe' | 'colour' | 'nothing' | 'other' }
	| { readonly is: 'emitter'; readonly primary: Primary };

/** The standard's emitters. Words for each are in `content/`. */
export type PrimaryId =
	| 'red'
	| 'green'
	| 'blue'
	| 'cyan'
	| 'magenta'
	| 'yellow'
	| 'amber'
	| 'lime'
	| 'blue-green'
	| 'light-blue'
	| 'purple'
	| 'pink'
	| 'white'
	| 'warm-white'
	| 'cool-white'
	| 'ultraviolet';

/** An emitter as the standard has it where the file does not say: which it is, and its colour with Y of white 100. */
export interface Primary {
	readonly attribute: string;
	readonly id: PrimaryId;
	readonly colour: Colour;
	readonly isUltraviolet: boolean;
}

const primary = (attribute: string, id: PrimaryId, x: number, y: number, luminance: number): Primary => ({
	attribute,
	id,
	colour: { xy: [x, y], luminance },
	isUltraviolet: attribute === 'ColorAdd_UV',
});

/** The standard's colours of its own attributes (annex B, read). */
export const PRIMARIES: readonly Primary[] = Object.freeze([
	primary('ColorAdd_R', 'red', 0.64, 0.33, 21.3),
	primary('ColorAdd_G', 'green', 0.3, 0.6, 71.5),
	primary('ColorAdd_B', 'blue', 0.15, 0.06, 7.2),
	primary('ColorAdd_C', 'cyan', 0.225, 0.329, 78.7),
	primary('ColorAdd_M', 'magenta', 0.321, 0.154, 28.5),
	primary('ColorAdd_Y', 'yellow', 0.419, 0.505, 92.8),
	primary('ColorAdd_RY', 'amber', 0.477, 0.46, 57),
	primary('ColorAdd_GY', 'lime', 0.372, 0.543, 82.1),
	primary('ColorAdd_GC', 'blue-green', 0.25, 0.419, 75.1),
	primary('ColorAdd_BC', 'light-blue', 0.2, 0.239, 43),
	primary('ColorAdd_BM', 'purple', 0.254, 0.117, 17.9),
	primary('ColorAdd_RM', 'pink', 0.403, 0.2, 24.9),
	primary('ColorAdd_W', 'white', 0.313, 0.329, 100),
	primary('ColorAdd_WW', 'warm-white', 0.319, 0.34, 99.3),
	primary('ColorAdd_CW', 'cool-white', 0.306, 0.329, 97.9),
	primary('ColorAdd_UV', 'ultraviolet', 0.176, 0.005, 0.6),
]);

const named = (attribute: string): Primary => PRIMARIES.find((each) => each.attribute === attribute) as Primary;

/** Mixing by red, green and blue asked of the fixture, not of its emitters: the nearest thing a profile has is an emitter of each. */
const INDIRECT: Readonly<Record<string, string>> = {
	colorrgb_red: 'ColorAdd_R',
	colorrgb_green: 'ColorAdd_G',
	colorrgb_blue: 'ColorAdd_B',
};

const FAMILIES: readonly (readonly [RegExp, Exclude<Role['is'], 'emitter'>])[] = [
	[/^dimmer$/, 'intensity'],
	[/^effects\d*rate$/, 'speed'],
	[/^shutter\d+$/, 'shutter'],
	[/^shutter\d+strobe$/, 'strobe'],
	[/^color(macro)?\d+$/, 'colour'],
	[/^(nofeature|dummy)$/, 'nothing'],
];

/** What an attribute is to a profile; `other` for the many that it has no counterpart for. */
export function roleOf(attribute: string): Role {
	const name = attribute.toLowerCase();
	const found = INDIRECT[name]
		? named(INDIRECT[name])
		: PRIMARIES.find((each) => each.attribute.toLowerCase() === name);
	if (found) return { is: 'emitter', primary: found };
	return { is: FAMILIES.find(([pattern]) => pattern.test(name))?.[1] ?? 'other' };
}
