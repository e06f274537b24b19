import { howManyFit, LAST_SLOT, nextFreeAddress, overlaps } from '../../dmx/index.ts';
import { footprintOf } from '../../profile/index.ts';
import type { ModeAt } from '../chart.ts';
import { numberOf, say, severalOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type PaperLevel } from '../ids.ts';
import { modesThatRow, type PlacedFixture, placedOf, placedPart, rigPlaces, shortModes } from '../places.ts';
import type { Chance, QuestionGround, QuestionKind } from '../types.ts';

/** What stands already, and how many slots the new one takes. */
interface TakenSlots {
	readonly taken: readonly PlacedFixture[];
	readonly universe: number;
}

/** Fixtures back to back from 1; where a gap is wanted, one somewhere between them, wider or narrower than the new one. */
function patchFor(ground: QuestionGround, chance: Chance, level: PaperLevel, footprint: number): TakenSlots {
	const rig = level === 'middle' ? rigPlaces(ground) : null;
	if (rig) return rig;
	const count = level === 'easy' ? chance.int(1, 2) : chance.int(3, 4);
	const gapAt = level === 'hard' ? chance.int(1, count - 1) : -1;
	const taken: PlacedFixture[] = [];
	let next = level === 'easy' ? 1 : chance.int(1, footprint);
	for (let i = 0; i < count; i++) {
		const { profile, mode } = chance.pick(shortModes(ground));
		if (i === gapAt)
			next += chance.chance(0.5) ? footprint + chance.int(0, 2) : Math.max(1, footprint - chance.int(1, 2));
		taken.push(placedOf(profile, mode, i, next));
		next += footprintOf(mode);
	}
	return { taken, universe: 1 };
}

/**
 * The lowest address at which one more fits. Easy: behind one or two that stand from 1; middle: behind more, or on the rig; hard:
 * with a gap that it may or may not fit.
 */
export const nextFree: QuestionKind = {
	id: 'next-free',
	topic: KIND_TOPICS['next-free'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => modesThatRow(ground).length > 0 && shortModes(ground).length > 0,
	make(ground, chance, level) {
		const { profile, mode } = chance.pick(modesThatRow(ground));
		const footprint = footprintOf(mode);
		const drawn = patchFor(ground, chance, level, footprint);
		const fallback: TakenSlots = { taken: [placedOf(profile, mode, 0, 1)], universe: 1 };
		const { taken, universe } =
			nextFreeAddress(drawn.taken, footprint, { universe: drawn.universe }) === null ? fallback : drawn;
		const right = nextFreeAddress(taken, footprint, { universe }) as number;
		const firstFree = nextFreeAddress(taken, 1, { universe }) ?? right;
		const last = taken.reduce((most, each) => (each.start > most.start ? each : most));
		const before = taken.find((each) => each.start + each.footprint === right) ?? null;
		const behind = last.start + last.footprint;
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					footprint,
					universe,
					gap: firstFree < right,
					right,
					end: right + footprint - 1,
					beforeName: before?.name ?? null,
					beforeStart: before?.start ?? null,
					beforeLast: right - 1,
					count: taken.length,
					placed: placedPart(chance.shuffle(taken)),
				},
			},
			{ unit: 'address' },
			[right],
			[
				['off-by-one-low', right - 1],
				['footprint-not-added', firstFree],
				['one-fixture-too-many', behind],
				...(before ? [['footprint-not-added', before.start] as const] : []),
				['footprint-added-twice', behind + last.footprint],
				['off-by-one-high', right + 1],
			],
		);
	},
};

/** How many fixtures are listed. */
const COUNTS: Readonly<Record<PaperLevel, number>> = { easy: 3, middle: 4, hard: 5 };

/**
 * Which of these share a slot with another? Easy: one pair overlaps by much; middle: a pair may touch; hard: an overlap of one slot,
 * a touch, and one at the same address in another universe.
 */
export const overlapsKind: QuestionKind = {
	id: 'overlaps',
	topic: KIND_TOPICS.overlaps,
	forms: ['several'],
	levels: LEVELS,
	fits: (ground) => shortModes(ground).length > 0,
	make(ground, chance, level) {
		const placed = placesFor(ground, chance, level);
		const shared = sharing(placed);
		return severalOf(
			chance,
			{
				facts: {
					count: placed.length,
					others: level === 'hard',
					pairs: pairsOf(placed).flatMap(({ first, second, from, to }) => [first, second, from, to]),
					single: pairsOf(placed).length === 1,
				},
			},
			placed,
			{
				label: ({ name, start, footprint, universe }) =>
					say('placed-from', { name, start, footprint, universe, others: level === 'hard' }),
				isRight: ({ name }) => shared.has(name),
				wrongs: [
					['off-by-one-high', among(placed, sharing(widened(placed, 1)))],
					['off-by-one-low', among(placed, sharing(widened(placed, -1)))],
					['footprint-added-twice', among(placed, sharing(placed.map((each) => grown(each, each.footprint))))],
					['one-too-many', among(placed, sharing(placed.map((each) => ({ ...each, universe: 1 }))))],
				],
			},
		);
	},
};

const pairsOf = (placed: readonly PlacedFixture[]) => overlaps(placed.map((each) => ({ ...each, id: each.name })));

/** Names of those that share a slot with another. */
const sharing = (placed: readonly PlacedFixture[]): Set<string> =>
	new Set(pairsOf(placed).flatMap(({ first, second }) => [first, second]));

const among = (placed: readonly PlacedFixture[], names: ReadonlySet<string>): PlacedFixture[] =>
	placed.filter(({ name }) => names.has(name));

const grown = (each: PlacedFixture, by: number): PlacedFixture => ({
	...each,
	footprint: Math.max(0, Math.min(LAST_SLOT, each.footprint + by)),
});
const widened = (placed: readonly PlacedFixture[], by: number): PlacedFixture[] =>
	placed.map((each) => grown(each, by));

/** Fixtures in a row, each from where the one before ends, by so much back or forth; the first two always share a slot. */
function placesFor(ground: QuestionGround, chance: Chance, level: PaperLevel): PlacedFixture[] {
	const names = chance.shuffle(Array.from({ length: COUNTS[level] }, (_, i) => i));
	const placed: PlacedFixture[] = [];
	let next = chance.int(1, 120);
	for (let i = 0; i < COUNTS[level]; i++) {
		const { profile, mode } = chance.pick(shortModes(ground));
		const before = placed.at(-1);
		const start = before ? Math.max(before.start, next - stepBack(i, level, before, chance)) : next;
		placed.push(placedOf(profile, mode, names[i] ?? i, start));
		next = Math.max(next, start + footprintOf(mode));
	}
	const other = level === 'hard' ? (placed[chance.int(0, 1)] as PlacedFixture) : null;
	const inOrder = other
		? [...placed.slice(0, -1), { ...(placed.at(-1) as PlacedFixture), start: other.start, universe: 2 }]
		: placed;
	return inOrder.sort((a, b) => (a.name.slice(-1) < b.name.slice(-1) ? -1 : 1));
}

/** By how many slots a fixture starts before the end of the one before it: below 0 a gap, at 0 they touch. */
function stepBack(i: number, level: PaperLevel, before: PlacedFixture, chance: Chance): number {
	if (i === 1) return level === 'hard' ? 1 : chance.int(1, before.footprint);
	if (level === 'easy') return -chance.int(3, 20);
	return i === 2 ? 0 : chance.pick([-chance.int(1, 9), 0, 1]);
}

/** Others that stand first, and how many. */
function othersFor(modes: readonly ModeAt[], chance: Chance, level: PaperLevel): { at: ModeAt; count: number } | null {
	if (level !== 'hard' || modes.length === 0) return null;
	const at = chance.pick(modes);
	return { at, count: chance.int(2, Math.min(12, howManyFit(footprintOf(at.mode)) - 1)) };
}

/** How many fit one universe? Easy: from 1; middle: from an address on; hard: behind a row of others. */
export const howManyFitKind: QuestionKind = {
	id: 'how-many-fit',
	topic: KIND_TOPICS['how-many-fit'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => modesThatRow(ground).length > 0,
	make(ground, chance, level) {
		const { profile, mode } = chance.pick(modesThatRow(ground));
		const footprint = footprintOf(mode);
		const others = othersFor(shortModes(ground), chance, level);
		const othersEach = others ? footprintOf(others.at.mode) : 0;
		const taken = others ? others.count * othersEach : 0;
		const from = others ? taken + 1 : level === 'easy' ? 1 : chance.int(2, 300);
		const start = from + footprint - 1 > LAST_SLOT ? 1 : from;
		const right = howManyFit(footprint, start);
		const room = LAST_SLOT + 1 - start;
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					footprint,
					start,
					room,
					right,
					used: right * footprint,
					left: room - right * footprint,
					others: start === from ? (others?.count ?? 0) : 0,
					othersFixture: others?.at.profile.name ?? null,
					othersMode: others?.at.mode.name ?? null,
					othersEach,
				},
			},
			{ unit: 'fixtures' },
			[right],
			[
				...(start > 1 ? [['past-512', howManyFit(footprint)] as const] : []),
				['one-fixture-too-many', right + 1],
				['one-fixture-too-few', right - 1],
				...(start === 1 ? [['out-of-256', Math.floor(256 / footprint)] as const] : []),
			],
		);
	},
};
