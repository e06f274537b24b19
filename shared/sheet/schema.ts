import * as v from 'valibot';
import { idText, profileSchema, whole } from '../profile/index.ts';
import { boxEntries, deskSchema, fixtureSchema, metres, name } from './devices.ts';

/**
 * The rig sheet: what stands where, set to what, wired how. Plain JSON, so that it can be a file,
 * a link or a drill. Settings left out are the profile's defaults.
 */

/** A socket: device id, colon, socket id: `wash-1:in`, `desk:a`, `split:3`. */
export const portText = v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]{0,39}:[a-z0-9]{1,8}$/, 'socket'));

/** One conductor of a cable: sound, or broken somewhere along it. */
const wire = v.picklist(['sound', 'open']);

export const cableSchema = v.strictObject({
	id: idText,
	/** A microphone cable fits the socket but is not made for the signal. */
	kind: v.picklist(['data', 'microphone']),
	/** Metres. */
	length: metres(0.1, 2000),
	/** Where each end is plugged; null hangs loose. */
	from: v.nullable(portText),
	to: v.nullable(portText),
	common: v.optional(wire, 'sound'),
	minus: v.optional(wire, 'sound'),
	plus: v.optional(wire, 'sound'),
	/** The data wires change places along it. */
	swapped: v.optional(v.boolean(), false),
});

export const sheetSchema = v.strictObject({
	version: v.literal(1),
	name: name(),
	/** The wall the rig lights, metres; whether there is power in its sockets, and how loud it is there, 0 to 1: power and silence where left out. */
	hall: v.optional(
		v.strictObject({
			width: metres(2, 200),
			height: metres(2, 40),
			power: v.exactOptional(v.boolean()),
			sound: v.exactOptional(metres(0, 1)),
		}),
		{ width: 16, height: 6 },
	),
	fixtures: v.pipe(v.array(fixtureSchema()), v.maxLength(6400)),
	desk: v.optional(v.nullable(deskSchema()), null),
	...boxEntries(),
	cables: v.optional(v.array(cableSchema), []),
	/** Sockets with a terminator in them. */
	terminators: v.optional(v.array(portText), []),
	/** The remote in the tech's hand, and the code it sends. */
	remote: v.optional(v.nullable(v.strictObject({ code: whole(1, 4), battery: v.optional(v.boolean(), true) })), null),
	/** Profiles of the crew's own, beside the bundled ones. */
	profiles: v.optional(v.pipe(v.array(profileSchema), v.maxLength(40)), []),
});

export type RigSheet = v.InferOutput<typeof sheetSchema>;
export type RigSheetInput = v.InferInput<typeof sheetSchema>;
export type SheetCable = RigSheet['cables'][number];
/** `device:socket`. */
export type Port = string;
