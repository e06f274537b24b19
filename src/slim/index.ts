/**
 * What keeps the scripts of bench and finder light: build-time code that no page loads. `leanChunks` puts all that one page's
 * islands need at once into one file (many small files compress worse than one); `leanDoors` opens rigs with no schema at hand, since what is handed to them was
 * read where it came in; `leanWorker` leaves reason trails, and what reads the bundled rigs, out of workers; `leanLate` has the
 * workers that ask a finder fetch what they need only in part.
 */
export { leanChunks } from './chunks.ts';
export { leanDoors } from './doors.ts';
export { leanLate } from './late.ts';
export { leanWorker } from './worker.ts';
