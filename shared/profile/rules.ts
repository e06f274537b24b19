/**
 * What each setting can be, as plain data: the one list from which the schema is made (`settings.ts`), and by which a single
 * value is judged with no schema at hand.
 */

/** Who decides the light: data on the line, one held colour, a built-in programme, or a leader. */
const WORKS = ['line', 'held', 'programme', 'follow'] as const;
/** What the light does once data has been gone for the loss time (E1.11: one second). */
export const LOSSES = ['hold', 'dark', 'programme'] as const;
/** An id: of a fixture, a mode, a colour. */
export const ID = /^[a-z][a-z0-9-]{0,39}$/;

/** One of some words, a whole number between two ends (both allowed), or an id of the profile. */
type Rule =
	| { readonly oneOf: readonly string[] }
	| { readonly from: number; readonly to: number }
	| { readonly idOf: 'modes' | 'held' | 'programmes' };

const onOff = { oneOf: ['off', 'on'] } as const;

export const SETTING_RULES = Object.freeze({
	work: { oneOf: WORKS },
	/** `on`: sends its own held colour or programme down the line for followers. */
	lead: onOff,
	/** Start address, 1 to 512. */
	address: { from: 1, to: 512 },
	/** Mode id of the profile (E1.20 calls it a personality). */
	mode: { idOf: 'modes' },
	/** Held colour id of the profile. */
	held: { idOf: 'held' },
	/** Programme id of the profile. */
	programme: { idOf: 'programmes' },
	/** Speed of a programme, 1 (slowest) to 100 (fastest). */
	speed: { from: 1, to: 100 },
	/** Brightness of held colours and programmes, percent. */
	level: { from: 0, to: 100 },
	/** Strobe over a held colour, flashes a second; 0 is steady. */
	strobe: { from: 0, to: 20 },
	loss: { oneOf: LOSSES },
	/** Dim curve: output against level. */
	curve: { oneOf: ['straight', 'square', 'soft'] },
	/** Highest output allowed, percent. */
	limit: { from: 10, to: 100 },
	/** Whether the remote's sensor listens. */
	sensor: { oneOf: ['open', 'shut'] },
	/** Which remote code it answers, 1 to 4. */
	code: { from: 1, to: 4 },
	/** Microphone sensitivity, percent; 0 hears nothing. */
	hearing: { from: 0, to: 100 },
	/** `on`: the panel locks itself once left alone. */
	lock: onOff,
	/** Seconds until the display goes dark; 0 is never. */
	sleep: { from: 0, to: 120 },
} as const satisfies Record<string, Rule>);

export type SettingKey = keyof typeof SETTING_RULES;

type ValueOf<R> = R extends { readonly oneOf: readonly (infer W)[] }
	? W
	: R extends { readonly from: number }
		? number
		: string;

export type Settings = { [K in SettingKey]: ValueOf<(typeof SETTING_RULES)[K]> };
export type SettingValue = Settings[SettingKey];

/** Some of the settings, as a DIP field or a rig sheet gives them. A key is there with a value, or not there. */
export type SomeSettings = Partial<Settings>;

/** Every setting's key, in the order of the rules. */
export const SETTING_KEYS = Object.freeze(Object.keys(SETTING_RULES)) as readonly SettingKey[];

/** Whether a setting could be this, on some profile. */
export function isSettingValue(key: SettingKey, value: unknown): boolean {
	const rule: Rule = SETTING_RULES[key];
	if ('oneOf' in rule) return rule.oneOf.includes(value as string);
	if ('idOf' in rule) return typeof value === 'string' && ID.test(value);
	return Number.isInteger(value) && rule.from <= (value as number) && (value as number) <= rule.to;
}
