import type { DipPanel, SettingKey, SomeSettings } from '../../profile/index.ts';
import { idMaker, titleOf } from '../../profile/index.ts';
import type { Answers } from './entry.ts';
import type { Ground } from './ground.ts';
import { listedIn } from './items.ts';
import type { MenuLine } from './lines.ts';
import { match } from './senses.ts';
import type { ItemSense, PanelMarks, PanelWords } from './types.ts';
import { ValueReader } from './values.ts';

const NUMBERS = /^(?:switch(?:es)?\s*)?([1-9](?:\s*[-–,+]\s*[1-9])*)$/i;
const MOST_LABEL = 16;
const MOST_POSITIONS = 10;
/** What the tenth switch leaves to others: nothing that a line or a menu sets. */
const TAKEN: ReadonlySet<ItemSense> = new Set<ItemSense>(['address', 'menu', 'follow', 'defaults', 'nothing']);

/**
 * Ten DIP switches and the slides beside them. A line that begins with switch numbers says what those mean with the tenth up, its values
 * in the order that they count; any other line is a slide with its positions.
 */
export class SwitchMaker {
	readonly #values: ValueReader;
	readonly #words: PanelWords;
	readonly #marks: PanelMarks;
	readonly #id = idMaker();

	constructor(ground: Ground, words: PanelWords, marks: PanelMarks) {
		this.#values = new ValueReader(ground, words, marks);
		this.#words = words;
		this.#marks = marks;
	}

	panel(lines: readonly MenuLine[], { start = 'sum' }: Answers): DipPanel {
		const slides: DipPanel['slides'] = [];
		const fields: DipPanel['fields'] = [];
		const used = new Set<number>();
		for (const line of lines) {
			const switches = numbersIn(line.label);
			const setting = this.#setting(line);
			if (!setting) continue;
			const values = listedIn(line);
			const listed = this.#values.list(setting, values, MOST_LABEL, line.label);
			const sets = (at: number): SomeSettings => {
				const value = listed.sets[at] ?? null;
				if (value === null) return {};
				const work = setting === 'held' || setting === 'programme' ? setting : null;
				return { ...(switches && work ? { work } : {}), [setting]: value } as SomeSettings;
			};
			const head = { id: this.#id(line.words ?? line.label, 'slide'), title: titleOf(line.words ?? line.label, '-') };
			if (!switches) {
				if (values.length < 2 || values.length > MOST_POSITIONS)
					this.#marks.add('values-few', line.place, { text: line.label });
				else
					slides.push({
						...head,
						positions: values.map(({ label }, at) => ({ label: titleOf(label, '-', MOST_LABEL), sets: sets(at) })),
					});
				continue;
			}
			const wanted = 2 ** switches.length;
			if (values.length !== wanted) {
				this.#marks.add('switch-count', line.place, { text: line.label, wanted, found: values.length });
				continue;
			}
			if (switches.some((n) => used.has(n)) || new Set(switches).size < switches.length) {
				this.#marks.add('switch-off', line.place, { text: line.label });
				continue;
			}
			for (const n of switches) used.add(n);
			fields.push({
				...head,
				switches,
				choices: values.map(({ label }, at) => ({ title: titleOf(label, '-'), sets: sets(at) })),
			});
		}
		return { kind: 'dip', wiring: start, slides, fields };
	}

	/** What a line sets; null, with a mark, where that is not told. */
	#setting({ label, words, place, slot }: MenuLine): SettingKey | null {
		const said = words ?? label;
		const { how, ids } = match<ItemSense>(said, this.#words.items);
		const able = ids.filter((id) => !TAKEN.has(id) && !id.startsWith('info.')) as SettingKey[];
		const of = (Object.keys(this.#words.items) as ItemSense[]).filter(
			(id) => !TAKEN.has(id) && !id.startsWith('info.'),
		);
		const pick = { ...slot, of: [...of, 'nothing'] };
		const [one, second] = able;
		if (one && !second) {
			if (how === 'part') this.#marks.add('item-guess', place, { text: said, sense: one }, pick);
			return one;
		}
		if (one) this.#marks.add('item-two', place, { text: said, senses: able }, pick);
		else if (!ids.includes('nothing')) this.#marks.add('item-unknown', place, { text: said }, pick);
		return null;
	}
}

/** `1-3`, `4`, `7, 8`: switches by number; null where a label is none of those. */
function numbersIn(label: string): number[] | null {
	const [, found] = NUMBERS.exec(label.trim()) ?? [];
	if (!found) return null;
	return found.split(/[,+]/).flatMap((part) => {
		const [first = 0, last = first] = part.split(/[-–]/).map(Number);
		return Array.from({ length: Math.abs(last - first) + 1 }, (_, i) => Math.min(first, last) + i);
	});
}
