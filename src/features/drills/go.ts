import { type BundledKind, makeDrill } from '../../../sim/drill/index.ts';
import { drillTask } from '../../wording/index.ts';
import { type OneTask, type TasksAlike, taskAt } from './alike.ts';
import { anySeed } from './link.ts';

/** A task that somebody else sets, such as a lesson, drawn afresh at each go: a kind of drill, or tasks of one make. */
export type TaskSet = { readonly drill: BundledKind } | TasksAlike;

/** A seed by chance for another go. @param not one that is not to come again, where there is a choice */
export function seedOf(set: TaskSet, not?: number): number {
	if ('drill' in set) return anySeed(not);
	const others = Array.from({ length: set.count }, (_, i) => i).filter((i) => i !== not);
	return others[anySeed() % Math.max(1, others.length)] ?? 0;
}

/** Whether another go is another task. */
export const hasOthers = (set: TaskSet): boolean => 'drill' in set || set.count > 1;

/** One go at such a task, and its words. @param seed which drill of the kind, or which of the tasks alike */
export function goOf(set: TaskSet, seed: number): OneTask {
	if (!('drill' in set)) return taskAt(set, seed);
	const task = makeDrill(set.drill, seed);
	return { task, says: drillTask(task) };
}
