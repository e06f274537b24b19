/** What the finder does in the worker: the door of `src/engine`, and of the fault tree, which takes up the finder's kept rig. */
import { makeWork } from './work.ts';

export { keptRig } from './keptRig.ts';

const { ahead, ...routes } = makeWork();

export { ahead, routes };
