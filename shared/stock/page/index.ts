/**
 * A part of a manual's page as text for the reader of charts. All it is given are runs of text with their places, as any reader of
 * PDF files has them: lines by their baselines, columns by the gaps that run down the page, rows by what stands level. Where a page
 * can be read in two ways, the place is marked.
 */

import { besideAt, blocksOf, side } from './columns.ts';
import { gridOf } from './grid.ts';
import { joinRanges, level } from './level.ts';
import { pageLines } from './lines.ts';
import type { Doubt, Line, PageDoubt, PageText, TextItem } from './types.ts';
import { joinNames, joinWraps } from './wraps.ts';

export { stillOpen } from './open.ts';
export type { PageDoubt, PageDoubtCode, PageDoubtFacts, PageText, TextItem } from './types.ts';

/** A line of what is read, with what of it is in doubt. */
interface Written {
	readonly text: string;
	readonly doubts: readonly Doubt[];
}

/**
 * Reads a part of a page: the rows of its tables as lines with tabs between the cells, all else as lines of words. Nothing is left out
 * in silence.
 * @param items runs of text in any order; past 20,000 they are not read, and that is marked
 * @returns the text for `readChart`, empty where there is none, with its doubts. Never throws.
 */
export function readPage(items: readonly TextItem[]): PageText {
	const { lines, doubts, h } = pageLines(items);
	const at = besideAt(lines, h);
	const written =
		at === null
			? rowsIn(lines, h)
			: [
					...rowsIn(
						side(lines, ({ x }) => x < at),
						h,
					),
					...rowsIn(
						side(lines, ({ x }) => x >= at),
						h,
					).map((row, i) =>
						i === 0 ? { ...row, doubts: [...row.doubts, { code: 'beside', facts: {} } as const] } : row,
					),
				];
	const [first = { text: '', doubts: [] }, ...more] = written;
	const all =
		written.length > 0 || doubts.length > 0 ? [{ ...first, doubts: [...doubts, ...first.doubts] }, ...more] : [];
	return {
		text: all.map(({ text }) => text).join('\n'),
		doubts: all.flatMap(({ text, doubts: own }, i) =>
			own.map(
				(doubt) => ({ ...doubt, place: { line: i + 1, column: 1, length: Math.max(1, text.length) } }) as PageDoubt,
			),
		),
	};
}

function rowsIn(lines: readonly Line[], h: number): Written[] {
	return blocksOf(lines).flatMap((block) => {
		const grid = gridOf(block, h);
		if (!grid) return asWords(block, h);
		joinRanges(grid);
		joinNames(grid);
		level(grid);
		joinWraps(grid);
		return grid.rows.map(({ cells, doubts }) => ({ text: tidy(cells.join('\t')), doubts }));
	});
}

/** Lines without columns, set in as they stand on the page. */
function asWords(lines: readonly Line[], h: number): Written[] {
	const left = Math.min(...lines.flatMap(({ pieces }) => pieces.map(({ x }) => x)));
	return lines.map(({ pieces, doubts }) => {
		const text = tidy(pieces.map((piece) => piece.text).join('  '));
		const indent = Math.min(40, Math.round(((pieces[0]?.x ?? left) - left) / (h / 2)));
		return { text: ' '.repeat(indent) + text, doubts };
	});
}

const tidy = (text: string): string => text.replaceAll('\u00AD', '').trimEnd();
