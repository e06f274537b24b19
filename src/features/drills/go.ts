import { type DrillKind, isUnseen, makeDrill, type UnseenMaker } from '../../../sim/drill/index.ts';
import { drillTask } from '../../wording/index.ts';
import { type OneTask, type TasksAlike, taskAt } from './alike.ts';
import { anySeed, seedAfter } from './link.ts';

/** A task that somebody else sets, such as a lesson, drawn afresh at each go: a kind of drill, or tasks of one make. */
export type TaskSet = { readonly drill: DrillKind } | TasksAlike;

/** Whether its panels are ones that nobody has seen, which take words to make. */
export const isSetUnseen = (set: TaskSet): boolean => 'drill' in set && isUnseen(set.drill);

/** A seed by chance for another go. @param not the last one, not to come again where there is a choice; of panels never seen nor its law */
export function seedOf(set: TaskSet, not?: number): number {
	if ('drill' in set) return not === undefined ? anySeed() : seedAfter(set.drill, not);
	const others = Array.from({ length: set.count }, (_, i) => i).filter((i) => i !== not);
	return others[anySeed() % Math.max(1, others.length)] ?? 0;
}

/** Whether another go is another task. */
export const hasOthers = (set: TaskSet): boolean => 'drill' in set || set.count > 1;

/**
 * One go at such a task, and its words.
 * @param seed which drill of the kind, or which of the tasks alike
 * @param unseen makes those on panels that nobody has seen
 */
export function goOf(set: TaskSet, seed: number, unseen?: UnseenMaker): OneTask {
	if (!('drill' in set)) return taskAt(set, seed);
	const task = drillOf(set.drill, seed, unseen);
	return { task, says: drillTask(task) };
}

function drillOf(kind: DrillKind, seed: number, unseen: UnseenMaker | undefined) {
	if (!isUnseen(kind)) return makeDrill(kind, seed);
	if (!unseen) throw new RangeError('nothing at hand that makes panels never seen');
	return makeDrill(kind, seed, unseen);
}
