import * as v from 'valibot';
import { idText, readShape } from '../profile/index.ts';
import { TICK_STEPS } from './steps.ts';
import { LONGEST_INITIALS, LONGEST_NOTE, MOST_TICKS, mergedTicks, NO_TICKS, type RigTicks } from './ticks.ts';

/** Entries that one entry may take the place of, at most: as many people at one step at once there are not. */
const MOST_OVER = 1000;

const entryId = v.pipe(v.string(), v.regex(/^[0-9a-f]{8}$/));
const entry = {
	id: entryId,
	row: idText,
	by: v.pipe(v.string(), v.regex(/^\p{L}+$/u), v.maxLength(LONGEST_INITIALS)),
	at: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
	over: v.pipe(v.array(entryId), v.maxLength(MOST_OVER)),
};
const ticksSchema = v.strictObject({
	version: v.literal(1),
	ticks: v.pipe(
		v.array(
			v.strictObject({
				...entry,
				step: v.picklist(TICK_STEPS),
				on: v.boolean(),
				plan: v.pipe(v.string(), v.regex(/^([0-9a-f]{8})?$/)),
			}),
		),
		v.maxLength(MOST_TICKS),
	),
	notes: v.pipe(
		v.array(v.strictObject({ ...entry, text: v.pipe(v.string(), v.maxLength(LONGEST_NOTE)) })),
		v.maxLength(MOST_TICKS),
	),
});

/**
 * Reads ticks from outside: a file, a link, what is kept. Rows that the plan no longer has are kept all the same: they may come back.
 * @param input parsed JSON, of any shape
 * @throws InputError `rig-ticks.shape`
 */
export function readTicks(input: unknown): RigTicks {
	return mergedTicks(NO_TICKS, readShape(ticksSchema, input, 'rig-ticks.shape'));
}
