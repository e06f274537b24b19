import { slotOf } from '../../dmx/index.ts';
import { footprintOf } from '../../profile/index.ts';
import { benchWith } from '../bench.ts';
import {
	entriesOf,
	isInPairs,
	modesWhere,
	type Numbered,
	numbersOf,
	otherModes,
	readsAlike,
	slotChartOf,
	slotNamesOf,
	slotSay,
} from '../chart.ts';
import { oneOf, type Wrong } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type MistakeId } from '../ids.ts';
import { startFor } from '../places.ts';
import type { Ground, Kind, Say } from '../types.ts';

/** How many names of slots a mode needs, all told apart: a right one and two wrong. */
const LEAST_NAMES = 3;

const different = (numbers: readonly Numbered[]): number =>
	numbers.filter((each, i) => numbers.findIndex((other) => readsAlike(each, other)) === i).length;

const placesOf = (ground: Ground) => modesWhere(ground, ({ mode }) => different(numbersOf(mode)) >= LEAST_NAMES);

/**
 * What does this slot of the desk do? Easy: the fixture starts at 1; middle: elsewhere; hard: with a chart that names the slots in
 * order and leaves the counting, pairs and all.
 */
export const slotDoes: Kind = {
	id: 'slot-does',
	topic: KIND_TOPICS['slot-does'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => placesOf(ground).length > 0,
	make(ground, chance, level) {
		const all = placesOf(ground);
		const paired = all.filter(({ mode }) => isInPairs(mode));
		const hard = level === 'hard' && paired.length > 0;
		const { profile, mode } = chance.pick(hard ? paired : all);
		const numbers = numbersOf(mode);
		const start = level === 'easy' ? 1 : startFor(chance, 'hard', footprintOf(mode));
		const right = chance.pick(numbers);
		const slot = slotOf(start, right.n);
		const at = (mistake: MistakeId, found: Numbered | undefined): Wrong<Say>[] =>
			found ? [[mistake, slotSay(found)]] : [];
		const near = [...numbers].sort((a, b) => Math.abs(a.n - right.n) - Math.abs(b.n - right.n));
		const others = otherModes(profile, mode).flatMap((each) => at('other-modes-chart', numbersOf(each)[right.n - 1]));
		return oneOf(
			chance,
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					start,
					slot,
					n: right.n,
					less: start - 1,
					name: right.name,
					part: right.part,
					counted: hard,
					...(hard ? { slotNames: slotNamesOf(mode) } : { slotChart: slotChartOf(mode) }),
				},
				bench: benchWith({ profile, mode, address: start, alone: right.n }),
			},
			slotSay(right),
			[
				...(hard ? at('fine-ignored', entriesOf(mode)[right.n - 1]) : []),
				...chance.shuffle([
					...at('off-by-one-low', numbers[right.n - 2]),
					...at('off-by-one-high', numbers[right.n]),
					...others.slice(0, 1),
				]),
				...near.filter(({ n }) => n < right.n).flatMap((each) => at('off-by-one-low', each)),
				...near.filter(({ n }) => n > right.n).flatMap((each) => at('off-by-one-high', each)),
			],
		);
	},
};
