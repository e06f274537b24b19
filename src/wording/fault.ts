import { type FaultWords, faults } from '#words/faults/index.ts';
import { type MendWords, mends } from '#words/repairs/index.ts';
import type { Says } from '#words/rig/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { PlacedFault } from '../../sim/event/index.ts';
import { MENDS, type MendId } from '../../sim/fault/index.ts';
import { faultFacts } from './faultFacts.ts';
import { sentence } from './fill.ts';
import { sheetFacts } from './sheetFacts.ts';
import { sheetKinds } from './sheetNames.ts';

/** Most characters that go on a strip of tape so that it can be read from where one stands. Ours, no source. */
const TAPE_LENGTH = 40;

/** What a tech would call the fault, in a few words with no place and no full stop: 'Start address one slot out'. @throws InputError `fault.unknown` or `fault.place`. */
export function faultName(sheet: RigSheet, placed: PlacedFault): string {
	return faultSays(sheet, placed, ({ name }) => name);
}

/** What has happened and what it does, in a sentence or two. @throws InputError `fault.unknown` or `fault.place`. */
export function faultCause(sheet: RigSheet, placed: PlacedFault): string {
	return faultSays(sheet, placed, ({ cause }) => cause);
}

/** What to write on the tape: at most `TAPE_LENGTH` characters; a name that would run over is cut there. @throws InputError `fault.unknown` or `fault.place`. */
export function faultTape(sheet: RigSheet, placed: PlacedFault): string {
	return faultSays(sheet, placed, ({ tape }) => tape)
		.slice(0, TAPE_LENGTH)
		.trimEnd();
}

function faultSays(sheet: RigSheet, placed: PlacedFault, part: (words: FaultWords) => Says): string {
	const facts = faultFacts(sheet, placed);
	return sentence(part(faults[placed.fault] as FaultWords), facts, sheetKinds(sheet, placed.place));
}

/** A mend in a few words with its place and no full stop: 'Switch on wash 1, house left'. */
export function mendTitle(sheet: RigSheet, mend: MendId, place: string): string {
	return mendSays(sheet, mend, place, ({ title }) => title);
}

/** What to do, in one to three sentences. Its cautions are the catalogue's, by id. */
export function mendText(sheet: RigSheet, mend: MendId, place: string): string {
	return mendSays(sheet, mend, place, ({ does }) => does);
}

/** How to tell that it is mended. */
export function mendConfirm(sheet: RigSheet, mend: MendId, place: string): string {
	return mendSays(sheet, mend, place, ({ confirm }) => confirm);
}

function mendSays(sheet: RigSheet, mend: MendId, place: string, part: (words: MendWords) => Says): string {
	const facts = { ...sheetFacts(sheet, place), mendTime: MENDS[mend].seconds * 1000 };
	return sentence(part(mends[mend] as MendWords), facts, sheetKinds(sheet, place));
}
