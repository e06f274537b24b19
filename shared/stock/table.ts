import { type Builder, bareWords, type GrowingMode, type SlotHead } from './builder.ts';
import { readPiece } from './row-text.ts';
import { type Cell, type Column, type Role, type Row, wholeOf } from './rows.ts';
import { type Habit, type Span, spansIn } from './values.ts';

const ABSENT = /^(?:[-–—/.xX·]+|n\/?a|none|nil)?$/i;

/** A mode of several side by side, by its column. */
export interface Beside {
	/** Which cell of a table; in a text table the column of its first sign. */
	readonly column: number;
	readonly mode: GrowingMode;
}

/** Reads rows of a table whose head says what each column holds. */
export class TableReader {
	private readonly builder: Builder;
	private readonly habit: Habit;

	constructor(builder: Builder, habit: Habit) {
		this.builder = builder;
		this.habit = habit;
	}

	/** Reads a row under its headings; modes side by side have a column each. */
	row({ cells }: Row, columns: readonly Column[], beside: readonly Beside[]): void {
		const { builder } = this;
		const cellsOf = (role: Role): Cell[] => cells.filter((cell, i) => columns[i]?.role === role && cell.text !== '');
		for (const [i, cell] of cells.entries())
			if (cell.text !== '' && (columns[i]?.role ?? null) === null && !columns[i]?.heading.text)
				builder.mark('not-read', wholeOf(cell), { text: cell.text });
		const name = cellsOf('name')[0];
		const words = cellsOf('words')
			.map(({ text }) => text)
			.join(' ');
		const heads = beside.length > 0 ? this.headsBeside(cells, beside) : this.headsOf(cellsOf('slot')[0]);
		const numbered = cells.find((cell, i) => columns[i]?.role === 'slot' && !ABSENT.test(cell.text));
		if (!heads && numbered) {
			// what number it has could not be read: nothing of the row may go to the channel before
			builder.current = [];
			return;
		}
		const values = this.values(cells, columns);
		const hasWords = columns.some(({ role }) => role === 'words');
		if (heads) {
			const place = wholeOf(cellsOf('slot')[0] ?? name ?? (cells.find(({ text }) => text !== '') as Cell));
			builder.slots(heads, name?.text ?? '', place, 0);
			const isPart = values[0] && (values[0].span.from > 0 || values[0].span.to < 255);
			if (name && isPart && !hasWords)
				for (const { at } of heads) builder.mark('name-from-band', wholeOf(name), { slot: at, name: name.text });
		} else if (name && hasWords && words !== '' && values.length > 0)
			builder.mark('not-read', wholeOf(name), { text: name.text });
		const said = hasWords ? words : name && (!heads || values.length > 0) ? name.text : '';
		if (values.length > 0) {
			const isWhole = values.length === 1 && values[0]?.span.from === 0 && values[0].span.to === 255;
			for (const { span, cell } of values)
				builder.band(span, !hasWords && heads && isWhole ? '' : bareWords(said), wholeOf(cell), cell.text);
			return;
		}
		this.wordsOnly(cellsOf('words'), heads !== null, heads ? null : name);
	}

	/** A row with words and no values in a column for them: bands within the words, or more words. */
	private wordsOnly(cells: readonly Cell[], begins: boolean, name: Cell | undefined | null): void {
		for (const cell of name ? [name, ...cells] : cells) {
			const { builder } = this;
			const found = readPiece(cell, this.habit, builder, begins ? 0 : this.builder.expected());
			if (builder.current.length === 0) builder.mark('not-read', wholeOf(cell), { text: cell.text });
			else if (found.head !== '' || found.bands.length === 0) builder.more(found.head || bareWords(cell.text));
			for (const { span, words, place, text } of found.bands) builder.band(span, words, place, text);
		}
	}

	/** Values of a row from whichever column has them: values, or first and last, or hexadecimal, or percent. */
	private values(cells: readonly Cell[], columns: readonly Column[]): { span: Span; cell: Cell }[] {
		const at = (role: Role): Cell | undefined => cells.find((cell, i) => columns[i]?.role === role && cell.text !== '');
		const from = at('from');
		const to = at('to');
		if (from && to) {
			const [one] = spansIn(`${from.text}-${to.text}`, this.habit);
			if (one && !one.single) return [{ span: one, cell: from }];
		}
		const kinds: readonly (readonly [Cell | undefined, Habit])[] = [
			[from ?? to, this.habit],
			[at('value'), this.habit],
			[at('hexadecimal'), { isHex: true }],
			[at('percent'), { isHex: false, isPercent: true }],
		];
		const found = kinds.find(([cell]) => cell !== undefined);
		if (!found?.[0]) return [];
		const [cell, habit] = found;
		const spans = spansIn(cell.text, habit).map((span) => ({ span, cell }));
		const rest = spans
			.toReversed()
			.reduce((text, { span }) => text.slice(0, span.start) + text.slice(span.end), cell.text);
		if (spans.length === 0 && ABSENT.test(cell.text)) return [];
		if (spans.length === 0 || /[\p{L}\d]/u.test(rest))
			this.builder.mark('cell-not-number', wholeOf(cell), { text: cell.text });
		return spans;
	}

	private headsOf(cell: Cell | undefined): SlotHead[] | null {
		if (!cell || ABSENT.test(cell.text)) return null;
		const numbers = this.numbers(cell);
		return numbers && [{ mode: this.builder.mode(wholeOf(cell)), ...numbers }];
	}

	private headsBeside(cells: readonly Cell[], beside: readonly Beside[]): SlotHead[] | null {
		const heads = beside.flatMap(({ column, mode }): SlotHead[] => {
			const cell = cells[column];
			if (!cell || ABSENT.test(cell.text)) return [];
			const numbers = this.numbers(cell);
			return numbers ? [{ mode, ...numbers }] : [];
		});
		return heads.length > 0 ? heads : null;
	}

	/** The number, or coarse and fine numbers, in a cell made for them. */
	private numbers(cell: Cell): { at: number; fine?: number } | null {
		const pair =
			/^(?:(?:dmx[ -]?)?(?:ch(?:an(?:nel)?)?|slot)s?\.?[ #:]*|#)?(\d{1,3})(?:\s*[-–/+&,]\s*(\d{1,3}))?[.:)]?$/i.exec(
				cell.text,
			);
		if (!pair) {
			const code = /\d\s*\D+\s*\d/.test(cell.text) ? 'several-slots' : 'cell-not-number';
			this.builder.mark(code, wholeOf(cell), { text: cell.text });
			return null;
		}
		return this.builder.pair(
			Number(pair[1]),
			pair[2] === undefined ? undefined : Number(pair[2]),
			wholeOf(cell),
			cell.text,
		);
	}
}
