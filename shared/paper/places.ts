import { highestStart, howManyFit } from '../dmx/index.ts';
import { footprintOf, type Mode, modeOf, type Profile } from '../profile/index.ts';
import { profileFor } from '../sheet/index.ts';
import type { ModeAt } from './chart.ts';
import type { PaperLevel } from './ids.ts';
import type { Chance, QuestionGround } from './types.ts';

/** A start address at which a footprint fits: round for easy (1, 101, 201 ...), else any from 2 on. */
export function startFor(chance: Chance, level: PaperLevel, footprint: number): number {
	const most = highestStart(footprint);
	if (level === 'easy') return chance.pick([1, 101, 201, 301, 401].filter((start) => start <= most));
	return most < 2 ? 1 : chance.int(2, most);
}

/** Modes of which at least three fixtures fit one universe: what a row is made of. */
export const modesThatRow = ({ profiles }: QuestionGround): ModeAt[] =>
	profiles
		.flatMap((profile) => profile.modes.map((mode) => ({ profile, mode })))
		.filter(({ mode }) => howManyFit(footprintOf(mode)) >= 3);

/** A fixture on the line, and what it is called in a list. */
export interface PlacedFixture {
	readonly name: string;
	readonly universe: number;
	readonly start: number;
	readonly footprint: number;
}

/** What one of several alike is called: the name and a letter, from 0 on. */
export const nthName = (name: string, i: number): string => `${name} ${String.fromCharCode(65 + i)}`;

/** One of several fixtures of a question. */
export const placedOf = (profile: Profile, mode: Mode, i: number, start: number, universe = 1): PlacedFixture => ({
	name: nthName(profile.name, i),
	universe,
	start,
	footprint: footprintOf(mode),
});

/** Fixtures as a fact: name, start address, footprint, and so on. */
export const placedPart = (taken: readonly PlacedFixture[]): (string | number)[] =>
	taken.flatMap(({ name, start, footprint }) => [name, start, footprint]);

/** Longest list of fixtures that a question prints, and widest footprint among them. */
const LONGEST_LIST = 8;
const WIDEST = 40;

/** Modes narrow enough that several stand in one universe with room to spare; any mode where there is none. */
export const shortModes = (ground: QuestionGround): ModeAt[] =>
	modesThatRow(ground).filter(({ mode }) => footprintOf(mode) <= WIDEST);

/** The rig's fixtures in the universe of its first, as its desk has them; null where there is no rig, or a long one. */
export function rigPlaces({ sheet }: QuestionGround): { taken: PlacedFixture[]; universe: number } | null {
	const universe = sheet?.desk?.patch[0]?.universe;
	if (!sheet?.desk || universe === undefined) return null;
	const here = sheet.desk.patch.filter((each) => each.universe === universe);
	if (here.length > LONGEST_LIST) return null;
	const taken = here.flatMap(({ fixture, address, mode }) => {
		const placed = sheet.fixtures.find(({ id }) => id === fixture);
		if (!placed) return [];
		const footprint = footprintOf(modeOf(profileFor(sheet, placed.profile), mode));
		return [{ name: placed.name, universe, start: address, footprint }];
	});
	return { taken, universe };
}
