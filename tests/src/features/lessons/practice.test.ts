import { describe, expect, it } from 'vitest';
import { cautions } from '#words/cautions/index.ts';
import { practiceOf } from '../../../../src/features/lessons/index.ts';
import { sheetOf } from '../../../../src/features/lessons/open.ts';
import { fixtureSections } from '../../../../src/features/reference/fixtures.ts';
import { lessonFiles, taskFrom } from '../../../content/lessons.ts';

const lessons = lessonFiles().map(({ lesson }) => lesson);

describe('the bench of a lesson', () => {
	it('stands in the middle of a wall as wide as it is told, and where it is told', () => {
		const quick = { count: 3, linked: 'alone', profile: 'tallow-6' } as const;
		const xs = (sheet: ReturnType<typeof sheetOf>) => sheet.fixtures.map(({ place }) => place.x);
		const plain = sheetOf({ quick, change: {}, log: [] });
		const wide = sheetOf({ quick, wide: plain.hall.width + 6, change: { 'wash-1': { place: { x: 1 } } }, log: [] });
		expect(wide.hall).toEqual({ ...plain.hall, width: plain.hall.width + 6 });
		expect(xs(wide)).toEqual(xs(plain).map((x, i) => (i === 0 ? 1 : x + 3)));
	});

	it('can lead to the chart of every fixture on it, and of every fixture of the task', () => {
		const charts = fixtureSections().map(({ id, heading }) => ({ name: heading, href: `/reference/fixtures/#${id}` }));
		for (const lesson of lessons) {
			const { sheet, manuals } = practiceOf(lesson);
			for (const { name, href } of manuals) expect(charts).toContainEqual({ name, href });
			for (const { profile } of [sheet, taskFrom(lesson, 7).task.sheet].flatMap(({ fixtures }) => fixtures))
				expect(manuals.map(({ id }) => id)).toContain(profile);
		}
	});

	it('folds only the cautions that stand on its page', () => {
		for (const lesson of lessons)
			expect(practiceOf(lesson).said).toEqual(lesson.cautions.map((id) => cautions[id].title));
	});
});
