import * as v from 'valibot';
import { idText, profileSchema, someSettingsSchema, whole } from '../profile/index.ts';

/**
 * The rig sheet: what stands where, set to what, wired how. Plain JSON, so that it can be a file,
 * a link or a drill. Settings left out are the profile's defaults.
 */

const name = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(60));
const metres = (least: number, most: number) => v.pipe(v.number(), v.finite(), v.minValue(least), v.maxValue(most));

/** A socket: device id, colon, socket id: `wash-1:in`, `desk:a`, `split:3`. */
export const portText = v.pipe(
	v.string(),
	v.regex(/^[a-z][a-z0-9-]{0,39}:[a-z0-9]{1,8}$/, 'Expected a socket such as wash-1:in, wash-1:out or desk:a'),
);

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

const fixtureSchema = v.strictObject({
	id: idText,
	/** What the crew calls it: 'wash 3, house left'. */
	name,
	profile: idText,
	place: v.strictObject({
		/** Along the wall and above the floor, metres. */
		x: metres(0, 200),
		y: metres(0, 40),
		/** Distance to the wall it lights, metres. */
		throw: metres(0.2, 100),
		overhead: v.optional(v.boolean(), false),
	}),
	settings: v.optional(someSettingsSchema, {}),
	/** Ten switches, first to tenth, and each slide's position from 0: for a DIP panel. */
	switches: v.optional(v.pipe(v.array(v.boolean()), v.length(10))),
	slides: v.optional(v.array(whole(0, 9))),
	/** Its own power switch. */
	on: v.optional(v.boolean(), true),
	/** Where its mains plug is: `wall`, `none`, or the fixture whose link socket feeds it. */
	plug: v.optional(idText, 'none'),
	/** Battery charge at the start, 0 to 1. */
	charge: v.optional(metres(0, 1), 1),
	/** Whether something stands between it and the person with the remote. */
	hidden: v.optional(v.boolean(), false),
});

const deskSchema = v.strictObject({
	name,
	/** Output sockets: a letter, the universe it carries (E1.31: 1 to 63999), and whether it sends. */
	outputs: v.pipe(
		v.array(
			v.strictObject({
				id: v.pipe(v.string(), v.regex(/^[a-z]$/, 'Expected one small letter')),
				universe: whole(1, 63999),
				on: v.optional(v.boolean(), true),
			}),
		),
		v.minLength(1),
		v.maxLength(8),
	),
	/** What the desk thinks each fixture is. */
	patch: v.array(v.strictObject({ fixture: idText, universe: whole(1, 63999), address: whole(1, 512), mode: idText })),
	/** Levels that stand up; all others are 0. */
	levels: v.optional(
		v.array(v.strictObject({ universe: whole(1, 63999), slot: whole(1, 512), level: whole(0, 255) })),
		[],
	),
	master: v.optional(whole(0, 255), 255),
});

export const sheetSchema = v.strictObject({
	version: v.literal(1),
	name,
	/** The wall the rig lights, metres. */
	hall: v.optional(v.strictObject({ width: metres(2, 200), height: metres(2, 40) }), { width: 16, height: 6 }),
	fixtures: v.pipe(v.array(fixtureSchema), v.maxLength(6400)),
	desk: v.optional(v.nullable(deskSchema), null),
	/** Splitters: one input `in`, outputs `1` to `n`, each a fresh line. */
	splitters: v.optional(
		v.array(v.strictObject({ id: idText, name, outputs: whole(2, 16), on: v.optional(v.boolean(), true) })),
		[],
	),
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
export type SheetFixture = RigSheet['fixtures'][number];
export type SheetCable = RigSheet['cables'][number];
export type SheetDesk = NonNullable<RigSheet['desk']>;
export type SheetSplitter = RigSheet['splitters'][number];
/** `device:socket`. */
export type Port = string;
