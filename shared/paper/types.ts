import type { InputError } from '../error/index.ts';
import type { Inventor } from '../invent/index.ts';
import type { Profile } from '../profile/index.ts';
import type { RigSheet } from '../sheet/index.ts';
import type { KindId, MistakeId, PaperLevel, TopicId } from './ids.ts';
import type { PaperRecipe } from './recipe.ts';

/** A fact as words are filled with it: plain JSON. */
export type FactValue = string | number | boolean | null | readonly (string | number)[];
export type ItemFacts = Readonly<Record<string, FactValue>>;

/** Something to be read out: an id of a wording in `content/en/papers`, and what fills it. Names that a profile or sheet gives are facts. */
export interface Say {
	readonly say: string;
	readonly facts: ItemFacts;
}

/** One thing to choose, to order or to match. Its id (`a`, `b` ...) is within its question alone, and never tells where it stood. */
export interface Option {
	readonly id: string;
	readonly label: Say;
}

/** What a typed number counts. */
export type NumberUnit =
	| 'value'
	| 'percent'
	| 'slot'
	| 'address'
	| 'slots'
	| 'fixtures'
	| 'word'
	| 'hours'
	| 'amps'
	| 'lux'
	| 'centimetres';

/** How a question is answered. What is right is not in it. */
export type AnswerForm =
	| { readonly form: 'one'; readonly options: readonly Option[] }
	| { readonly form: 'several'; readonly options: readonly Option[] }
	/** A whole number from `least` to `most`, typed in base 10 or 16; `say` names what it counts (`value`, `percent`, `address` ...). */
	| {
			readonly form: 'number';
			readonly least: number;
			readonly most: number;
			readonly base: 10 | 16;
			readonly unit: NumberUnit;
	  }
	| { readonly form: 'order'; readonly options: readonly Option[] }
	/** Switches 1 to `count`, each up or down. */
	| { readonly form: 'switches'; readonly count: number }
	/** Each on the left has one on the right; a right one may serve several or none. */
	| { readonly form: 'match'; readonly left: readonly Option[]; readonly right: readonly Option[] }
	/** Done on the bench: a drill, by kind and seed. */
	| { readonly form: 'practical'; readonly drill: { readonly kind: string; readonly seed: number } };
export type Form = AnswerForm['form'];

/** What is right. */
export type AnswerKey =
	| { readonly form: 'one'; readonly right: string }
	| { readonly form: 'several'; readonly right: readonly string[] }
	/** Any whole number in one of these ranges, both ends included. */
	| { readonly form: 'number'; readonly within: readonly { readonly from: number; readonly to: number }[] }
	| { readonly form: 'order'; readonly right: readonly string[] }
	| { readonly form: 'switches'; readonly up: readonly number[] }
	/** The right one of each left one, by id. */
	| { readonly form: 'match'; readonly right: Readonly<Record<string, string>> }
	| { readonly form: 'practical' };

/** An answer as it travels: plain JSON, checked by `readAnswers`. `log` is a list of rig events, read by who marks it. */
export type Answer =
	| { readonly form: 'one'; readonly chose: string }
	| { readonly form: 'several'; readonly chose: readonly string[] }
	| { readonly form: 'number'; readonly value: number }
	| { readonly form: 'order'; readonly order: readonly string[] }
	| { readonly form: 'switches'; readonly up: readonly number[] }
	| { readonly form: 'match'; readonly pairs: Readonly<Record<string, string>> }
	| { readonly form: 'practical'; readonly log: readonly unknown[] };

/** Answers by question id; a question left out is not answered. */
export type Answers = Readonly<Record<string, Answer>>;

/** A wrong answer that is a known mistake, worked out by the same arithmetic. Never equal to a right one. */
export interface KnownMistake {
	readonly mistake: MistakeId;
	readonly answer: Answer;
}

/** One question: plain JSON, whole and unchanged by a round trip. */
export interface Item {
	/** `<kind>-<8 hex of its content>`: what is asked, and not where it stands, so that the same question has the same id in every paper. */
	readonly id: string;
	readonly kind: KindId;
	readonly topic: TopicId;
	readonly level: PaperLevel;
	/** Fills the words of the question, of its working and of why: see `content/en/papers`. */
	readonly facts: ItemFacts;
	readonly ask: AnswerForm;
	readonly key: AnswerKey;
	/** Wrong options and likely wrong numbers, each with what it looks like. */
	readonly mistakes: readonly KnownMistake[];
	/** A bench on which it can be tried: a sheet that `openRig` takes; null where there is nothing to try. */
	readonly bench: RigSheet | null;
}

/** A paper: plain JSON. The same recipe and seed always set the same paper. */
export interface Paper {
	readonly version: 1;
	readonly recipe: PaperRecipe;
	readonly seed: number;
	readonly items: readonly Item[];
	/** 16 hex digits over recipe, seed and items: two papers with the same mark are the same paper. */
	readonly mark: string;
}

/** What questions are made on. */
export interface QuestionGround {
	/** Fixtures the questions are about: at least one. */
	readonly profiles: readonly Profile[];
	/** The crew's own rig, where the recipe has one. */
	readonly sheet: RigSheet | null;
	/** That of the recipe; the newest unless told. */
	readonly version?: PaperRecipe['version'];
	/** Charts can be made up besides, one for each question. */
	readonly unseen?: true;
}

/** What a kind makes: an item before its id, kind and topic are put on it. */
export type ItemDraft = Omit<Item, 'id' | 'kind' | 'topic' | 'level'>;

/** The random stream of one question: `shared/random`. */
export type Chance = import('../random/index.ts').Random;

/** A kind of question. */
export interface QuestionKind {
	readonly id: KindId;
	readonly topic: TopicId;
	readonly forms: readonly Form[];
	/** The levels it can be set at. */
	readonly levels: readonly PaperLevel[];
	/** Whether this ground can carry it (for instance: a fixture with DIP switches). */
	fits(ground: QuestionGround): boolean;
	/** Sets one. The ground fits, the level is one of `levels`. Never ambiguous: one right answer, or exactly the stated set. */
	make(ground: QuestionGround, chance: Chance, level: PaperLevel): ItemDraft;
}

/** Kinds beside the plain ones, and how what they ask is marked: handed in by who knows the rig (`sim/paper`). */
export interface PaperSources {
	readonly kinds: readonly QuestionKind[];
	/** Marks a practical question from its log, as a share of right 0 to 1. @throws InputError where the log is none or cannot be played. */
	practical(item: Item, log: readonly unknown[]): PracticalMark;
	/** What makes up fixtures for recipes with `unseen`. */
	readonly charts?: ChartSource;
}

/** Makes up fixtures, and the id of the list of words it does that with: another list makes others of the same seed. */
export interface ChartSource {
	readonly list: string;
	readonly invent: Inventor;
}

export interface PracticalMark {
	readonly done: boolean;
	/** Conditions right and in all. */
	readonly right: number;
	readonly of: number;
	readonly presses: number;
	readonly fewest: number;
	readonly milliseconds: number;
}

/** How one question was answered. */
export interface ItemMark {
	readonly item: string;
	readonly kind: KindId;
	readonly topic: TopicId;
	readonly level: PaperLevel;
	readonly answered: boolean;
	readonly right: boolean;
	/** 1 right, 0 wrong; part of it only for `several`, `order`, `match` and `practical`, in `share`. */
	readonly score: 0 | 1;
	readonly share: number;
	/** The mistake a wrong answer looks like; null where right, not answered or like none that is known. */
	readonly looksLike: MistakeId | null;
	/** The answer as one short text, so that answers can be counted: an option's id, a number, `1 4 6`; null where not answered. */
	readonly gave: string | null;
	readonly practical: PracticalMark | null;
}

/** Why something does not fit, as an error's facts are: what was expected, what was found, what is wrong. */
export type MisfitFacts =
	| { readonly expected: 'form'; readonly form: string; readonly found: string }
	| { readonly expected: 'whole'; readonly lo: number; readonly hi: number; readonly found: string }
	| { readonly expected: 'switches'; readonly hi: number }
	| { readonly expected: 'options' | 'all-options'; readonly known: readonly string[] }
	| { readonly trouble: 'no-answer' | 'no-such-pair' | 'no-bench' | 'no-such-question' | 'altered' }
	| { readonly trouble: 'log-refused'; readonly error: Pick<InputError, 'code' | 'path' | 'facts'> };

/** What does not fit in what was handed in. Words for a person are in `content/en/papers`, by the code. */
export interface Misfit {
	readonly code:
		| 'paper-altered'
		| 'unknown-item'
		| 'answer-form'
		| 'answer-option'
		| 'answer-range'
		| 'log-bad'
		| 'score-differs';
	/** The question's id; empty for the paper as a whole. */
	readonly item: string;
	readonly facts: MisfitFacts;
	/** The facts in one general sentence, for programs, as an error's message is. */
	readonly sentence: string;
}

/** A paper marked: always from the answers. */
export interface PaperMark {
	/** The paper's mark (its digest). */
	readonly paper: string;
	readonly items: readonly ItemMark[];
	readonly score: number;
	readonly of: number;
	/** Score over questions, percent, half up. */
	readonly percent: number;
	readonly passed: boolean;
	readonly misfits: readonly Misfit[];
}
