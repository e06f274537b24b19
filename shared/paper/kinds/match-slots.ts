import { benchWith } from '../bench.ts';
import { modesWhere, type Numbered, numbersOf, readsAlike, slotChartOf, slotSay } from '../chart.ts';
import { draft, fresh, inTurn, lettered, say } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import { startFor } from '../places.ts';
import type { Answer, Ground, Kind } from '../types.ts';

/** Slots on the left, and what stands on the right besides: one more than there are. */
const ROWS = 3;

/** Runs of a chart in which no two slots read alike. */
const runsOf = (numbers: readonly Numbered[]): Numbered[][] =>
	numbers
		.map((_, i) => numbers.slice(i, i + ROWS + 1))
		.filter((run) => run.length > ROWS && run.every((a) => run.every((b) => a === b || !readsAlike(a, b))));

const places = (ground: Ground) => modesWhere(ground, ({ mode }) => runsOf(numbersOf(mode)).length > 0);

type Match = Extract<Answer, { form: 'match' }>;

/** Which slot of the desk does what? Easy: counted from 1; middle: from a start address; hard: a run with a pair in it, if any. */
export const matchSlots: Kind = {
	id: 'match-slots',
	topic: KIND_TOPICS['match-slots'],
	forms: ['match'],
	levels: LEVELS,
	fits: (ground) => places(ground).length > 0,
	make(ground, chance, level) {
		const { profile, mode } = chance.pick(places(ground));
		const numbers = numbersOf(mode);
		const runs = runsOf(numbers);
		const paired = runs.filter((each) => each.some(({ part }) => part === 'fine'));
		const run = chance.pick(level === 'hard' && paired.length > 0 ? paired : runs);
		const start = level === 'easy' ? 1 : startFor(chance, 'hard', numbers.length);
		// the odd one out stands before the run or behind it: what a count one off would take for the first or the last
		const extraFirst = chance.chance(0.5);
		const asked = extraFirst ? run.slice(1) : run.slice(0, ROWS);
		const left = inTurn(asked, ({ n }) => say('desk-slot', { slot: start + n - 1 }));
		const right = lettered(chance, run, slotSay);
		const pairs = (shift: number): Record<string, string> =>
			Object.fromEntries(
				asked.map((each) => [left.idOf(each), right.idOf(run[run.indexOf(each) + shift] as Numbered)]),
			);
		const key = pairs(0);
		const mistakes: { mistake: 'off-by-one-low' | 'off-by-one-high'; answer: Match }[] = [
			extraFirst
				? { mistake: 'off-by-one-low', answer: { form: 'match', pairs: pairs(-1) } }
				: { mistake: 'off-by-one-high', answer: { form: 'match', pairs: pairs(1) } },
		];
		return draft(
			{
				facts: { fixture: profile.name, mode: mode.name, start, slotChart: slotChartOf(mode), less: start - 1 },
				bench: benchWith({ profile, mode, address: start }),
			},
			{
				ask: { form: 'match', left: left.options, right: right.options },
				key: { form: 'match', right: key },
				mistakes: fresh(mistakes, ({ pairs: each }) => JSON.stringify(each), JSON.stringify(key)),
			},
		);
	},
};
