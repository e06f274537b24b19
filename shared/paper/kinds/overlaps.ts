import { LAST_SLOT, overlaps } from '../../dmx/index.ts';
import { footprintOf } from '../../profile/index.ts';
import { say, severalOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type Level } from '../ids.ts';
import { type Placed, placedOf, shortModes } from '../places.ts';
import type { Chance, Ground, Kind } from '../types.ts';

/** How many fixtures are listed. */
const COUNTS: Readonly<Record<Level, number>> = { easy: 3, middle: 4, hard: 5 };

/**
 * Which of these share a slot with another? Easy: one pair overlaps by much; middle: a pair may touch; hard: an overlap of one slot,
 * a touch, and one at the same address in another universe.
 */
export const overlapsKind: Kind = {
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

const pairsOf = (placed: readonly Placed[]) => overlaps(placed.map((each) => ({ ...each, id: each.name })));

/** Names of those that share a slot with another. */
const sharing = (placed: readonly Placed[]): Set<string> =>
	new Set(pairsOf(placed).flatMap(({ first, second }) => [first, second]));

const among = (placed: readonly Placed[], names: ReadonlySet<string>): Placed[] =>
	placed.filter(({ name }) => names.has(name));

const grown = (each: Placed, by: number): Placed => ({
	...each,
	footprint: Math.max(0, Math.min(LAST_SLOT, each.footprint + by)),
});
const widened = (placed: readonly Placed[], by: number): Placed[] => placed.map((each) => grown(each, by));

/** Fixtures in a row, each from where the one before ends, by so much back or forth; the first two always share a slot. */
function placesFor(ground: Ground, chance: Chance, level: Level): Placed[] {
	const names = chance.shuffle(Array.from({ length: COUNTS[level] }, (_, i) => i));
	const placed: Placed[] = [];
	let next = chance.int(1, 120);
	for (let i = 0; i < COUNTS[level]; i++) {
		const { profile, mode } = chance.pick(shortModes(ground));
		const before = placed.at(-1);
		const start = before ? Math.max(before.start, next - stepBack(i, level, before, chance)) : next;
		placed.push(placedOf(profile, mode, names[i] ?? i, start));
		next = Math.max(next, start + footprintOf(mode));
	}
	const other = level === 'hard' ? (placed[chance.int(0, 1)] as Placed) : null;
	const inOrder = other
		? [...placed.slice(0, -1), { ...(placed.at(-1) as Placed), start: other.start, universe: 2 }]
		: placed;
	return inOrder.sort((a, b) => (a.name.slice(-1) < b.name.slice(-1) ? -1 : 1));
}

/** By how many slots a fixture starts before the end of the one before it: below 0 a gap, at 0 they touch. */
function stepBack(i: number, level: Level, before: Placed, chance: Chance): number {
	if (i === 1) return level === 'hard' ? 1 : chance.int(1, before.footprint);
	if (level === 'easy') return -chance.int(3, 20);
	return i === 2 ? 0 : chance.pick([-chance.int(1, 9), 0, 1]);
}
