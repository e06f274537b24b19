import type { PageDoubt } from './page/index.ts';
import { linesOf } from './rows.ts';
import type { Place } from './types.ts';

/** At the end of a line of a chart: it is still to be held against the manual's page. It stands in the text, so it is kept and sent along. */
export const UNCHECKED = '[?]';
const AT_END = /\[\?\](?=[ \t]*$)/;

/** A text with each line that has an open doubt marked for a person to check. @param doubts of this text, as it stands */
export function withUnchecked(text: string, doubts: readonly PageDoubt[]): string {
	const open = new Set(doubts.map(({ place }) => place.line));
	return linesOf(text)
		.map(
			({ text: line, ending }, i) => `${line}${open.has(i + 1) && !AT_END.test(line) ? ` ${UNCHECKED}` : ''}${ending}`,
		)
		.join('');
}

/** A text with those marks blanked, each other sign at its place, and where they stand. */
export function takeUnchecked(text: string): { readonly text: string; readonly places: readonly Place[] } {
	const places: Place[] = [];
	const lines = linesOf(text).map(({ text: line, ending }, i) => {
		const at = AT_END.exec(line)?.index;
		if (at === undefined) return line + ending;
		places.push({ line: i + 1, column: at + 1, length: UNCHECKED.length });
		return line.slice(0, at) + ' '.repeat(UNCHECKED.length) + line.slice(at + UNCHECKED.length) + ending;
	});
	return { text: lines.join(''), places };
}
