import { levelsShownAs } from '../../../shared/dmx/index.ts';
import { type Band, modeOf, type Profile, type Slot } from '../../../shared/profile/index.ts';
import type { Random } from '../../../shared/random/index.ts';
import type { Condition, Range } from '../types.ts';
import { rangesOf } from './ranges.ts';
import { desk, fixture, footprint, idOf, ids, levelsFor, line, type Made, TALLOW } from './stage.ts';

// A desk with two fixtures patched, for the kinds done at the desk.

/** The one universe of these rigs. */
export const UNIVERSE = 1;

/** A fixture as the desk has it, and as it is. */
export interface Patched {
	readonly profile: Profile;
	readonly mode: string;
	readonly address: number;
	readonly id: string;
}

/**
 * One fixture to work on, a neighbour to leave alone, both on a desk's line and right.
 * @param up the held colour the desk has up on the first; null where it has none
 */
export function patched(random: Random, profile: Profile, mode: string, scene: Made['scene'], up: string | null) {
	const address = random.int(1, 400);
	const one: Patched = { profile, mode, address, id: idOf(profile, 1) };
	const otherMode = random.pick(ids(TALLOW.modes));
	const other: Patched = {
		profile: TALLOW,
		mode: otherMode,
		address: address + footprint(profile, mode),
		id: idOf(TALLOW, 2),
	};
	const both = [one, other];
	return {
		one,
		rig: {
			fixtures: both.map((each, i) =>
				fixture(scene, each.profile, i + 1, { work: 'line', mode: each.mode, address: each.address }),
			),
			desk: desk(
				[UNIVERSE],
				both.map((each) => ({ fixture: each.id, universe: UNIVERSE, address: each.address, mode: each.mode })),
				both.flatMap((each) => {
					const held = each === one ? up : random.pick(ids(TALLOW.held));
					return held === null
						? []
						: levelsFor(each.profile, each.mode, { universe: UNIVERSE, address: each.address }, held);
				}),
			),
			...line('desk:a', ids(both)),
		},
	};
}

/** The slots of its mode's chart. */
export const slotsOf = ({ profile, mode }: Patched): readonly Slot[] => modeOf(profile, mode).slots;

/** A slot of its chart, asked to lie in some ranges at the desk. */
export const slot = (one: Patched, at: Slot, within: readonly Range[]): Condition => ({
	is: 'slot',
	universe: UNIVERSE,
	slot: one.address + at.at - 1,
	within,
});

/** Values shown as this percent. */
export const shown = (percent: number): Range[] => rangesOf(levelsShownAs(percent));
const isQuiet = ({ effect }: Band): boolean => effect.do === 'open' || effect.do === 'nothing';

/** Values of bands that leave the light alone. */
export const quiet = (bands: readonly Band[]): Range[] => bands.filter(isQuiet).map(({ from, to }) => ({ from, to }));

/** Every slot with bands out of the way, but this one. */
export function othersQuiet(one: Patched, but?: Slot): Condition[] {
	return slotsOf(one).flatMap((it) =>
		it.drives.kind === 'bands' && it !== but ? [slot(one, it, quiet(it.drives.bands))] : [],
	);
}
