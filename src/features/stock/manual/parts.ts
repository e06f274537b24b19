import { manualWords as words } from '#words/stock/index.ts';

/** What of a part of a page its name is made of. */
interface Named {
	/** Of the page, from 1. */
	readonly number: number;
	readonly text: string;
}

/** Letters of its first line that are in the name of a part. */
const MOST_IN_NAME = 30;

/** The names of the ways back to texts, no two alike: by the page; with several of one page, by their number and first line too. */
export function backNames(parts: readonly Named[]): string[] {
	return parts.map((part, i) => {
		const isOfPage = ({ number }: Named): boolean => number === part.number;
		if (parts.filter(isOfPage).length < 2) return words.goBack(part.number);
		const first = part.text
			.split('\n')
			.map((line) => line.replaceAll(/\s+/g, ' ').trim())
			.find((line) => line !== '');
		const turn = parts.slice(0, i).filter(isOfPage).length + 1;
		return words.goBackPart(part.number, turn, (first ?? '').slice(0, MOST_IN_NAME).trimEnd());
	});
}
