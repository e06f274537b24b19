import * as v from 'valibot';

/**
 * What a fixture can be set to, whatever its panel looks like. A profile says which of these its
 * panel can reach; the rest stay at the profile's defaults.
 */

const idText = v.pipe(
	v.string(),
	v.regex(
		/^[a-z][a-z0-9-]{0,39}$/,
		'Expected an id: a small letter, then small letters, digits and hyphens, at most 40 in all',
	),
);
const whole = (least: number, most: number) => v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));

/** Who decides the light: data on the line, one held colour, a built-in programme, or a leader. */
export const WORKS = ['line', 'held', 'programme', 'follow'] as const;
/** What the light does once data has been gone for the loss time (E1.11: one second). */
export const LOSSES = ['hold', 'dark', 'programme'] as const;

export const settingsSchema = v.strictObject({
	work: v.picklist(WORKS),
	/** `on`: sends its own held colour or programme down the line for followers. */
	lead: v.picklist(['off', 'on']),
	/** Start address, 1 to 512. */
	address: whole(1, 512),
	/** Mode id of the profile (E1.20 calls it a personality). */
	mode: idText,
	/** Held colour id of the profile. */
	held: idText,
	/** Programme id of the profile. */
	programme: idText,
	/** Speed of a programme, 1 (slowest) to 100 (fastest). */
	speed: whole(1, 100),
	/** Brightness of held colours and programmes, percent. */
	level: whole(0, 100),
	/** Strobe over a held colour, flashes a second; 0 is steady. */
	strobe: whole(0, 20),
	loss: v.picklist(LOSSES),
	/** Dim curve: output against level. */
	curve: v.picklist(['straight', 'square', 'soft']),
	/** Highest output allowed, percent. */
	limit: whole(10, 100),
	/** Whether the remote's sensor listens. */
	sensor: v.picklist(['open', 'shut']),
	/** Which remote code it answers, 1 to 4. */
	code: whole(1, 4),
	/** Microphone sensitivity, percent; 0 hears nothing. */
	hearing: whole(0, 100),
	/** `on`: the panel locks itself once left alone. */
	lock: v.picklist(['off', 'on']),
	/** Seconds until the display goes dark; 0 is never. */
	sleep: whole(0, 120),
});

export type Settings = v.InferOutput<typeof settingsSchema>;
export type SettingKey = keyof Settings;
export type SettingValue = Settings[SettingKey];

/** Every setting's key, in the order of the schema. */
export const SETTING_KEYS = Object.freeze(Object.keys(settingsSchema.entries)) as readonly SettingKey[];

/** Some of the settings, as a DIP field or a rig sheet gives them. A key is there with a value, or not there. */
export type SomeSettings = Partial<Settings>;
export const someSettingsSchema = v.strictObject(
	Object.fromEntries(
		Object.entries(settingsSchema.entries).map(([key, entry]) => [key, v.exactOptional(entry as v.GenericSchema)]),
	),
) as unknown as v.GenericSchema<SomeSettings>;

export { idText, whole };
