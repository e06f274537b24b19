/**
 * How papers and results get about with no network: as links, QR codes and files, out to the learners and back. What comes in is
 * sorted into what it is, held to its bounds before it is parsed, and never run; a class's results are laid side by side, kept on
 * the device, and written out for a table, a learning platform or a record store. Marks are never carried: they are worked out
 * from the answers by whoever is handed in here as a `PaperMarker`. What a page fetches only when it is asked for (codes, pictures,
 * packages, statements) is taken from its own file.
 */
export { classCsv } from './csv.ts';
export { paperFile, resultFile, storeFile } from './files.ts';
export { readHandedIn } from './handedIn.ts';
export { paperFragment, readPaperLink, readResultLink, resultFragment } from './link.ts';
export { type ClassRow, type ClassTable, type Flag, type ResultStanding, type SortedOut, sortResults } from './sort.ts';
export { openPaperStore, type PaperStore, type TakenIn } from './store.ts';
export type {
	HandedIn,
	KeptCount,
	KeptName,
	KeptPaper,
	KeptResult,
	PaperMarker,
	PaperResult,
	PaperSetter,
	PaperSlip,
	Refusal,
	TakenResult,
	TrainerRecords,
} from './types.ts';
