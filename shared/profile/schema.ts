import * as v from 'valibot';
import { idText, settingsSchema, someSettingsSchema, whole } from './settings.ts';

/**
 * What a fixture is, as plain data. The shapes are checked here; that the parts fit each other
 * (bands, slots, ids) is checked in `check.ts`.
 */

const title = v.pipe(v.string(), v.minLength(1), v.maxLength(40));
const level = whole(0, 255);
const amount = (least: number, most: number) => v.pipe(v.number(), v.finite(), v.minValue(least), v.maxValue(most));

// ---- light ---------------------------------------------------------------------------------

const emitterSchema = v.strictObject({
	id: idText,
	name: title,
	/** CIE 1931 chromaticity x, y. */
	xy: v.pipe(
		v.tuple([amount(0, 1), amount(0, 1)]),
		v.check(([x, y]) => x + y <= 1, 'chromaticity'),
	),
	/** Luminous flux at full, lumens (all cells together). */
	lumens: amount(0, 1e5),
	/** Electrical power at full, watts (all cells together). */
	watts: amount(0, 5000),
	/** Mostly outside what an eye sees; carries the ultraviolet caution. */
	ultraviolet: v.optional(v.boolean(), false),
});

const staticSchema = v.strictObject({
	id: idText,
	name: title,
	/** Emitter id to level 0..255; an emitter not named is out. */
	levels: v.record(idText, level),
});

/** change: steps; fade: crossfades; pulse: swells; strobe: flashes; sound: answers the microphone. */
export const PROGRAMME_KINDS = ['change', 'fade', 'pulse', 'strobe', 'sound'] as const;
/** How a sound programme answers: next colour on a beat, swell with loudness, flash on a beat, or run along the cells. */
export const SOUND_ANSWERS = ['step', 'swell', 'flash', 'run'] as const;

const programmeSchema = v.pipe(
	v.strictObject({
		id: idText,
		name: title,
		kind: v.picklist(PROGRAMME_KINDS),
		answer: v.optional(v.picklist(SOUND_ANSWERS)),
		/** Held colours it goes through, in order. */
		colours: v.pipe(v.array(idText), v.minLength(1)),
		/** Seconds a step (strobe: seconds a flash) at speed 1 and at speed 100. */
		slowest: amount(0.02, 600),
		fastest: amount(0.02, 600),
	}),
	v.check(({ slowest, fastest }) => slowest >= fastest, 'slowest-over-fastest'),
);

// ---- slots ---------------------------------------------------------------------------------

/** What a band of a slot does. */
const effectSchema = v.variant('do', [
	v.strictObject({ do: v.literal('nothing') }),
	v.strictObject({ do: v.literal('open') }),
	v.strictObject({ do: v.literal('dark') }),
	/** Flashes a second, rising across the band. */
	v.strictObject({ do: v.literal('strobe'), slow: amount(0.1, 30), fast: amount(0.1, 30) }),
	v.strictObject({ do: v.literal('held'), held: idText }),
	v.strictObject({ do: v.literal('programme'), programme: idText }),
]);

const bandSchema = v.strictObject({
	id: idText,
	name: title,
	/** First and last value, inclusive. The rule that they lie in 0..255 is in `check.ts`, which names the place. */
	from: v.pipe(v.number(), v.integer()),
	to: v.pipe(v.number(), v.integer()),
	effect: effectSchema,
});

const slotSchema = v.strictObject({
	id: idText,
	name: title,
	/** Slot number within the footprint, from 1. For 16 bit: where the coarse half sits. */
	at: whole(1, 512),
	/** Where the fine half sits, for a 16-bit slot. */
	fine: v.optional(whole(1, 512)),
	drives: v.variant('kind', [
		v.strictObject({ kind: v.literal('intensity') }),
		v.strictObject({ kind: v.literal('emitter'), emitter: idText }),
		/** Speed 1..100 of whatever programme a function band starts. */
		v.strictObject({ kind: v.literal('speed') }),
		v.strictObject({ kind: v.literal('bands'), bands: v.pipe(v.array(bandSchema), v.minLength(1)) }),
	]),
	/** Cells it drives, from 1; absent: all. */
	cells: v.optional(v.pipe(v.array(whole(1, 64)), v.minLength(1))),
});

const modeSchema = v.strictObject({ id: idText, name: title, slots: v.pipe(v.array(slotSchema), v.minLength(1)) });

// ---- panel ---------------------------------------------------------------------------------

const label = v.pipe(v.string(), v.minLength(1), v.maxLength(16));
/**
 * Every key a panel can have, by what it does; permanent, since logs and links hold them. `down` and `up` go to the next item and the one
 * before, and lower and raise a value; so do `right` and `left` of a knob, where right is next and higher. `page` goes to the next
 * function. `set` goes in and keeps, `back` leaves.
 */
export const KEYS = Object.freeze(['back', 'down', 'up', 'set', 'left', 'right', 'page'] as const);
const key = v.picklist(KEYS);

/** What a panel obeys, besides its menu: see `law.ts`. */
const lawSchema = v.strictObject({
	/** `tree`: items are stood on, opened, kept. `flat`: one row of functions, and the one stood on is what the light does. */
	shape: v.picklist(['tree', 'flat']),
	/** Whether a value acts as it comes by, or once it is stored. */
	acts: v.picklist(['stored', 'scrolling']),
	/** Stored by the key that keeps, or by itself so many milliseconds after the last press. */
	stores: v.union([v.literal('enter'), v.strictObject({ after: whole(1000, 60000) })]),
	/** How a value that is not yet stored shows: by itself, behind an arrow, or blinking. */
	unstored: v.picklist(['value', 'arrow', 'blink']),
	/** What the display comes back to, so many milliseconds after the last press; null: it stays at its page. Going dark is a setting, `sleep`. */
	rests: v.nullable(v.strictObject({ on: v.picklist(['address', 'mode']), after: whole(1000, 120000) })),
	/** A key that does something else where it is held so many milliseconds; it then does its own as it is let go. */
	long: v.nullable(v.strictObject({ key, after: whole(300, 5000), does: v.picklist(['set', 'back']) })),
	/** The key that is held to open a locked panel. */
	opens: key,
});

const settingKey = v.picklist(Object.keys(settingsSchema.entries) as (keyof typeof settingsSchema.entries)[]);

/** Who decides the light while a flat panel stands at this function; every function of one says it. */
const work = v.exactOptional(settingsSchema.entries.work);

const choiceItem = v.strictObject({
	kind: v.literal('choice'),
	id: idText,
	label,
	title,
	work,
	setting: settingKey,
	options: v.pipe(v.array(v.strictObject({ value: v.union([v.string(), v.number()]), label })), v.minLength(2)),
	/** What the real one offers besides, and the simulated one does nothing for: `at` is its place in the whole list, from 0. */
	idle: v.exactOptional(v.pipe(v.array(v.strictObject({ at: whole(0, 511), label })), v.maxLength(200))),
});
const numberItem = v.strictObject({
	kind: v.literal('number'),
	id: idText,
	label,
	title,
	work,
	setting: settingKey,
	least: v.pipe(v.number(), v.integer()),
	most: v.pipe(v.number(), v.integer()),
	/** Past the last comes the first again. */
	wraps: v.boolean(),
	unit: v.optional(v.pipe(v.string(), v.maxLength(4)), ''),
});
const actionItem = v.strictObject({
	kind: v.literal('action'),
	id: idText,
	label,
	title,
	action: v.picklist(['defaults']),
	ask: label,
});
const infoItem = v.strictObject({
	kind: v.literal('info'),
	id: idText,
	label,
	title,
	work,
	/** `nothing`: an item that the real one has and the simulated one does nothing for. */
	shows: v.picklist(['charge', 'hours', 'signal', 'footprint', 'nothing']),
});
const leafItem = v.variant('kind', [choiceItem, numberItem, actionItem, infoItem]);
const menuItem = v.strictObject({
	kind: v.literal('menu'),
	id: idText,
	label,
	title,
	items: v.pipe(v.array(leafItem), v.minLength(1)),
});
const anyItem = v.variant('kind', [choiceItem, numberItem, actionItem, infoItem, menuItem]);

const repeatSchema = v.strictObject({
	/** Milliseconds held before the key repeats, and between repeats. */
	after: whole(100, 2000),
	every: whole(20, 1000),
	/** Repeats after which numbers move by `bigStep`. */
	quickAfter: whole(1, 100),
	bigStep: whole(2, 100),
});

const keyed = {
	/** One to five, in the order they stand in. */
	keys: v.pipe(v.array(key), v.minLength(1), v.maxLength(5)),
	/** What is printed on or beside a key, where somebody said so; else it is called by what it does. */
	printed: v.exactOptional(v.record(key, v.pipe(v.string(), v.minLength(1), v.maxLength(12)))),
	/** Left out: the tree that `lawOf` gives. */
	law: v.exactOptional(lawSchema),
	repeat: repeatSchema,
	/** Milliseconds a key is held to open a locked panel. */
	unlockHold: whole(500, 10000),
	/** Milliseconds without a key until a panel with its lock on locks. */
	lockAfter: whole(1000, 120000),
	/**
	 * What scrolling does to the light before anything is stored. `still`: nothing, whatever item or value is on the display. `acts`:
	 * a value acts as it comes by, as a law can say too. Left out, with no law that says so: unknown, to be taken for `acts` by whoever asks whether a look harms a show.
	 */
	scrolling: v.optional(v.picklist(['still', 'acts'])),
	menu: v.pipe(v.array(anyItem), v.minLength(1)),
};

const panelSchema = v.variant('kind', [
	v.strictObject({ kind: v.literal('code'), columns: v.literal(4), ...keyed }),
	v.strictObject({ kind: v.literal('text'), columns: whole(8, 40), ...keyed }),
	v.strictObject({
		kind: v.literal('dip'),
		/** How the nine address switches are read: see `shared/dmx`. */
		wiring: v.picklist(['sum', 'sum-plus-one']),
		/** Small slide switches beside the ten. */
		slides: v.array(
			v.strictObject({
				id: idText,
				title,
				positions: v.pipe(
					v.array(v.strictObject({ label, sets: someSettingsSchema })),
					v.minLength(2),
					v.maxLength(10),
				),
			}),
		),
		/** With switch 10 up the other nine mean this instead of an address; lowest switch is the lowest bit. */
		fields: v.array(
			v.strictObject({
				id: idText,
				title,
				switches: v.pipe(v.array(whole(1, 9)), v.minLength(1)),
				choices: v.array(v.strictObject({ title, sets: someSettingsSchema })),
			}),
		),
	}),
]);

// ---- the whole -----------------------------------------------------------------------------

export const profileSchema = v.strictObject({
	version: v.literal(1),
	id: idText,
	name: title,
	/** A plain phrase: 'battery wash, six emitters'. */
	about: v.pipe(v.string(), v.minLength(1), v.maxLength(120)),
	shape: v.picklist(['wash', 'bar']),
	panel: panelSchema,
	power: v.strictObject({
		/** Null: mains only. Energy in watt-hours, charging in watts. */
		battery: v.nullable(v.strictObject({ wattHours: amount(1, 2000), chargeWatts: amount(1, 500) })),
		/** Whether a mains link socket passes power on. */
		link: v.boolean(),
		/** Watts drawn with the light out. */
		idleWatts: amount(0, 100),
	}),
	optics: v.pipe(
		v.strictObject({
			/** Beam angle at half the peak, field angle at a tenth, degrees. */
			beam: amount(1, 170),
			field: amount(1, 175),
		}),
		v.check(({ beam, field }) => beam <= field, 'beam-within-field'),
	),
	cells: whole(1, 64),
	emitters: v.pipe(v.array(emitterSchema), v.minLength(1)),
	held: v.pipe(v.array(staticSchema), v.minLength(1)),
	programmes: v.array(programmeSchema),
	modes: v.pipe(v.array(modeSchema), v.minLength(1)),
	/** Whether it has a remote sensor, and a microphone. */
	sensor: v.boolean(),
	microphone: v.boolean(),
	/** Which slot a follower reads from: always slot one, or its own start address. */
	follows: v.picklist(['slot-one', 'own-address']),
	/** Unit loads on the line (EIA-485: a line carries 32). */
	unitLoads: amount(0.1, 4),
	/** Settings as it leaves the maker, and after 'defaults'. */
	defaults: settingsSchema,
});

export type Profile = v.InferOutput<typeof profileSchema>;
export type ProfileInput = v.InferInput<typeof profileSchema>;
export type Emitter = Profile['emitters'][number];
export type StaticColour = Profile['held'][number];
export type Programme = Profile['programmes'][number];
export type Mode = Profile['modes'][number];
export type Slot = Mode['slots'][number];
export type Band = v.InferOutput<typeof bandSchema>;
export type Effect = v.InferOutput<typeof effectSchema>;
export type Panel = Profile['panel'];
export type KeyedPanel = Extract<Panel, { kind: 'code' | 'text' }>;
export type DipPanel = Extract<Panel, { kind: 'dip' }>;
export type MenuItem = v.InferOutput<typeof anyItem>;
export type LeafItem = v.InferOutput<typeof leafItem>;
export type PanelLaw = v.InferOutput<typeof lawSchema>;
export type PanelKey = (typeof KEYS)[number];
