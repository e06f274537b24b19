import { trainerWords } from '#words/papers/index.ts';
import type { PaperRecipe } from '../../../../shared/paper/index.ts';

/** What the worker hands the trainer's page: words and numbers. */

/** Where a share may lie, both 0 to 1. */
export interface ShareInterval {
	readonly share: number;
	readonly low: number;
	readonly high: number;
}

/** A paper on this device. */
export interface KeptView {
	readonly mark: string;
	readonly title: string;
	readonly seed: number;
	readonly questions: number;
	readonly results: number;
}

/** Much that is wrong, in a few lines. */
export interface Summary {
	/** Of all of it. */
	readonly count: number;
	/** One for all that is wrong in the same way: the first of them, and how many more there are. */
	readonly lines: readonly { readonly from: string; readonly sentence: string; readonly more: number }[];
	/** How many stand in no line. */
	readonly left: number;
}

/** All that is on this device. */
export interface HoldView {
	/** False where the device keeps nothing. */
	readonly keeps: boolean;
	/** Records set aside because they could not be read. */
	readonly asides: Summary;
	/** Last kept first. */
	readonly papers: readonly KeptView[];
	readonly results: number;
	/** Results whose paper cannot be set here. */
	readonly unset: Summary;
}

/** How one question of one result went. */
export interface CellView {
	readonly state: 'right' | 'wrong' | 'open';
	readonly gave: string;
}

/** One result in the class table. */
export interface RowView {
	readonly attempt: string;
	/** May be empty. */
	readonly name: string;
	readonly score: number;
	readonly of: number;
	readonly percent: number;
	readonly passed: boolean;
	/** Ms since 1970; null where not known. */
	readonly ended: number | null;
	/** Whole minutes; null where not known. */
	readonly minutes: number | null;
	/** 1 for a first try. */
	readonly tryNo: number;
	/** Its name, and whatever tells it from others of that name. */
	readonly label: string;
	/** Whether figures are made of it, and why or why not, in a sentence; empty where there is nothing to say. */
	readonly counts: boolean;
	readonly standing: string;
	/** What does not fit, a sentence each. */
	readonly flags: readonly string[];
	readonly cells: readonly CellView[];
}

/** A paper and everybody's results of it. */
export interface ClassView {
	readonly mark: string;
	readonly title: string;
	readonly seed: number;
	readonly questions: readonly { readonly id: string; readonly text: string }[];
	readonly rows: readonly RowView[];
	/** Null with nobody to learn from. */
	readonly learn: LearnView | null;
}

/** One question over everybody. */
export interface ItemView extends ShareInterval {
	readonly id: string;
	/** Its place in the paper, from 1. */
	readonly at: number;
	readonly text: string;
	readonly topicName: string;
	readonly finding: string;
	/** Worth a second look. */
	readonly marked: boolean;
	readonly says: readonly string[];
	/** Wrong answers, most given first. */
	readonly drew: readonly { readonly says: string; readonly mistake: string | null }[];
	readonly key: string;
}

export interface TopicView extends ShareInterval {
	readonly id: string;
	readonly name: string;
	readonly says: string;
	/** Why there is no telling where the true share lies; null where there is. */
	readonly short: string | null;
}

export interface PersonView {
	readonly attempt: string;
	readonly name: string;
	readonly says: string;
	readonly share: number;
	readonly passed: boolean;
	readonly weak: string;
}

/** What a paper shows once people have sat it. */
export interface LearnView {
	readonly people: number;
	readonly leftOut: number;
	/** How many scored 0 to 9 %, 10 to 19 % ... 90 to 100 %. */
	readonly tenths: readonly number[];
	readonly pass: number;
	readonly says: readonly string[];
	readonly steady: readonly string[];
	readonly items: readonly ItemView[];
	readonly topics: readonly TopicView[];
	readonly persons: readonly PersonView[];
	/** How far to trust what is said of each question; null where nothing is, or there are people enough. */
	readonly hint: string | null;
	/** What to set next; null where nothing was missed. */
	readonly next: { readonly why: string; readonly recipe: PaperRecipe } | null;
}

/** What became of what was brought in. */
export interface TakenView {
	readonly fresh: number;
	readonly again: number;
	/** Paper titles that were kept. */
	readonly papers: readonly string[];
	/** What could not be read, or was not taken, by name. */
	readonly refused: Summary;
	/** The paper of the last result taken in; null where there was none. */
	readonly paper: string | null;
}

/** A file to be saved. */
export interface FileView {
	readonly name: string;
	readonly type: string;
	readonly content: string | Uint8Array<ArrayBuffer>;
}

/** Lines that are shown of what could not be read: a person reads no more, and a page of thousands stands still. */
const MOST_LINES = 20;

interface Unread {
	/** What it is: a file's name, a person's. */
	readonly from: string;
	readonly sentence: string;
}

/** What could not be read, one line for all that is wrong in the same way, and how many lines more there would be. */
export function summaryOf(unread: Iterable<Unread>): Summary {
	const alike = new Map<string, { from: string; sentence: string; more: number }>();
	let count = 0;
	for (const { from, sentence } of unread) {
		count++;
		const line = alike.get(sentence);
		if (line) line.more++;
		else alike.set(sentence, { from, sentence, more: 0 });
	}
	const lines = [...alike.values()].slice(0, MOST_LINES);
	return { count, lines, left: count - lines.reduce((sum, { more }) => sum + more + 1, 0) };
}

/** What the paste box holds once it was read: nothing where all was taken in, else what it held, to be repaired. */
export function leftInBox(held: string, read: string, taken: TakenView | null): string {
	// typed on meanwhile: that was not read
	return held === read && taken?.refused.count === 0 ? '' : held;
}

/** What became of what was brought in, in a sentence or two. */
export function takenText({ fresh, again, papers, refused }: TakenView): string {
	const parts = [
		...(fresh > 0 ? [trainerWords.took(fresh)] : []),
		...(again > 0 ? [trainerWords.hadAlready(again)] : []),
		...papers.map(trainerWords.tookPaper),
		...(refused.count > 0 ? [trainerWords.notRead(refused.count)] : []),
	];
	return parts.length > 0 ? parts.join(' ') : trainerWords.tookNone;
}
