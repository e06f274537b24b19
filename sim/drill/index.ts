/**
 * Drills: tasks on a rig, generated from a seed without end. A drill is plain JSON: the sheet as the learner finds it and a
 * goal made of tagged conditions; it is marked by replaying the learner's log and looking at the rig, and its shortest way is
 * worked out over the machine itself, so that hints and the fewest presses are computed and never typed.
 *
 * Modelled: what hands may touch (each drill says which), presses counted one by one, everything that was right made part
 * of the goal so that spoiling it shows, cautions found by walking the way, and a reaction between what a display
 * shows and a key coming up (`way/hold.ts`), so that a hold ends near a value and taps do the rest. Left out: how long a
 * person takes to think and to walk. That changes nothing of what is right.
 */

import * as v from 'valibot';
import { InputError } from '../../shared/error/index.ts';
import { idText, readShape, SETTING_KEYS, whole } from '../../shared/profile/index.ts';
import { portText, readSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import type { Rig } from '../rig/index.ts';
import type { CauseGroup } from './causes.ts';
import * as trusted from './trusted.ts';
import type { HandsOn, Mark, Task } from './types.ts';

export type { CauseGroup } from './causes.ts';
export { findingName, findingsOf } from './check.ts';
export { isInHand, pressesOf } from './hands.ts';
export type { Harm } from './harm.ts';
export { DRILL_KINDS, type DrillKindInfo } from './kinds/index.ts';
export { type UnseenMaker, unseenTurn, unseenWith } from './kinds/unseen.ts';
export { makeDrill, makeDrillWhere, makeTask } from './make.ts';
export { RIG_GOALS, type RigGoal, type RigTask, rigTask } from './on-rig.ts';
export { type OwnTask, ownSeedAfter, ownTask } from './own.ts';
export {
	BUNDLED_KINDS,
	type BundledKind,
	DRILL_IDS,
	type Drill,
	type DrillCondition,
	type DrillFacts,
	type DrillKind,
	type DrillScene,
	type FactValue,
	type Finding,
	type HandsOn,
	isUnseen,
	type Mark,
	type Range,
	type Source,
	seedInTurn,
	type Task,
	UNSEEN_LAW_TURNS,
	UNSEEN_TURNS,
} from './types.ts';
export { fewestPresses, HAND, type Hint } from './way/index.ts';
export { strangerPresses } from './way/stranger.ts';

/*
 * The checked door: a task is held to its schema before it is marked or its way is looked for. The site makes its drills itself, from
 * a kind and a seed, and goes through `trusted.ts`.
 */

const HANDS = ['panel', 'power', 'desk', 'line', 'mains', 'remote'] as const satisfies readonly HandsOn[];

const fixture = idText;
const universe = whole(1, 63999);
const slot = whole(1, 512);
const key = v.picklist(SETTING_KEYS);
const number = v.pipe(v.number(), v.finite());
const within = v.array(v.strictObject({ from: number, to: number }));
const is = <const T extends string>(name: T) => v.literal(name);

const conditionSchema = v.variant('is', [
	v.strictObject({ is: is('setting'), fixture, key, value: v.union([v.string(), number, v.boolean()]) }),
	v.strictObject({ is: is('setting-within'), fixture, key, within }),
	v.strictObject({ is: is('defaults'), fixture }),
	v.strictObject({ is: is('kept'), fixture, keys: v.array(key) }),
	v.strictObject({ is: is('on'), fixture }),
	v.strictObject({ is: is('fed'), fixture, from: idText }),
	v.strictObject({ is: is('slot'), universe, slot, within }),
	v.strictObject({ is: is('levels-kept'), universe, except: v.array(slot) }),
	v.strictObject({ is: is('master'), level: whole(0, 255) }),
	v.strictObject({ is: is('output'), output: v.string(), universe }),
	v.strictObject({ is: is('joined'), a: portText, b: portText, metres: number }),
	v.strictObject({ is: is('terminators'), ports: v.array(portText) }),
	v.strictObject({
		is: is('data-from'),
		fixture,
		source: v.variant('kind', [
			v.strictObject({ kind: is('desk'), universe }),
			v.strictObject({ kind: is('leader'), fixture }),
		]),
	}),
	v.strictObject({ is: is('steady'), fixture }),
	v.strictObject({ is: is('lit'), fixture }),
]);

const taskSchema = v.object({
	goal: v.pipe(v.array(conditionSchema), v.minLength(1)),
	hands: v.array(v.picklist(HANDS)),
});

const read = new WeakMap<Task, Task>();

/**
 * The task, with what its sheet leaves out filled in; one that passed is not read again.
 * @throws InputError `drill.shape` for what is no task, with the first place that is off; `sheet.*` as `readSheet`;
 *   `drill.fixture` for a goal with a fixture that its sheet has not
 */
function checkedTask<T extends Task>(task: T): T {
	const before = typeof task === 'object' && task !== null ? read.get(task) : undefined;
	if (before) return before as T;
	const { goal } = readShape(taskSchema, task, 'drill.shape');
	const sheet = readSheet(task.sheet);
	const known = new Set(sheet.fixtures.map(({ id }) => id));
	for (const [i, condition] of goal.entries())
		if ('fixture' in condition && !known.has(condition.fixture))
			throw new InputError('drill.fixture', `goal[${i}].fixture`, {
				trouble: 'no-such-fixture',
				id: condition.fixture,
			});
	const whole = JSON.stringify(sheet) === JSON.stringify(task.sheet) ? task : { ...task, sheet };
	read.set(task, whole).set(whole, whole);
	return whole;
}

/**
 * Marks a learner's log: played from the start of the drill, and looked at where it ends. Nothing that was typed or clicked
 * elsewhere counts.
 * @throws InputError `drill.shape` or `drill.fixture` for what is no drill, `drill.hands` for an event it does not leave to the
 *   learner, and as `replay` for a log that is none or an event that fits nothing
 */
export const markDrill = (drill: Task, log: readonly RigEvent[]): Mark => trusted.markDrill(checkedTask(drill), log);

/**
 * Events that finish a drill from where a log leaves the learner, with the fewest presses that a person's hand can be sure of. Its
 * first event is the hint. Empty when the drill is done.
 * @throws InputError `drill.shape` or `drill.fixture` for what is no drill, `drill.hands` for a log with events that are not in
 *   hand, as `replay` for a log that is none or an event that fits nothing, and `drill.stuck` where hands cannot finish it any more
 */
export const shortestWay = (drill: Task, log: readonly RigEvent[] = []): RigEvent[] =>
	trusted.shortestWay(checkedTask(drill), log);

/** What is not as the drill asks, causes first, each with what follows from it. @throws InputError `drill.shape` or `drill.fixture` for what is no drill */
export const causesOf = (drill: Task, rig: Rig): CauseGroup[] => trusted.causesOf(checkedTask(drill), rig);

/** The first step of the shortest way from where a rig stands, with what a hand needs to know of it; null where nothing is left. @throws InputError as `shortestWay` */
export const hintOn = (drill: Task, rig: Rig): trusted.Hint | null => trusted.hintOn(checkedTask(drill), rig);
