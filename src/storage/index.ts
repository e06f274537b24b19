/**
 * All that is kept on the device, and all that comes in or goes out as a link or a file. Each kept thing is declared once
 * (`kept.ts`): its key, its version, its bounds; nothing else in the site touches a browser's store. What cannot be read, or a newer
 * version wrote, is set aside whole before anything is written over it (`aside.ts`), and is listed, saved and deleted by a person on
 * a page of its own. A shelf (`shelf.ts`) reads entry by entry, reads again before it changes anything, and holds what a device will
 * not take for as long as the page stands. A trainer's records are in a database (`records.ts`). What comes from outside is held to
 * bounds on its text before anything is made of it (`json.ts`, `packed.ts`).
 */
export {
	asideAt,
	asideKey,
	asideKeys,
	asidesIn,
	makeRoom,
	moveAside,
	nameFor,
	putInPlace,
	type SetAside,
	setAside,
	type Why,
} from './aside.ts';
export {
	type BrowserStore,
	DEVICE,
	dropText,
	followKept,
	isReadable,
	keysIn,
	plainName,
	putText,
	saveText,
	TAB,
	tellKept,
	textAt,
} from './device.ts';
export { freshId } from './fresh.ts';
export { isKept } from './isKept.ts';
export { endOfJson, type JsonBounds, type JsonTrouble, LINK_BOUNDS, MOST_READ, readJson } from './json.ts';
export { Keeping } from './Keeping.tsx';
export {
	DATABASE,
	isNewer,
	isOurs,
	KEPT,
	type KeepingWords,
	type KeptId,
	LISTS,
	type List,
	mayHoldRecords,
	thingAt,
} from './kept.ts';
export { deflateText, fromBase64url, inflateText, toBase64url } from './packed.ts';
export { readBuzz, writeBuzz } from './pages/buzz.ts';
export { resultsText } from './pages/done.ts';
export { offlineChannel } from './pages/offline.ts';
export { readTheme, type Theme, themes, writeTheme } from './pages/theme.ts';
export { updateChannel } from './pages/update.ts';
export { isRecord, type Migrate, readRecord } from './record.ts';
export { memoryRecords, openRecords, type RecordAside, type Records } from './records.ts';
export { type OnShelf, type ReadResult, type Shelf, shelfOf } from './shelf.ts';
export { Trouble } from './Trouble.tsx';
export { type Hold, type Holders, takeHold } from './tabs.ts';
