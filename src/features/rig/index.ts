/**
 * An open rig as a page holds it: one store around `sim/rig` through which everything goes in and from which everything shown is
 * read, a clock that runs it by real time while something moves, changes to its sheet, the link that carries it to someone else,
 * its keeping on the device and of those whose place it took, and a store that takes only what a drill leaves to a hand. Data flows
 * one way: an event goes in by `send`, `version` goes up, views look again. Whatever comes from outside (a link, storage) goes
 * through `readSheet` and `readLog`, is held to sizes a phone can bear, and is never run.
 */

export { type OnFrame, type RigClock, runClock } from './clock.ts';
export { freeId, withDesk, withFixture, withName, withoutFixture } from './edit.ts';
export { drillStore, handsText } from './handed.ts';
export {
	type Aside,
	asideCount,
	asideIdOf,
	asideList,
	asideNameOf,
	asideText,
	type BenchHold,
	type BenchReading,
	benchText,
	holdsPlace,
	isKept,
	keep,
	putAside,
	readText,
	setKeptAside,
	takePlace,
	textKept,
} from './keep.ts';
export { type BenchRecord, fitForKeeping, holdsRig, MOST } from './kept.ts';
export { linkOf, readBenchFile, readBenchSheet, readLink } from './link.ts';
export { FULL_LOG, minusLast, type PlayOptions, type PlayProgress, playBack, playInStretches } from './play.ts';
export {
	type Announcement,
	type RigStore,
	rigStore,
	SPEEDS,
	type Speed,
	storeOf,
	useRig,
	useWatched,
} from './store.ts';
