import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nextWords } from '#words/site/index.ts';
import { type Card, type Deck, dueNow } from '../../../../src/features/deck/index.ts';
import { lessonKey } from '../../../../src/features/lessons/index.ts';
import { type Course, nextRows } from '../../../../src/features/next-up/index.ts';
import { type KindRecord, type Progress, rustyFrom } from '../../../../src/features/progress/index.ts';
import { runs } from '../../../runs.ts';

const NOW = 1_800_000_000_000;
const DAY = 86_400_000;
const course: Course = {
	lessons: ['case', 'charge', 'bands'].map((id) => ({ id, title: `Lesson ${id}`, key: lessonKey(id) })),
	drills: ['keys', 'switches'].map((id) => ({ id, title: `Drill ${id}` })),
};
const record = (part: Partial<KindRecord>): KindRecord => ({
	done: 1,
	best: null,
	streak: 0,
	longest: 0,
	last: NOW - DAY,
	tried: [],
	open: null,
	...part,
});
const card = (due: number): Card => ({
	due,
	stability: 2,
	difficulty: 2,
	state: 2,
	step: 0,
	days: 1,
	reps: 2,
	lapses: 0,
	last: due - DAY,
	added: due - 2 * DAY,
});
const deckOf = (...due: readonly number[]): Deck => new Map(due.map((at, i) => [`kind-${i}@tallow-6.easy`, card(at)]));
const order = (progress: Progress, deck: Deck): string[] => nextRows(course, progress, deck, NOW).map(({ is }) => is);

describe('what is next', () => {
	it('is the first lesson for who has done nothing, and a drill behind it', () => {
		const rows = nextRows(course, new Map(), new Map(), NOW);
		expect(rows.map(({ href }) => href)).toEqual(['/lessons/case/', '/drills/do/#kind=keys']);
	});

	it('is what is due before what was begun, and that before what is new', () => {
		const begun: Progress = new Map([['keys', record({})]]);
		expect(order(begun, deckOf(NOW - 1))).toEqual(['review', 'drill', 'lesson']);
		expect(order(begun, deckOf(NOW + DAY))).toEqual(['drill', 'lesson', 'review']);
		expect(order(new Map(), deckOf(NOW - 1))).toEqual(['review', 'lesson', 'drill']);
	});

	it('puts a drill that was held a month ago and questions that fade by which fell due first', () => {
		const firm = record({ streak: 10, last: NOW - 40 * DAY });
		const rusty: Progress = new Map([['keys', firm]]);
		const since = rustyFrom(firm);
		expect(order(rusty, deckOf(since - 1))[0]).toBe('review');
		expect(order(rusty, deckOf(since + 1))[0]).toBe('drill');
	});

	it('names the first lesson not done, and none once all are', () => {
		const done = (ids: readonly string[]): Progress => new Map(ids.map((id) => [lessonKey(id), record({})]));
		expect(nextRows(course, done(['case', 'bands']), new Map(), NOW)[0]).toMatchObject({
			href: '/lessons/charge/',
			why: nextWords.lesson(2, 3),
		});
		expect(order(done(['case', 'charge', 'bands']), new Map())).not.toContain('lesson');
	});

	it('has each at most once, and review first exactly where questions are due before all else', () => {
		const due = fc.array(fc.integer({ min: NOW - 60 * DAY, max: NOW + 60 * DAY }), { maxLength: 6 });
		const records = fc.dictionary(
			fc.constantFrom('keys', 'switches', lessonKey('case'), lessonKey('charge')),
			fc.record({ streak: fc.constantFrom(0, 10), last: fc.integer({ min: NOW - 60 * DAY, max: NOW }) }).map(record),
		);
		fc.assert(
			fc.property(due, records, (dues, kept) => {
				const deck = deckOf(...dues);
				const rows = nextRows(course, new Map(Object.entries(kept)), deck, NOW);
				expect(new Set(rows.map(({ is }) => is)).size).toBe(rows.length);
				const isDue = dueNow(deck, NOW).length > 0;
				if (rows[0]?.is === 'review' && rows.length > 1) expect(isDue).toBe(true);
				if (isDue) expect(rows.slice(0, 2).map(({ is }) => is)).toContain('review');
			}),
			{ numRuns: runs(200) },
		);
	});
});
