import { type DrillKind, makeDrill, type Task } from '../../../sim/drill/index.ts';
import { drillTask } from '../../wording/index.ts';

/** A task that somebody else sets, such as a lesson: a kind of drill, drawn afresh at each go, or one task and its words. */
export type TaskSet = { readonly drill: DrillKind } | { readonly task: Task; readonly says: string };

/** One go at such a task, and its words. @param seed which drill of the kind; the one task is always the same */
export function goOf(set: TaskSet, seed: number): { readonly task: Task; readonly says: string } {
	if (!('drill' in set)) return set;
	const task = makeDrill(set.drill, seed);
	return { task, says: drillTask(task) };
}
