import * as v from 'valibot';
import { idText, someSettingsSchema, whole } from '../profile/index.ts';

/**
 * The devices a rig is made of, by kind: what a sheet says of one, and which sockets it has. A new kind that takes frames in and
 * sends them on is a box: it is written here, in `sim/line/devices.ts`, and where it has words or a shape of its own in
 * `content/en/rig/parts.ts` and `src/features/bench/Row.tsx`. Whatever else walks a rig asks a device for its ports.
 *
 * The schemas are made only for who reads sheets: a page that opens rigs need not carry them.
 */

/** What the crew calls something. */
export const name = () => v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(60));
/** A number within bounds, both of them allowed: metres, where nothing else is said. */
export const metres = (least: number, most: number) =>
	v.pipe(v.number(), v.finite(), v.minValue(least), v.maxValue(most));

const flag = () => v.exactOptional(v.boolean());
const share = () => v.exactOptional(metres(0, 1));

/** What is wrong inside a fixture; what is left out is as it should be. */
export const conditionSchema = () =>
	v.strictObject({
		deadEmitters: v.exactOptional(v.pipe(v.array(idText), v.maxLength(16))),
		/** Share of its light that is left while it is too hot, 0 to 1. */
		foldBack: share(),
		covered: flag(),
		receiverDead: flag(),
		badSocket: v.exactOptional(v.nullable(v.picklist(['in', 'out']))),
		/** Unit loads that its line input puts on beyond its own. */
		extraLoads: v.exactOptional(metres(0, 64)),
		sensorDead: flag(),
		microphoneDead: flag(),
		displayDead: flag(),
		/** What its battery holds, as a share of what it held when new. */
		batteryHealth: share(),
		chargerDead: flag(),
		/** What keeps mains from it. */
		fuseBlown: flag(),
		supplyDead: flag(),
		socketDead: flag(),
		leadDead: flag(),
		breakerOff: flag(),
		sensorCovered: flag(),
	});

export const fixtureSchema = () =>
	v.strictObject({
		id: idText,
		/** What the crew calls it: 'wash 3, house left'. */
		name: name(),
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
		/** What is wrong inside it, where anything is. */
		condition: v.exactOptional(conditionSchema()),
		/** It had data and lost it: the slots that stood up in the last frame, or null where it could make nothing of that. */
		lost: v.exactOptional(
			v.nullable(v.pipe(v.array(v.strictObject({ slot: whole(1, 512), level: whole(0, 255) })), v.maxLength(512))),
		),
	});

export const deskSchema = () =>
	v.strictObject({
		name: name(),
		/** Output sockets: a letter, the universe it carries (E1.31: 1 to 63999), and whether it sends. */
		outputs: v.pipe(
			v.array(
				v.strictObject({
					id: v.pipe(v.string(), v.regex(/^[a-z]$/, 'small-letter')),
					universe: whole(1, 63999),
					on: v.optional(v.boolean(), true),
					/** Start code of its frames (E1.11); 0, which is levels, where left out. */
					startCode: v.exactOptional(whole(0, 255)),
				}),
			),
			v.minLength(1),
			v.maxLength(8),
		),
		/** What the desk thinks each fixture is. */
		patch: v.array(
			v.strictObject({ fixture: idText, universe: whole(1, 63999), address: whole(1, 512), mode: idText }),
		),
		/** Levels that stand up; all others are 0. */
		levels: v.optional(
			v.array(v.strictObject({ universe: whole(1, 63999), slot: whole(1, 512), level: whole(0, 255) })),
			[],
		),
		master: v.optional(whole(0, 255), 255),
		/** Its faders do nothing: it is blind or frozen, and sends what stood there when that began. */
		held: v.exactOptional(
			v.strictObject({
				by: v.picklist(['blind', 'frozen']),
				levels: v.array(v.strictObject({ universe: whole(1, 63999), slot: whole(1, 512), level: whole(0, 255) })),
				master: whole(0, 255),
			}),
		),
	});

/** Boxes by the sheet's lists of them. */
export const boxEntries = () => ({
	/** Splitters: one input `in`, outputs `1` to `n`, each a fresh line. */
	splitters: v.optional(
		v.array(
			v.strictObject({
				id: idText,
				name: name(),
				outputs: whole(2, 16),
				on: v.optional(v.boolean(), true),
				/** Numbers of outputs that send nothing on, where any do. */
				dead: v.exactOptional(v.pipe(v.array(whole(1, 16)), v.maxLength(16))),
			}),
		),
		[],
	),
});

export type SheetFixture = v.InferOutput<ReturnType<typeof fixtureSchema>>;
export type SheetDesk = v.InferOutput<ReturnType<typeof deskSchema>>;
type BoxEntries = ReturnType<typeof boxEntries>;
type Boxes = { [List in keyof BoxEntries]: v.InferOutput<BoxEntries[List]> };

/** All of a sheet that is a device. */
interface SheetDevices extends Boxes {
	readonly fixtures: readonly SheetFixture[];
	readonly desk: SheetDesk | null;
}

/** A sheet's lists of boxes, with nothing in them. */
export const noBoxes = (): Boxes => ({ splitters: [] });

/** One socket of a device. */
export interface DevicePort {
	/** Its id on the device: `in`, `out`, `a`, `3`. */
	readonly socket: string;
	/** What runs there, and so which plug fits: a line of E1.11. */
	readonly kind: 'line';
	/** Which way frames go by it, seen from the device. */
	readonly direction: 'in' | 'out';
	/** The universe that begins there; null where it carries whatever comes. */
	readonly universe: number | null;
	/**
	 * The socket of the same device whose frames come out here: by wire, with power or without and either way round, or sent afresh,
	 * which takes power. Null where they begin or end here.
	 */
	readonly passes: { readonly from: string; readonly by: 'wire' | 'power' } | null;
}

export type DeviceKind = 'desk' | 'fixture' | 'splitter';

/** A device as sheet and line know it. */
export interface SheetDevice {
	readonly kind: DeviceKind;
	/** `desk` for the desk. */
	readonly id: string;
	readonly name: string;
	/** Its own power switch. A desk has none here. */
	readonly on: boolean;
	readonly ports: readonly DevicePort[];
	/** Sockets that send nothing on. */
	readonly dead?: readonly string[];
}

export type BoxKind = Exclude<DeviceKind, 'desk' | 'fixture'>;

/** A device between the desk and the fixtures: it takes frames in and sends them on. */
export interface SheetBox extends SheetDevice {
	readonly kind: BoxKind;
}

/** The names of a sheet's lists of boxes. */
export const BOX_LISTS: readonly (keyof Boxes)[] = Object.freeze(Object.keys(noBoxes()) as (keyof Boxes)[]);

const port = (
	socket: string,
	direction: DevicePort['direction'],
	passes: DevicePort['passes'] = null,
	universe: DevicePort['universe'] = null,
): DevicePort => ({ socket, kind: 'line', direction, universe, passes });

const FIXTURE_PORTS: readonly DevicePort[] = Object.freeze([
	port('in', 'in', { from: 'out', by: 'wire' }),
	port('out', 'out', { from: 'in', by: 'wire' }),
]);

const boxes: { readonly [Kind in BoxKind]: (sheet: Boxes) => SheetBox[] } = {
	splitter: ({ splitters }) =>
		splitters.map(({ outputs, dead, ...box }) => ({
			kind: 'splitter',
			...box,
			...(dead === undefined ? {} : { dead: dead.map(String) }),
			ports: [
				port('in', 'in'),
				...Array.from({ length: outputs }, (_, i) => port(`${i + 1}`, 'out', { from: 'in', by: 'power' })),
			],
		})),
};

/** The boxes of a sheet, kind by kind, in its order. */
export const boxesOf = (sheet: Boxes): SheetBox[] => Object.values(boxes).flatMap((of) => of(sheet));

/** A sheet's lists of boxes, as boxes stand by now. */
export const boxListsOf = (sheet: Boxes, boxes: readonly SheetBox[]): Boxes => ({
	splitters: sheet.splitters.map(({ dead: _, ...splitter }) => {
		const { on = splitter.on, dead = [] } = boxes.find(({ id }) => id === splitter.id) ?? {};
		return { ...splitter, on, ...(dead.length > 0 ? { dead: dead.map(Number) } : {}) };
	}),
});

/** All devices of a sheet: the desk, the boxes, the fixtures, each in the sheet's order. */
export function devicesOf(sheet: SheetDevices): SheetDevice[] {
	const { desk } = sheet;
	return [
		...(desk === null
			? []
			: [
					{
						kind: 'desk' as const,
						id: 'desk',
						name: desk.name,
						on: true,
						ports: desk.outputs.map(({ id, universe }) => port(id, 'out', null, universe)),
					},
				]),
		...boxesOf(sheet),
		...sheet.fixtures.map(({ id, name: its, on }) => ({
			kind: 'fixture' as const,
			id,
			name: its,
			on,
			ports: FIXTURE_PORTS,
		})),
	];
}

/** What a cable's conductors are when nothing is wrong with them. */
export const GOOD_WIRES = Object.freeze({ common: 'sound', minus: 'sound', plus: 'sound', swapped: false } as const);
