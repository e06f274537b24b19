import type { LeafItem, SettingKey, SettingValue } from '../../profile/index.ts';
import { SETTING_KEYS, titleOf } from '../../profile/index.ts';
import type { Ground } from './ground.ts';
import type { ListedValue } from './lines.ts';
import { match, plain } from './senses.ts';
import type { PanelMarks, PanelWords, Pick, Sense } from './types.ts';

type Choice = Extract<LeafItem, { kind: 'choice' }>;

/** Settings that are numbers; all others are picked from a list. */
export const NUMBERS: Partial<Readonly<Record<SettingKey, readonly [least: number, most: number]>>> = Object.freeze({
	address: [1, 512],
	level: [0, 100],
	strobe: [0, 20],
	speed: [1, 100],
	hearing: [0, 100],
	limit: [10, 100],
	code: [1, 4],
});

const SLEEP_MOST = 120;

/** Most values that do nothing which a list holds: as a profile's schema has it. */
const MOST_IDLE = 200;
/** The last place in a list at which one may stand, from 0. */
const LAST_AT = 511;

/** Senses of the values of one setting, by value. */
function sensesOf(words: PanelWords, setting: SettingKey): Readonly<Record<string, Sense>> {
	const start = `${setting}.`;
	return Object.fromEntries(
		Object.entries(words.values).flatMap(([id, sense]) =>
			id.startsWith(start) ? [[id.slice(start.length), sense]] : [],
		),
	);
}

interface Found {
	readonly how: 'exact' | 'part' | 'two' | 'nothing' | 'none';
	readonly value: SettingValue | null;
}

/** Reads the values of items, for one fixture. */
export class ValueReader {
	readonly #ground: Ground;
	readonly #words: PanelWords;
	readonly #marks: PanelMarks;

	constructor(ground: Ground, words: PanelWords, marks: PanelMarks) {
		this.#ground = ground;
		this.#words = words;
		this.#marks = marks;
	}

	/** What a value of a setting is. @param isMade whether a colour or programme that is not there yet is made */
	find(setting: SettingKey, { label, words }: Said, isMade = false): Found {
		const said = words ?? label;
		// only where somebody says so: what is no item's name may well be a value's
		if (words !== null && plain(words) === plain(this.#words.items.nothing.say)) return { how: 'nothing', value: null };
		const range = NUMBERS[setting];
		if (range) {
			const n = Number(/^\s*(\d+)\s*%?\s*$/.exec(said)?.[1] ?? Number.NaN);
			return n >= range[0] && n <= range[1] ? sure(n) : NONE;
		}
		if (setting === 'mode') return known(this.#ground.mode(said));
		if (setting === 'held') return known(this.#ground.colour(said, isMade));
		if (setting === 'programme') return known(this.#ground.programme(said, isMade));
		if (setting === 'sleep') {
			const [, n, unit = ''] = /(\d+)\s*(m?)/i.exec(said) ?? [];
			if (n !== undefined) {
				const seconds = Number(n) * (unit === '' ? 1 : 60);
				return seconds >= 1 && seconds <= SLEEP_MOST ? sure(seconds) : NONE;
			}
		}
		const { how, ids } = match(said, sensesOf(this.#words, setting));
		if (ids.length !== 1) return ids.length > 1 ? { how: 'two', value: null } : NONE;
		const value = setting === 'sleep' ? 0 : (ids[0] as string);
		return { how: how === 'exact' ? 'exact' : 'part', value };
	}

	/** Which settings picked from a list take every one of these as it stands. */
	settingsFor(values: readonly ListedValue[]): SettingKey[] {
		if (values.length < 2) return [];
		return SETTING_KEYS.filter(
			(key) => !NUMBERS[key] && key !== 'mode' && values.every((value) => this.find(key, value).how === 'exact'),
		);
	}

	/** How many of these a setting takes, surely or nearly so. */
	countFor(setting: SettingKey, values: readonly ListedValue[]): number {
		return values.filter((value) => this.find(setting, value).value !== null).length;
	}

	/**
	 * The list of an item: what sets something, and what does nothing here.
	 * @param room signs that a value has room for
	 * @param item what the item is called, for marks
	 */
	list(setting: SettingKey, values: readonly ListedValue[], room: number, item: string): Listed {
		const options: Choice['options'] = [];
		const idle: NonNullable<Choice['idle']> = [];
		const by = new Map<SettingValue, string>();
		const sets: (SettingValue | null)[] = [];
		let isFull = false;
		const byNumber = this.#numbered(setting, values, item);
		for (const [at, each] of values.entries()) {
			const { label } = each;
			const pick: Pick | null = each.slot && { ...each.slot, of: this.#picks(setting) };
			if (label.length > room) this.#marks.add('label-long', each.place, { text: label, room });
			const shown = titleOf(label, '-', room);
			// of a long list by number those past the last that is made are unknown
			const found = byNumber ? known(byNumber[at] ?? null) : this.find(setting, each, true);
			const other = found.value === null ? undefined : by.get(found.value);
			sets.push(other === undefined || other === label ? found.value : null);
			if (found.value === null || other !== undefined) {
				if (idle.length < MOST_IDLE && at <= LAST_AT) idle.push({ at, label: shown });
				else if (!isFull) this.#marks.add('values-many', each.place, { text: item, most: at });
				isFull ||= idle.at(-1)?.at !== at;
				if (other !== undefined) this.#marks.add('value-twice', each.place, { text: label, other }, pick);
				else if (found.how === 'two') this.#marks.add('value-two', each.place, { text: label, item }, pick);
				else if (found.how === 'none')
					this.#marks.add('value-unknown', each.place, { text: label, item, isOfRange: pick === null }, pick);
				continue;
			}
			if (found.how === 'part')
				this.#marks.add('value-guess', each.place, { text: label, item, value: `${setting}.${found.value}` }, pick);
			by.set(found.value, label);
			this.#ground.take(String(found.value));
			options.push({ value: found.value, label: shown });
		}
		return { options, idle, sets };
	}

	/** A list that goes by numbers alone, in the order of the chart; null where it is none. */
	#numbered(setting: SettingKey, values: readonly ListedValue[], item: string): string[] | null {
		const of =
			setting === 'held' ? 'held' : setting === 'programme' ? 'programmes' : setting === 'mode' ? 'modes' : null;
		if (!of || values.length < 2 || !values.every(({ label, words }) => words === null && /^\D?\D?\s?\d+$/.test(label)))
			return null;
		// channel counts name a mode by themselves
		if (of === 'modes' && values.some((value) => this.#ground.mode(value.label) !== null)) return null;
		if (of === 'modes' && values.length > this.#ground.modes.length) return null;
		if (of !== 'modes' && values.some((value) => this.find(setting, value).how === 'exact')) return null;
		const ids = this.#ground.byNumber(of, values.length);
		this.#marks.add('by-order', values[0]?.place ?? { line: 1, column: 1, length: 1 }, { item, count: ids.length });
		return ids;
	}

	/** What a value can be picked to be. */
	#picks(setting: SettingKey): string[] {
		const named = (things: readonly { readonly name: string }[]) => things.map(({ name }) => `name:${name}`);
		if (setting === 'mode') return [...named(this.#ground.modes), 'nothing'];
		if (setting === 'held') return [...named(this.#ground.held), 'nothing'];
		if (setting === 'programme') return [...named(this.#ground.programmes), 'nothing'];
		return [...Object.keys(sensesOf(this.#words, setting)).map((value) => `${setting}.${value}`), 'nothing'];
	}
}

type Said = { readonly label: string; readonly words: string | null };

export interface Listed {
	readonly options: Choice['options'];
	readonly idle: NonNullable<Choice['idle']>;
	/** What each of the values sets, in their order; null where it does nothing. */
	readonly sets: readonly (SettingValue | null)[];
}

const NONE: Found = { how: 'none', value: null };
const sure = (value: SettingValue): Found => ({ how: 'exact', value });
const known = (id: string | null): Found => (id === null ? NONE : sure(id));
