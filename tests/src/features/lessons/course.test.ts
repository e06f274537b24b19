import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases, plans, ways } from '#words/lessons/index.ts';
import { makeFaultDrill } from '../../../../sim/finder/index.ts';
import { solve } from '../../../../src/features/lessons/cases.ts';
import { doneIn } from '../../../../src/features/lessons/done.ts';
import { checksKey, lessonKey, timetableOf } from '../../../../src/features/lessons/index.ts';
import { asksOf } from '../../../../src/features/lessons/round.ts';
import { withDone } from '../../../../src/features/progress/index.ts';
import { importProgress } from '../../../../src/features/progress/keep.ts';
import { NO_PROGRESS, progressText } from '../../../../src/features/progress/result.ts';
import { lessonFiles } from '../../../content/lessons.ts';
import { runs } from '../../../runs.ts';
import { saidBy } from '../../../shared/thrown.ts';

const lessons = lessonFiles().map(({ lesson }) => lesson);

/** Permanent: results, links and reviews are keyed by them. Add below, and take none away. */
const IDS = [
	'a-flash-nobody-asked-for',
	'a-panel-you-never-saw',
	'addresses-before-the-van',
	'any-panel',
	'as-one-or-apart',
	'bands',
	'charge-and-hours',
	'circuits-and-distribution',
	'cool-coil-charge-log',
	'daisy-chain',
	'dimmer-curves',
	'exits-and-emergency-light',
	'floor-bracket-clamp-bond',
	'focus-aim-spill-glare',
	'held-colours',
	'how-to-think',
	'label-and-test',
	'leader-and-follower',
	'lithium-in-transit-and-store',
	'lock-and-defaults',
	'look-before-you-swap',
	'matching-white',
	'modes-and-footprints',
	'on-the-radio',
	'over-under',
	'past-the-end',
	'patch-sheet-and-plot',
	'power-along-the-row',
	'programmes-speed-sound',
	'remote-and-sensor',
	'slots-and-frames',
	'splitters-and-branches',
	'ten-cases',
	'text-and-switches',
	'the-case',
	'throw-pool-overlap',
	'two-universes',
	'uplight-column-facade',
	'wall-close-and-angled',
	'weather',
	'weights-at-a-point',
	'when-data-goes',
	'when-the-desk-comes-back',
	'words-on-panels',
];

describe('the course', () => {
	it('keeps its ids', () => {
		expect(lessons.map(({ id }) => id).toSorted()).toEqual(IDS);
	});

	it('sends everybody to lessons there are', () => {
		for (const way of ways) for (const id of way.lessons) expect(IDS).toContain(id);
	});

	it.each(plans)('the plan of $id keeps to its time', (plan) => {
		const { rows, total } = timetableOf(plan, lessons);
		expect(total).toBe(rows.reduce((sum, { minutes }) => sum + minutes, 0));
		for (const [i, { at }] of rows.entries())
			expect(at).toBe(rows.slice(0, i).reduce((sum, { minutes }) => sum + minutes, 0));
		// a day is eight hours, with half an hour of it for a quiz at the end
		expect(total).toBeLessThanOrEqual(plan.id === 'hour' ? 60 : 7.5 * 60);
		for (const { lesson, minutes } of rows) if (lesson) expect(minutes).toBeGreaterThanOrEqual(lesson.minutes);
	});

	it('is taught whole in the first day and the second, each lesson once', () => {
		const taught = plans
			.filter(({ id }) => id !== 'hour')
			.flatMap(({ rows }) => rows.filter((row) => typeof row === 'string'));
		expect(taught.toSorted()).toEqual(IDS);
	});

	it('refuses a plan with a lesson that there is not', () => {
		const [plan] = plans;
		if (!plan) throw new Error('no plan');
		expect(saidBy(() => timetableOf({ ...plan, rows: ['juggling'] }, lessons))).toMatch(/names a lesson 'juggling'/);
	});
});

describe('the cases', () => {
	it('are ten, each hiding another sort of fault, and the second of each the same sort in another rig or place', () => {
		const sorts = cases.map(({ shown, own }) => {
			const first = makeFaultDrill(shown.rig, shown.seed).faults;
			const second = makeFaultDrill(own.rig, own.seed).faults;
			expect(second.map(({ fault }) => fault)).toEqual(first.map(({ fault }) => fault));
			expect([own.rig, ...second.map(({ place }) => place)]).not.toEqual([
				shown.rig,
				...first.map(({ place }) => place),
			]);
			return first.map(({ fault }) => fault).join();
		});
		expect(cases).toHaveLength(10);
		expect(new Set(sorts).size).toBe(10);
	});

	it('are solved by the finder to the end', () => {
		for (const each of cases) {
			const { steps, was, complaint } = solve(each);
			expect(steps.length, each.id).toBeGreaterThan(0);
			expect(was.join()).not.toBe('');
			expect(complaint).not.toMatch(/[{}.]/);
		}
	});
});

describe('what is kept of a lesson', () => {
	it('is seen on the list, and nothing else is', () => {
		fc.assert(
			fc.property(fc.subarray(IDS), fc.subarray(IDS), (done, asked) => {
				const result = { presses: 1, fewest: 1, hints: 0, milliseconds: 0, seed: 0 };
				const keys = [...done.map(lessonKey), ...asked.map(checksKey)];
				const progress = keys.reduce((all, key) => withDone(all, key, result, true, 1), NO_PROGRESS);
				expect(doneIn(progressText(progress), IDS)).toEqual(IDS.filter((id) => done.includes(id)));
			}),
			{ numRuns: runs(50) },
		);
	});

	it('goes to another device with the drills’ results, and the better one stays', async () => {
		const result = (presses: number) => ({ presses, fewest: 3, hints: 0, milliseconds: 1000, seed: 0 });
		const here = withDone(NO_PROGRESS, lessonKey('bands'), result(9), true, 1);
		const there = withDone(
			withDone(NO_PROGRESS, lessonKey('bands'), result(3), true, 2),
			checksKey('bands'),
			result(6),
			false,
			2,
		);
		const taken = await importProgress(here, progressText(there));
		if (taken.is !== 'taken') throw new Error(taken.is);
		expect(taken.damaged).toBe(0);
		expect(taken.progress.get(lessonKey('bands'))?.best?.presses).toBe(3);
		expect(taken.progress.get(checksKey('bands'))?.done).toBe(1);
	});

	it('is none where what is kept is damaged', () => {
		fc.assert(
			fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
				expect(doneIn(text, IDS)).toEqual([]);
			}),
			{ numRuns: runs(100) },
		);
		expect(doneIn(null, IDS)).toEqual([]);
		expect(doneIn('{"kinds":{"lesson-bands":{"done":"yes"}}}', IDS)).toEqual([]);
	});
});

describe('a round of checks', () => {
	it('asks each kind as often as the others, as far as that goes', () => {
		const checks = ['a', 'b', 'c'].map((title) => ({ recipe: { version: 1, title, count: 1 }, skill: {} })) as never;
		fc.assert(
			fc.property(fc.integer({ min: 3, max: 6 }), fc.array(fc.nat(), { minLength: 6 }), (count, seeds) => {
				const asked = asksOf(checks, count, seeds).map(({ recipe }) => recipe.title);
				expect(asked).toHaveLength(count);
				const times = ['a', 'b', 'c'].map((title) => asked.filter((each) => each === title).length);
				expect(Math.max(...times) - Math.min(...times)).toBeLessThanOrEqual(1);
			}),
			{ numRuns: runs(50) },
		);
	});
});
