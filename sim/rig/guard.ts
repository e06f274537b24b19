import * as v from 'valibot';
import { readShape } from '../../shared/profile/index.ts';
import { type RigSheet, readSheet } from '../../shared/sheet/index.ts';
import { type PlacedFault, type RigEvent, readEvent } from '../event/index.ts';

/*
 * What a rig is handed at its doors, held to the schemas. A page reads each sheet, link and log through the same schemas where
 * they come in, so the site is built without this file (`src/slim`), and need not carry a schema library to open a rig.
 */

const optionsSchema = v.object({
	faults: v.optional(v.array(v.object({ fault: v.string(), place: v.string(), detail: v.optional(v.string()) }))),
});

const read = new WeakMap<RigSheet, RigSheet>();

/**
 * The sheet, with what it leaves out filled in.
 * @throws InputError `sheet.*` as `readSheet`; a sheet that passed is not read again
 */
export function soundSheet(sheet: RigSheet): RigSheet {
	const before = typeof sheet === 'object' && sheet !== null ? read.get(sheet) : undefined;
	if (before) return before;
	const found = readSheet(sheet);
	// whoever asks a rig for its sheet gets the one they gave
	const whole = JSON.stringify(found) === JSON.stringify(sheet) ? sheet : found;
	read.set(sheet, whole).set(whole, whole);
	return whole;
}

/** @throws InputError `event.shape` */
export function requireEvent(event: RigEvent): void {
	readEvent(event);
}

/** @throws InputError `rig.options` for what is no list of placed faults; whether each fits this rig is for the catalogue to say */
export function requireFaults(options: { readonly faults?: readonly PlacedFault[] }): void {
	readShape(optionsSchema, options, 'rig.options');
}
