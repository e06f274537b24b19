/**
 * What can happen to a rig: hands on panels, plugs and cables, the desk, the remote, sound, time, and what is wrong inside a
 * fixture. Plain JSON, so that a log of events with the sheet it began from is a whole history, and travels in a link; what
 * comes from outside is read through a schema here.
 */
export { LONGEST_LOG, readEvent, readLog } from './read.ts';
export type { PlacedFault, RemoteButton, RigEvent, RigEventType } from './types.ts';
