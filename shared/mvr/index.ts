/**
 * A whole rig from and to an open file, MVR (DIN SPEC 15801). A file of any size comes in by `gatherMvr`, which takes out of it what is
 * read. Reading goes in three steps: the archive (`readMvrArchive`), its scene as plain data (`readScene`), and a plan out of that (`toPlan`), with everything that was lost on the way (`left`). Fixture files in
 * it are read by `shared/gdtf`; a kind of fixture, or a mode, that the file leaves open waits for a pick (`kinds`). `writeMvr` goes
 * the other way, and what it wrote comes back as it was, but for what it tells. What is hostile or damaged ends in an `InputError`,
 * never in anything else: the bounds are those of `shared/gdtf`. Left out: all that is drawn, and whatever is no fixture.
 */
export { type MvrArchive, readMvrArchive } from './archive.ts';
export { type FileParts, gatherMvr } from './gather.ts';
export { type Kind, type MvrPicks, NO_PICKS } from './kinds.ts';
export { MVR_CODES, type MvrCode, type MvrFacts, type MvrLeft, type PlanPart } from './left.ts';
export { type Matrix, readMatrix, within } from './place.ts';
export { type MvrNames, type PlanFromScene, toPlan } from './plan.ts';
export { readScene, type Scene, type SceneFixture } from './scene.ts';
export { type WrittenScene, writeMvr } from './write.ts';
