import type { Answers, KindId, Paper, PaperRecipe, PaperRecipeInput, TopicId } from '../../../shared/paper/index.ts';
import type { Sitting } from './learner/sitting.ts';
import type { TrainerWork } from './trainer/work.ts';
import type { KeyView, MarkedView, PaperMarkView, PaperView } from './view.ts';

/** A paper by what it is set from. */
export interface PaperRef {
	readonly recipe: PaperRecipe;
	readonly seed: number;
}

/** A paper that came in by link or file. */
export interface OpenedPaper extends PaperRef {
	readonly view: PaperView;
}

/** Ways to hand something on: each holds the whole of it. */
export interface WaysToHand {
	/** With the address of the page that opens it. */
	readonly link: string;
	readonly fileName: string;
	readonly fileText: string;
	/** Whether the link fits one QR code. */
	readonly fitsQr: boolean;
}

export interface IdAndName {
	readonly id: string;
	readonly name: string;
}

/** What the builder can offer for what is picked so far. */
export interface Offer {
	readonly topics: readonly { readonly id: TopicId; readonly name: string; readonly fits: boolean }[];
	/** Those that fit the fixtures and the topics. */
	readonly kinds: readonly {
		readonly id: KindId;
		readonly name: string;
		readonly topic: TopicId;
		readonly rig: boolean;
		/** Whether it is asked where none is picked. */
		readonly ofAll: boolean;
	}[];
}

/** What there is to make papers of, known as the site is built. */
export interface Stock {
	readonly fixtures: readonly IdAndName[];
	readonly rigs: readonly IdAndName[];
	/** With every fixture and every topic. */
	readonly offer: Offer;
}

/** A rig that was pasted. */
export interface PastedRig {
	readonly sheet: Exclude<PaperRecipe['rig'], string | null>;
	readonly name: string;
	readonly fixtures: number;
}

/** Everything the pages can ask of the worker. Each throws `InputError` with its sentence on what it cannot take. */
export interface PapersWork extends TrainerWork {
	offer(asks: { readonly recipe: PaperRecipeInput }): Promise<Offer>;
	pasted(asks: { readonly text: string }): Promise<PastedRig>;
	/** A recipe as the builder has it, held to its schema and set. */
	set(asks: { readonly recipe: PaperRecipeInput; readonly seed: number }): Promise<OpenedPaper>;
	/** The paper itself, for what reads results in the page. */
	paper(asks: { readonly recipe: PaperRecipeInput; readonly seed: number }): Promise<Paper>;
	keys(asks: PaperRef): Promise<readonly KeyView[]>;
	/** A paper from a link, a fragment, or the text of a file. */
	open(asks: { readonly text: string }): Promise<OpenedPaper>;
	handPaper(asks: PaperRef & { readonly page: string }): Promise<WaysToHand>;
	mark(asks: PaperRef & { readonly answers: Answers }): Promise<PaperMarkView>;
	markOne(asks: PaperRef & { readonly answers: Answers; readonly item: string }): Promise<MarkedView>;
	/** A sitting as it was kept. */
	sitting(asks: { readonly text: string }): Sitting;
	handResult(asks: PaperRef & { readonly sitting: Sitting; readonly page: string }): Promise<WaysToHand>;
}
