/**
 * A drill being done: `DrillPage` reads kind and seed from the address, shows the task with its cautions first, then the bench
 * with only what the drill leaves to a hand. Marks come from the log alone (`sim/drill`), hints are the first step of the
 * shortest way from where the learner stands, and what comes of it goes to `src/features/progress`. The page itself is small: all
 * that a drill takes, the bench with it, is fetched once there is one to do. `taskAtWork` fetches the same for a task that a
 * lesson sets.
 */

export { DrillPage } from './DrillPage.tsx';
export type { OneTask, TaskSet } from './go.ts';
export { taskAtWork } from './taskAtWork.ts';
