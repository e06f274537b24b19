import type { KindId, NumberUnit, PaperLevel, TopicId } from '../../../shared/paper/index.ts';

/** What the worker hands the pages: words, ids and numbers. */

/** A thing to choose, to order or to match, in words. */
export interface OptionView {
	readonly id: string;
	readonly text: string;
}

/** How a question is answered, in words. */
export type AskView =
	| { readonly form: 'one' | 'several' | 'order'; readonly options: readonly OptionView[] }
	| {
			readonly form: 'number';
			readonly least: number;
			readonly most: number;
			readonly base: 10 | 16;
			readonly unit: NumberUnit;
	  }
	| { readonly form: 'switches'; readonly count: number }
	| { readonly form: 'match'; readonly left: readonly OptionView[]; readonly right: readonly OptionView[] }
	| { readonly form: 'practical'; readonly kind: string; readonly seed: number };

/** A question as it is asked: what is right is not in it. */
export interface QuestionView {
	readonly id: string;
	readonly kind: KindId;
	readonly kindName: string;
	readonly topic: TopicId;
	readonly topicName: string;
	readonly level: PaperLevel;
	readonly levelName: string;
	readonly text: string;
	/** What the question prints beside it: what is said over it, and its lines. */
	readonly chart: { readonly over: string; readonly lines: readonly string[] } | null;
	readonly ask: AskView;
}

/** What is right, for who set the paper. */
export interface KeyView {
	readonly item: string;
	readonly right: string;
	/** Ids of its right options: of an order in order, of a match one for each on the left; none where it has no options. */
	readonly rightIds: readonly string[];
	/** A line a step, parted by line breaks. */
	readonly working: string;
}

/** A paper in words. */
export interface PaperView {
	/** Its digest: the same paper has the same one. */
	readonly mark: string;
	readonly title: string;
	readonly minutes: number | null;
	readonly pass: number;
	readonly feedback: 'each' | 'end';
	readonly questions: readonly QuestionView[];
}

/** One answer, marked, in words. */
export interface MarkedView {
	readonly item: string;
	readonly answered: boolean;
	readonly right: boolean;
	/** 0 to 1. */
	readonly share: number;
	/** What was answered; empty where nothing was. */
	readonly gave: string;
	readonly key: string;
	readonly working: string;
	/** What the wrong answer looks like, in a sentence; null where it looks like nothing known. */
	readonly looksLike: string | null;
	readonly why: string;
	/** Conditions right and in all of a practical one; null otherwise. */
	readonly practical: { readonly right: number; readonly of: number } | null;
	/** A rig sheet to try it on, as JSON; null where there is nothing to try. */
	readonly bench: string | null;
}

/** A whole paper, marked. */
export interface PaperMarkView {
	readonly score: number;
	readonly of: number;
	readonly percent: number;
	readonly passed: boolean;
	readonly items: readonly MarkedView[];
}
