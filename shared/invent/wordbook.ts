import { InputError } from '../error/index.ts';
import type { Random } from '../random/index.ts';
import type { ChartConcept, InventNames, PanelConcept, PanelWord } from './types.ts';

/** Letters before a value on a flat panel. Never A or D: whole families of real panels show an address so. */
const LETTERS = [...'BCEFGHIJKLMNOPQRSTUVWXYZ'];

/** What a panel shows, and the whole of the word that it stands for. */
export interface Label {
	readonly label: string;
	readonly title: string;
}

/** The words of one fixture: for each thing one of the ways to say it, the same wherever it is said. */
export class Wordbook {
	private readonly names: InventNames;
	private readonly random: Random;
	private readonly sealed: ReadonlySet<string>;

	/** @param sealed words to leave out, as `concept/id` */
	constructor(names: InventNames, random: Random, sealed: readonly string[]) {
		this.names = names;
		this.random = random;
		this.sealed = new Set(sealed);
	}

	/** What a thing of a chart is called. @throws InputError `invent.words` where every word for it is left out */
	chart(concept: ChartConcept): string {
		return this.inTurn<string>(concept, this.names.chart[concept])[0] as string;
	}

	/** What a thing of a panel is called in full. @throws InputError `invent.words` */
	text(concept: PanelConcept): string {
		return this.ways(concept)[0]?.text ?? '';
	}

	/**
	 * A label, other than those taken, which it is then one of: its word, or another for the same where that is taken already.
	 * @param width signs there is room for
	 * @throws InputError `invent.words`
	 */
	label(concept: PanelConcept, kind: 'code' | 'text', width: number, taken: Set<string>): Label {
		const all = this.ways(concept);
		const fitting = all.filter((word) => word[kind].length <= width);
		const labels = (fitting.length > 0 ? fitting : all).map((word) => ({
			label: word[kind].slice(0, width),
			title: word.text,
		}));
		const first = labels[0] as Label;
		const own = labels.find(({ label }) => !taken.has(label)) ?? {
			...first,
			label: numbered(first.label, width, taken),
		};
		taken.add(own.label);
		return own;
	}

	/** The letter of a function on a flat panel of four characters, other than those taken. @throws InputError `invent.words` */
	letter(concept: PanelConcept, taken: Set<string>): Label {
		const own = this.ways(concept).flatMap(({ letter, text }) => (letter ? [{ label: letter, title: text }] : []));
		const others = LETTERS.map((label) => ({ label, title: this.text(concept) }));
		const first = [...own, ...others].find(({ label }) => !taken.has(label)) as Label;
		taken.add(first.label);
		return first;
	}

	private ways(concept: PanelConcept): readonly PanelWord[] {
		return this.inTurn<PanelWord>(concept, this.names.panel[concept]);
	}

	/** The ways to say it, the one that is this fixture's first. */
	private inTurn<W>(concept: string, ways: Readonly<Record<string, W>>): readonly W[] {
		const left = Object.entries(ways).filter(([id]) => !this.sealed.has(`${concept}/${id}`));
		if (left.length === 0) throw new InputError('invent.words', 'without.words', { trouble: 'none-left', of: concept });
		return this.random
			.fork(concept)
			.shuffle(left)
			.map(([, word]) => word);
	}
}

function numbered(label: string, width: number, taken: ReadonlySet<string>): string {
	for (let n = 2; ; n++) {
		const own = `${label.slice(0, width - `${n}`.length)}${n}`;
		if (!taken.has(own)) return own;
	}
}
