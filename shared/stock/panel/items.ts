import { idMaker, type LeafItem, type MenuItem, type SettingKey, type Settings, titleOf } from '../../profile/index.ts';
import type { Ground } from './ground.ts';
import { type ListedValue, labelsOf, type MenuLine, spread } from './lines.ts';
import { match } from './senses.ts';
import type { ItemSense, PanelMarks, PanelWords, Pick } from './types.ts';
import { NUMBERS, ValueReader } from './values.ts';

/** How a panel shows what it has. */
export interface Look {
	readonly display: 'code' | 'text';
	readonly shape: 'tree' | 'flat';
	/** Past the last number comes the first again. */
	readonly wraps: boolean;
}

const ON_OFF: ReadonlySet<ItemSense> = new Set<ItemSense>(['lead', 'lock']);
const MOST_LABEL = { code: 4, text: 16 } as const;
/** On four characters of a flat panel a function's letters and its value share the display: a start address takes three. */
const MOST_FLAT_LABEL = 1;

/** Who decides the light at a function of a flat panel, by what it sets; the line where that says nothing. */
const DECIDES: Partial<Readonly<Record<ItemSense, Settings['work']>>> = Object.freeze({
	follow: 'follow',
	held: 'held',
	lead: 'held',
	level: 'held',
	strobe: 'held',
	programme: 'programme',
	speed: 'programme',
	hearing: 'programme',
});

const isSetting = (sense: ItemSense): sense is SettingKey =>
	sense !== 'follow' && sense !== 'defaults' && sense !== 'menu' && sense !== 'nothing' && !sense.startsWith('info.');

/** Makes the items of a menu out of its lines. */
export class ItemMaker {
	readonly #values: ValueReader;
	readonly #words: PanelWords;
	readonly #marks: PanelMarks;
	readonly #look: Look;
	readonly #id = idMaker();
	readonly #set = new Set<string>();
	/** Items that do nothing here, as the list has them. */
	readonly idle: string[] = [];

	constructor(ground: Ground, words: PanelWords, marks: PanelMarks, look: Look) {
		this.#values = new ValueReader(ground, words, marks);
		this.#words = words;
		this.#marks = marks;
		this.#look = look;
	}

	menu(lines: readonly MenuLine[]): MenuItem[] {
		this.#twice(lines);
		return lines.map((line): MenuItem => {
			const sense = this.#senseOf(line, true);
			if (sense !== 'menu' || line.under.length === 0 || this.#look.shape === 'flat') return this.#leaf(line, sense);
			this.#twice(line.under);
			return {
				kind: 'menu',
				...this.#head(line),
				items: line.under.map((each) => this.#leaf(each, this.#senseOf(each, false))),
			};
		});
	}

	/** What an item is, with a mark where that is in doubt. */
	#senseOf(line: MenuLine, isTop: boolean): ItemSense {
		const { under, label, words, place, slot } = line;
		const said = words ?? label;
		const { how, ids } = match<ItemSense>(said, this.#words.items);
		const values = listedIn(line);
		const holds = under.some(
			(each) => each.under.length > 0 || each.values.length > 0 || (each.range && each.label !== ''),
		);
		const isWhole = under.length === 0 || !holds;
		// what is set in under it may be its values, or a menu
		const settings = ids.filter((id) => isWhole && isSetting(id) && (values.length === 0 || this.#fits(id, values)));
		const others = ids.filter((id) => !isSetting(id) && (id !== 'menu' || under.length > 0));
		const fits = under.length > 0 && !holds && settings.length > 0 ? settings : [...settings, ...others];
		const isCalledMenu = how === 'exact' && fits.length === 1 && fits[0] === 'menu';
		if (how === 'exact' && fits.length === 1 && !isCalledMenu) return fits[0] as ItemSense;
		const asMenu = under.length > 0 && (isCalledMenu || holds || this.#isMenu(under));
		if (asMenu && (isTop || this.#look.shape === 'flat')) {
			if (this.#look.shape === 'flat') this.#marks.add('too-deep', place, { text: label });
			return this.#look.shape === 'flat' ? 'nothing' : 'menu';
		}
		if (asMenu) {
			this.#marks.add('too-deep', place, { text: label });
			return 'nothing';
		}
		// a menu that nobody has written down
		if (isCalledMenu) return 'menu';
		const pick = this.#pick(slot, isTop && under.length > 0);
		if (how === 'exact' && fits.length > 1) return this.#two(said, fits, place, pick);
		const byValues = words === null && how === 'none' ? this.#values.settingsFor(values) : [];
		const guesses = fits.length > 0 ? fits : byValues;
		const [guess, second] = guesses;
		if (guess && !second) {
			this.#marks.add('item-guess', place, { text: said, sense: guess }, pick);
			return guess;
		}
		if (guess) return this.#two(said, guesses, place, pick);
		this.#marks.add('item-unknown', place, { text: said }, pick);
		return 'nothing';
	}

	#two(text: string, senses: readonly ItemSense[], place: MenuLine['place'], pick: Pick): ItemSense {
		this.#marks.add('item-two', place, { text, senses }, { ...pick, of: [...senses, 'nothing'] });
		return 'nothing';
	}

	#pick(slot: MenuLine['slot'], canHold: boolean): Pick {
		const of = (Object.keys(this.#words.items) as ItemSense[]).filter(
			(id) => (id !== 'menu' || canHold) && (id !== 'follow' || this.#look.shape === 'flat'),
		);
		return { ...slot, of };
	}

	/** Whether values may be those of a setting: one that is a number takes a range alone. */
	#fits(sense: ItemSense, values: readonly ListedValue[]): boolean {
		if (!isSetting(sense)) return false;
		return this.#values.countFor(sense, values) > 0 || !this.#isMenu(values);
	}

	/** Whether what is set in under an item reads as items of their own rather than values. */
	#isMenu(under: readonly ListedValue[]): boolean {
		const known = under.filter(({ label, words }) => match(words ?? label, this.#words.items).how === 'exact');
		return known.length * 2 > under.length;
	}

	#head({ label, words, place }: MenuLine): { id: string; label: string; title: string } {
		const { display, shape } = this.#look;
		const room = display === 'code' && shape === 'flat' ? MOST_FLAT_LABEL : MOST_LABEL[display];
		if (label.length > room) this.#marks.add('label-long', place, { text: label, room });
		const id = this.#id(words ?? label, 'item');
		return { id, label: titleOf(label, '-', room), title: titleOf(words ?? label, id) };
	}

	/** Labels that a display would show alike side by side. */
	#twice(lines: readonly MenuLine[]): void {
		const seen = new Set<string>();
		for (const { label, place } of lines) {
			if (seen.has(label)) this.#marks.add('label-twice', place, { text: label });
			seen.add(label);
		}
	}

	#leaf(line: MenuLine, sense: ItemSense): LeafItem {
		const item = this.#made(line, this.#head(line), sense);
		if (this.#look.shape === 'flat' && item.kind !== 'action') return { ...item, work: DECIDES[sense] ?? 'line' };
		return item;
	}

	#made(line: MenuLine, head: { id: string; label: string; title: string }, sense: ItemSense): LeafItem {
		const { display, shape } = this.#look;
		const { place, label } = line;
		if (sense === 'follow' && shape === 'flat') return { ...head, kind: 'info', shows: 'signal' };
		if (sense === 'defaults' && shape === 'tree')
			return { ...head, kind: 'action', action: 'defaults', ask: this.#words.labels.ask[display] };
		if (sense.startsWith('info.'))
			return {
				...head,
				kind: 'info',
				shows: sense.slice('info.'.length) as 'charge' | 'hours' | 'signal' | 'footprint',
			};
		if (!isSetting(sense)) {
			if (sense === 'follow' || sense === 'defaults') this.#marks.add('not-acted', place, { text: label });
			return this.#nothing(head);
		}
		if (this.#set.has(sense)) {
			this.#marks.add('setting-twice', place, { text: label });
			return this.#nothing(head);
		}
		const item = this.#setting(line, head, sense);
		// one that came to nothing leaves its setting to a later line
		if ('setting' in item) this.#set.add(sense);
		return item;
	}

	#setting(line: MenuLine, head: { id: string; label: string; title: string }, sense: SettingKey): LeafItem {
		const { display, shape } = this.#look;
		const own = shape === 'flat' && display === 'code' ? head.label.length : 0;
		const room = MOST_LABEL[display] - own;
		const range = NUMBERS[sense];
		if (range && (rangeOf(line) || listedIn(line).length < 2)) return this.#number(line, head, sense, range, room);
		return this.#choice(line, head, sense, room);
	}

	#nothing(head: { id: string; label: string; title: string }): LeafItem {
		this.idle.push(head.title);
		return { ...head, kind: 'info', shows: 'nothing' };
	}

	#number(
		line: MenuLine,
		head: { id: string; label: string; title: string },
		setting: SettingKey,
		[least, most]: readonly [number, number],
		room: number,
	): LeafItem {
		const { place, label } = line;
		const range = rangeOf(line);
		const text = label;
		const from = Math.max(least, range?.from ?? least);
		const to = Math.min(most, range?.to ?? most);
		if (from >= to) {
			this.#marks.add('range-none', place, { text, least, most });
			return this.#nothing(head);
		}
		if (!range) this.#marks.add('range-assumed', place, { text, least, most });
		else if (range.from !== from || range.to !== to)
			this.#marks.add('range-off', place, { text, from: range.from, to: range.to, least: from, most: to });
		const unit = range?.unit ?? '';
		const fits = `${to}${unit}`.length <= room;
		return {
			...head,
			kind: 'number',
			setting,
			least: from,
			most: to,
			wraps: this.#look.wraps,
			unit: fits ? unit : '',
		};
	}

	#choice(
		line: MenuLine,
		head: { id: string; label: string; title: string },
		setting: SettingKey,
		room: number,
	): LeafItem {
		const { place, label } = line;
		let values = listedIn(line);
		if (values.length === 0 && ON_OFF.has(setting)) {
			const { off, on } = this.#words.labels;
			const { display } = this.#look;
			values = [off, on].map((each) => ({ label: each[display], words: null, place, slot: line.slot }));
			this.#marks.add('values-assumed', place, { text: label });
		}
		if (values.length === 0) {
			this.#marks.add('values-missing', place, { text: label });
			return this.#nothing(head);
		}
		const { options, idle } = this.#values.list(setting, values, room, label);
		if (options.length < 2) {
			this.#marks.add('values-few', place, { text: label });
			return this.#nothing(head);
		}
		const made = { ...head, kind: 'choice' as const, setting, options };
		return idle.length > 0 && this.#look.shape === 'tree' ? { ...made, idle } : made;
	}
}

/** The values of an item: in its line, by its range, or each on a line of its own. */
export function listedIn(line: MenuLine): ListedValue[] {
	if (line.values.length > 0) return [...line.values];
	if (line.under.length > 0 && line.under.every(({ under, values }) => under.length === 0 && values.length === 0))
		return line.under.flatMap((each) => (each.range && each.label === '' ? byRange(each) : spread(each)));
	return line.range ? byRange(line) : [];
}

/** The range of a number: in its line, or alone on the one below it. */
function rangeOf({ range, values, under }: MenuLine): MenuLine['range'] {
	const [only, other] = under;
	return range ?? (values.length === 0 && only && !other && only.label === '' ? only.range : null);
}

const byRange = (line: MenuLine): ListedValue[] =>
	line.range && line.range.to - line.range.from < 128
		? labelsOf(line.range).map((label) => ({ label, words: null, place: line.place, slot: null }))
		: [];
