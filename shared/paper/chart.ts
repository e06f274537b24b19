import type { Band, Mode, Profile, Slot } from '../profile/index.ts';
import { footprintOf, slotAt } from '../profile/index.ts';
import { say } from './draft.ts';
import type { QuestionGround, Say } from './types.ts';

/** A slot with bands, and where it is. */
export interface BandSlot {
	readonly profile: Profile;
	readonly mode: Mode;
	readonly slot: Slot;
	readonly bands: readonly Band[];
}

/** Whether two names are one to a reader. */
export const same = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/** Whether a band leaves the light to the other slots. */
export const isAtRest = ({ effect }: Band): boolean => effect.do === 'nothing' || effect.do === 'open';

/** A slot as facts: its fixture, its mode, its name and its number. */
export const slotFacts = ({ profile, mode, slot }: Omit<BandSlot, 'bands'>) => ({
	fixture: profile.name,
	mode: mode.name,
	slot: slot.name,
	n: slot.at,
});

/** What a band is called. */
export const bandSay = ({ name }: Band): Say => say('name', { name });

/** A function of a slot: the name of one band or more, and all their values. */
export interface SlotFunction {
	readonly name: string;
	readonly bands: readonly Band[];
}

/** What a slot can do, by name: two bands of one name are one thing to do. */
export function doingsOf(bands: readonly Band[]): SlotFunction[] {
	const found: { name: string; bands: Band[] }[] = [];
	for (const band of bands) {
		const known = found.find(({ name }) => same(name, band.name));
		if (known) known.bands.push(band);
		else found.push({ name: band.name, bands: [band] });
	}
	return found;
}

/** Fewest different functions of a slot that questions are asked about: a right one and two wrong. */
const LEAST_DOINGS = 3;

/** Every slot with enough bands to ask about, over all modes of all fixtures. */
export function bandSlots({ profiles }: QuestionGround): BandSlot[] {
	return profiles.flatMap((profile) =>
		profile.modes.flatMap((mode) =>
			mode.slots.flatMap((slot) => {
				const bands = slot.drives.kind === 'bands' ? slot.drives.bands : [];
				return doingsOf(bands).length >= LEAST_DOINGS ? [{ profile, mode, slot, bands }] : [];
			}),
		),
	);
}

/** Slots that the other modes of a fixture, and then the other fixtures, have for the same job: for charts mixed up. */
export function twinsOf(
	{ profile, mode, slot }: BandSlot,
	all: readonly BandSlot[],
): { readonly modes: readonly BandSlot[]; readonly fixtures: readonly BandSlot[] } {
	const alike = all.filter((each) => same(each.slot.name, slot.name));
	return {
		modes: alike.filter((each) => each.profile === profile && each.mode !== mode),
		fixtures: alike.filter((each) => each.profile !== profile),
	};
}

/** Bands whose name no other band of the slot has: what 'the band of that name' can mean. */
export const namedOnce = (bands: readonly Band[]): Band[] =>
	bands.filter((band) => bands.every((each) => each === band || !same(each.name, band.name)));

/** A chart of bands as a fact: first value, last value, name, and so on. */
export const chartOf = (bands: readonly Band[]): (string | number)[] =>
	bands.flatMap(({ from, to, name }) => [from, to, name]);

/** One number of a footprint: which slot stands there, and whether it is half of a pair. */
export interface FootprintSlot {
	readonly n: number;
	readonly name: string;
	readonly part: 'whole' | 'coarse' | 'fine';
}

/** Every number of a mode's footprint, rising. */
export function numbersOf(mode: Mode): FootprintSlot[] {
	return Array.from({ length: footprintOf(mode) }, (_, i) => {
		const here = slotAt(mode, i + 1);
		return { n: i + 1, name: here?.slot.name ?? '', part: here?.part ?? 'whole' };
	});
}

/** What a number of the footprint is called. */
export const slotSay = ({ name, part }: FootprintSlot): Say => say('slot', { name, part });

/** Whether two read alike. */
export const readsAlike = (a: FootprintSlot, b: FootprintSlot): boolean => a.part === b.part && same(a.name, b.name);

/** A chart of slots as a fact: number, part, name, and so on. */
export const slotChartOf = (mode: Mode): (string | number)[] =>
	numbersOf(mode).flatMap(({ n, part, name }) => [n, part, name]);

/** A mode of a fixture. */
export interface ModeAt {
	readonly profile: Profile;
	readonly mode: Mode;
}

/** Longest chart that a question spells out, in slots, where a shorter one is to be had. */
const LONGEST_CHART = 16;

/** Of these modes, those with short charts alone, where there are any. */
export function shortOf<M extends Pick<ModeAt, 'mode'>>(all: readonly M[]): readonly M[] {
	const short = all.filter(({ mode }) => footprintOf(mode) <= LONGEST_CHART);
	return short.length > 0 ? short : all;
}

/** Modes that hold to a condition; those with short charts alone, where there are any. */
export const modesWhere = ({ profiles }: QuestionGround, holds: (at: ModeAt) => boolean): readonly ModeAt[] =>
	shortOf(profiles.flatMap((profile) => profile.modes.map((mode) => ({ profile, mode }))).filter(holds));

/** The same chart by first values alone: first value, name, and so on. By last values: last value, name. */
export const startsOf = (bands: readonly Band[]): (string | number)[] =>
	bands.flatMap(({ from, name }) => [from, name]);
export const endsOf = (bands: readonly Band[]): (string | number)[] => bands.flatMap(({ to, name }) => [to, name]);

/** The other modes of a fixture. */
export const otherModes = ({ modes }: Profile, mode: Mode): Mode[] => modes.filter((each) => each !== mode);

/** The slots of a mode as a chart lists them, one entry for a pair, in order of their (coarse) numbers. */
export const entriesOf = (mode: Mode): FootprintSlot[] => numbersOf(mode).filter(({ part }) => part !== 'fine');

/** Whether a mode has a pair, and the fine half of every pair stands right behind the coarse: then a list in order says it all. */
export const isInPairs = ({ slots }: Mode): boolean =>
	slots.some(({ fine }) => fine !== undefined) && slots.every(({ at, fine }) => fine === undefined || fine === at + 1);

/** A chart of slots without numbers as a fact: 1 or 2 slots, name, and so on. */
export const slotNamesOf = (mode: Mode): (string | number)[] =>
	entriesOf(mode).flatMap(({ name, part }) => [part === 'coarse' ? 2 : 1, name]);
