import fc from 'fast-check';
import { expect, it } from 'vitest';
import { makeDrill } from '../../../../sim/drill/index.ts';
import { type OneTask, packTasks, taskAt } from '../../../../src/features/drills/alike.ts';
import { taskOf } from '../../../../src/features/lessons/open.ts';
import { drillTask } from '../../../../src/wording/index.ts';
import { lessonFiles } from '../../../content/lessons.ts';
import { runs } from '../../../runs.ts';

const kinds = ['address-keys', 'held-colour', 'row-back-to-back', 'two-universes', 'line-longer'] as const;
const tasks = fc.array(
	fc.tuple(fc.constantFrom(...kinds), fc.nat(9999)).map(([kind, seed]): OneTask => {
		const task = makeDrill(kind, seed);
		return { task, says: drillTask(task) };
	}),
	{ minLength: 1, maxLength: 6 },
);

it('gives each task again as it was packed, through JSON, however much they differ', () => {
	fc.assert(
		fc.property(tasks, (all) => {
			const packed = JSON.parse(JSON.stringify(packTasks(all)));
			expect(all.map((_, i) => taskAt(packed, i))).toEqual(all);
			expect(taskAt(packed, all.length)).toEqual(all[0]);
		}),
		{ numRuns: runs(20) },
	);
	expect(() => packTasks([])).toThrow(RangeError);
});

// a page with eight tasks whole was 119 kB
it('carries what a lesson sets in less than two tasks whole and 400 bytes for each other', () => {
	for (const { lesson } of lessonFiles()) {
		if (lesson.tasks.length < 2) continue;
		const set = taskOf(lesson);
		if ('drill' in set) throw new Error(lesson.id);
		const bytes = (value: unknown) => JSON.stringify(value).length;
		expect(bytes(set), lesson.id).toBeLessThan(2 * bytes(set.first) + 400 * set.count);
	}
});
