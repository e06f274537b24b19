import { describe, expect, it } from 'vitest';
import { openRig } from '../../../../sim/rig/index.ts';
import { sheetOf } from '../../../../src/features/lessons/open.ts';
import { slipAsked } from '../../../../src/features/lessons/slip.ts';
import { eventText } from '../../../../src/wording/index.ts';
import { lessonFiles } from '../../../content/lessons.ts';

const lessons = lessonFiles().map(({ lesson }) => lesson);

// symptom: what went wrong was told in the same breath as that something did
describe('a deliberate mistake', () => {
	it('is found by the learner in most lessons', () => {
		expect(lessons.filter((lesson) => slipAsked(lesson)).length).toBeGreaterThanOrEqual(24);
	});

	it('is told, not guessed at, where it is made on mains', () => {
		const onMains = lessons.filter(({ slip }) =>
			slip.log.some(({ type }) => type === 'mains.plug' || type === 'hall.power'),
		);
		expect(onMains.map(({ id }) => id)).toEqual(
			expect.arrayContaining(['power-along-the-row', 'circuits-and-distribution']),
		);
		for (const lesson of onMains) expect(slipAsked(lesson), lesson.id).toBeNull();
	});

	it.each(lessons)('of $id is one of its answers, by the log of the rig', (lesson) => {
		const asked = slipAsked(lesson);
		if (!asked) return;
		const rig = openRig(sheetOf(lesson.bench));
		const did = lesson.slip.log.filter(({ type }) => type !== 'clock.wait').map((event) => eventText(rig, event));
		expect(asked.options[asked.right]).toBe(did.join('. '));
		expect(asked.options.length).toBeGreaterThanOrEqual(3);
		expect(new Set(asked.options).size).toBe(asked.options.length);
	});
});
