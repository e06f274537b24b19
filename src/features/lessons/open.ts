import { InputError } from '../../../shared/error/index.ts';
import { bundledRig, quickSheet, type RigSheet, readSheet } from '../../../shared/sheet/index.ts';
import { makeDrill, makeTask, type Task } from '../../../sim/drill/index.ts';
import { openUnharmed } from '../../../sim/rig/trusted.ts';
import { drillTask } from '../../wording/index.ts';
import { presetSheet } from '../bench/index.ts';
import { conditionOf, goalFacts } from './goal.ts';
import type { BenchSpec, Lesson } from './schema.ts';

/** The sheet a lesson's bench opens on. @throws InputError `lesson.bench`, and what `readSheet` throws */
export function sheetOf({ rig, preset, quick, wide, change }: BenchSpec): RigSheet {
	const given = [rig && bundledRig(rig), preset && presetSheet(preset), quick && quickSheet(quick)].filter(
		(sheet): sheet is RigSheet => typeof sheet === 'object',
	);
	const [sheet] = given;
	if (!sheet || given.length > 1) throw new InputError('lesson.bench', 'bench', { expected: 'one-rig' });
	for (const id of Object.keys(change))
		if (!sheet.fixtures.some((fixture) => fixture.id === id))
			throw new InputError('lesson.bench', `bench.change.${id}`, { trouble: 'no-such-fixture', id });
	const hall = { ...sheet.hall, width: wide ?? sheet.hall.width };
	const aside = (hall.width - sheet.hall.width) / 2;
	const fixtures = sheet.fixtures.map((fixture) => {
		const { settings, place, ...rest } = change[fixture.id] ?? {};
		return {
			...fixture,
			...rest,
			settings: { ...fixture.settings, ...(settings as object | undefined) },
			place: { ...fixture.place, x: fixture.place.x + aside, ...(place as object | undefined) },
		};
	});
	return readSheet({ ...sheet, hall, fixtures });
}

/** A lesson's task and its words. */
export interface SetTask {
	readonly task: Task;
	readonly says: string;
}

/**
 * What the learner is to do, ready to be marked: a drill, or a goal on a bench.
 * @throws InputError `task.solved` where it is done before it begins
 */
export function taskOf({ task, bench }: Pick<Lesson, 'task' | 'bench'>): SetTask {
	if ('drill' in task) {
		const drill = makeDrill(task.drill, task.seed);
		return { task: drill, says: drillTask(drill) };
	}
	const { scene, hands, goal, free, on = bench } = task;
	const sheet = sheetOf(on);
	if (on.log.length > 0) throw new InputError('lesson.task', 'task.on.log', { trouble: 'log-before-task' });
	const rig = openUnharmed(sheet);
	const conditions = goal.map((each) => conditionOf(each, rig));
	const facts = Object.assign({}, ...goal.map((each) => goalFacts(each, rig)));
	const says = task.says.replace(/\{(\w+)\}/g, (whole, name: string) => String(facts[name] ?? whole));
	return { task: makeTask({ scene, hands, rig: sheet, goal: conditions, free }), says };
}
