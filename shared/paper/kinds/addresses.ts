import { howManyFit, LAST_SLOT, lastSlot, nthAddress, slotsPast } from '../../dmx/index.ts';
import { footprintOf, type Mode } from '../../profile/index.ts';
import { benchWith } from '../bench.ts';
import { entriesOf, type ModeAt, modesWhere, otherModes, slotNamesOf } from '../chart.ts';
import { numberOf, oneOf, say, type WrongAnswer } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type PaperLevel } from '../ids.ts';
import { modesThatRow, startFor } from '../places.ts';
import type { Chance, QuestionGround, QuestionKind, Say } from '../types.ts';

/** How many slots: easy: one fixture, counted off its chart; middle: several of them; hard: and as many of another mode besides. */
export const footprintKind: QuestionKind = {
	id: 'footprint',
	topic: KIND_TOPICS.footprint,
	forms: ['number'],
	levels: LEVELS,
	fits: () => true,
	make(ground, chance, level) {
		const all = modesWhere(ground, () => true);
		const { profile, mode } = chance.pick(all);
		const each = footprintOf(mode);
		const count = level === 'easy' ? 1 : chance.int(2, 6);
		const second = level === 'hard' ? other(all, mode, (rest) => chance.pick(rest)) : null;
		const more = second ? chance.int(1, 4) : 0;
		const moreEach = second ? footprintOf(second.mode) : 0;
		const right = count * each + more * moreEach;
		const entries = (from: Mode): number => entriesOf(from).length;
		const wrongs: WrongAnswer<number>[] = [
			['fine-ignored', count * entries(mode) + more * (second ? entries(second.mode) : 0)],
			...otherModes(profile, mode).map(
				(from) => ['other-modes-chart', count * footprintOf(from) + more * moreEach] as const,
			),
			...(level === 'easy' ? [] : [['footprint-not-added', each] as const]),
			...(second ? [['footprint-not-added', count * each] as const] : []),
			['one-fixture-too-few', right - each],
			['one-fixture-too-many', right + each],
			['first-counted-as-zero', right - 1],
			['off-by-one-high', right + 1],
		];
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					each,
					entries: entries(mode),
					pairs: each - entries(mode),
					count,
					product: count * each,
					more,
					moreFixture: second?.profile.name ?? null,
					moreMode: second?.mode.name ?? null,
					moreEach,
					moreProduct: more * moreEach,
					right,
					slotNames: slotNamesOf(mode),
				},
				bench: count === 1 ? benchWith({ profile, mode, address: 1 }) : null,
			},
			{ unit: 'slots' },
			[right],
			wrongs.filter(([, value]) => value > 0),
		);
	},
};

function other(all: readonly ModeAt[], mode: Mode, pick: (rest: readonly ModeAt[]) => ModeAt): ModeAt | null {
	const rest = all.filter((each) => each.mode !== mode);
	return rest.length > 0 ? pick(rest) : null;
}

/** The last slot a fixture takes. Easy: from a round address; middle: from any; hard: the last of a row back to back. */
export const lastSlotKind: QuestionKind = {
	id: 'last-slot',
	topic: KIND_TOPICS['last-slot'],
	forms: ['number'],
	levels: LEVELS,
	fits: () => true,
	make({ profiles }, chance, level) {
		const profile = chance.pick(profiles);
		const mode = chance.pick(profile.modes);
		const each = footprintOf(mode);
		const count = level === 'hard' ? chance.int(2, Math.max(2, Math.min(8, Math.floor(LAST_SLOT / each)))) : 1;
		const footprint = Math.min(LAST_SLOT, each * count);
		const start = startFor(chance, level, footprint);
		const right = lastSlot(start, footprint);
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					start,
					each,
					count: footprint / each,
					footprint,
					after: right + 1,
					last: right,
				},
				bench: count === 1 ? benchWith({ profile, mode, address: start }) : null,
			},
			{ unit: 'slot' },
			[right],
			[
				['off-by-one-high', start + footprint],
				['off-by-one-low', right - 1],
				['footprint-not-added', start],
				['footprint-added-twice', right + footprint],
				['one-fixture-too-few', right - each],
				['one-fixture-too-many', right + each],
			],
		);
	},
};

/** The start address of the nth fixture of a row. Easy: third or fourth from 1; middle: up to the eighth; hard: farther, from any. */
export const nthAddressKind: QuestionKind = {
	id: 'nth-address',
	topic: KIND_TOPICS['nth-address'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => modesThatRow(ground).length > 0,
	make(ground, chance, level) {
		const { profile, mode } = chance.pick(modesThatRow(ground));
		const footprint = footprintOf(mode);
		const fit = howManyFit(footprint);
		const [least, most] = level === 'easy' ? [3, 4] : level === 'middle' ? [3, 8] : [6, 16];
		const n = chance.int(Math.min(least, fit), Math.min(most, fit));
		const highest = nthAddress(1, footprint, fit) - (n - 1) * footprint;
		const first = level === 'easy' ? 1 : chance.int(1, Math.max(1, highest));
		const right = nthAddress(first, footprint, n);
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					footprint,
					first,
					n,
					before: n - 1,
					slots: (n - 1) * footprint,
					right,
				},
			},
			{ unit: 'address' },
			[right],
			[
				['one-fixture-too-many', first + n * footprint],
				['one-fixture-too-few', first + (n - 2) * footprint],
				['footprint-not-added', first + n - 1],
				['off-by-one-low', right - 1],
				['off-by-one-high', right + 1],
			],
		);
	},
};

/** Modes that can run past the end: of one slot none does. */
const modesOf = ({ profiles }: QuestionGround) =>
	profiles.flatMap((profile) => profile.modes.flatMap((mode) => (footprintOf(mode) > 1 ? [{ profile, mode }] : [])));

/** The last slot, past 512 or not: far from it for easy, anywhere about for middle, on the edge for hard. */
function lastFor(chance: Chance, level: PaperLevel): number {
	if (level === 'easy') return chance.pick([-1, 1]) * chance.int(3, 8) + LAST_SLOT;
	return LAST_SLOT + (level === 'middle' ? chance.int(-4, 5) : chance.int(-1, 1));
}

/** What a last slot comes to: all of it fits, or so many slots are lost. */
const comesTo = (last: number): Say =>
	last > LAST_SLOT ? say('runs-past', { past: last - LAST_SLOT }) : say('runs-fits', { last });

/** Counts a few off, and slots that are thought to go on in the next universe. */
function aboutTheEnd(last: number): WrongAnswer<Say>[] {
	const off = (by: number): WrongAnswer<Say> => [by > 0 ? 'off-by-one-high' : 'off-by-one-low', comesTo(last + by)];
	const goesOn = [last - 1, last, last + 1].flatMap((end): WrongAnswer<Say>[] =>
		end > LAST_SLOT ? [['wrapped-past-512', say('runs-on', { past: end - LAST_SLOT, next: 2 })]] : [],
	);
	return [...[1, -1].map(off), ...goesOn, ...[2, -2, 3, -3].map(off)];
}

/** Does a fixture run past the end of its universe, and by how much? */
export const runsPastKind: QuestionKind = {
	id: 'runs-past',
	topic: KIND_TOPICS['runs-past'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => modesOf(ground).length > 0,
	make(ground, chance, level) {
		const { profile, mode } = chance.pick(modesOf(ground));
		const footprint = footprintOf(mode);
		const start = Math.max(1, Math.min(LAST_SLOT, lastFor(chance, level) - footprint + 1));
		const last = lastSlot(start, footprint);
		const past = slotsPast(start, footprint);
		const wrongs: WrongAnswer<Say>[] =
			ground.version !== 1
				? aboutTheEnd(last)
				: past > 0
					? [
							['wrapped-past-512', say('runs-on', { past, next: 2 })],
							chance.chance(0.5) ? ['off-by-one-high', comesTo(last + 1)] : ['off-by-one-low', comesTo(last - 1)],
							['past-512', say('runs-fits', { last })],
						]
					: [
							['off-by-one-high', comesTo(last + 1)],
							['footprint-added-twice', comesTo(last + footprint)],
							...chance.shuffle<WrongAnswer<Say>>([
								['off-by-one-low', comesTo(last - 1)],
								['footprint-not-added', comesTo(start)],
							]),
						];
		return oneOf(
			chance,
			{
				facts: { fixture: profile.name, mode: mode.name, start, footprint, last, past, fits: past === 0 },
				bench: benchWith({ profile, mode, address: start }),
			},
			comesTo(last),
			wrongs,
			ground,
		);
	},
};
