import { trainerWords } from '#words/papers/index.ts';
import {
	CHART_KIND_IDS,
	KIND_TOPICS,
	type KindId,
	type PaperLevel,
	type PaperRecipe,
	type PaperRecipeInput,
	RECIPE_VERSION,
	type TopicId,
} from '../../../../shared/paper/index.ts';
import {
	type BrowserStore,
	isRecord,
	KEPT,
	moveAside,
	putInPlace,
	readJson,
	setAside,
	textAt,
} from '../../../storage/index.ts';
import type { Offer, PastedRig } from '../protocol.ts';

/** What a paper is about: some fixtures, a rig of the hall, or a rig that was pasted. */
export type PaperSubject = 'fixtures' | 'rig' | 'own';

/** A paper being put together: what stands in the boxes, right or not. */
export interface PaperDraft {
	/** Of the recipe: what an older one set, it goes on to set until a box is changed. */
	readonly version: PaperRecipe['version'];
	readonly title: string;
	readonly about: PaperSubject;
	readonly profiles: readonly string[];
	/** The list of words that charts are made up with; empty where none is. */
	readonly unseen: string;
	readonly rig: string;
	readonly pasted: PastedRig | null;
	readonly topics: readonly TopicId[];
	readonly kinds: readonly KindId[];
	readonly count: string;
	readonly levels: readonly PaperLevel[];
	/** Empty for no limit. */
	readonly minutes: string;
	readonly pass: string;
	readonly order: PaperRecipe['order'];
	readonly feedback: PaperRecipe['feedback'];
	/** The crew's own fixtures, from a recipe that had some. */
	readonly own: PaperRecipe['own'];
	readonly seed: number;
}

export const FIRST_DRAFT: PaperDraft = {
	version: RECIPE_VERSION,
	title: trainerWords.titleFirst,
	about: 'fixtures',
	profiles: [],
	// whoever knows the few charts of the house by heart shows a memory, and not that a new chart can be read
	unseen: trainerWords.unseen.id,
	rig: '',
	pasted: null,
	topics: [],
	kinds: [],
	count: '10',
	levels: ['easy', 'middle', 'hard'],
	minutes: '',
	pass: '70',
	order: 'mixed',
	feedback: 'end',
	own: [],
	seed: 1,
};

type DraftProblems = Readonly<Partial<Record<'title' | 'count' | 'minutes' | 'pass' | 'rig', string>>>;

/** What a draft comes to: a recipe, or what is still wrong with it, box by box. */
export type DraftReading =
	| { readonly recipe: PaperRecipeInput; readonly wrong: null }
	| { readonly recipe: null; readonly wrong: DraftProblems };

/** Reads the boxes. */
export function readDraft(draft: PaperDraft): DraftReading {
	const count = wholeIn(draft.count, 1, 100);
	const pass = wholeIn(draft.pass, 0, 100);
	const minutes = draft.minutes.trim() === '' ? null : wholeIn(draft.minutes, 1, 600);
	const wrong: DraftProblems = {
		...(draft.title.trim() === '' ? { title: trainerWords.titleNone } : {}),
		...(typeof count === 'string' ? { count } : {}),
		...(typeof minutes === 'string' ? { minutes } : {}),
		...(typeof pass === 'string' ? { pass } : {}),
		...(draft.about === 'own' && !draft.pasted ? { rig: trainerWords.pasteEmpty } : {}),
	};
	if (
		Object.keys(wrong).length > 0 ||
		typeof count === 'string' ||
		typeof pass === 'string' ||
		typeof minutes === 'string'
	)
		return { recipe: null, wrong };
	return {
		wrong: null,
		recipe: {
			version: draft.version,
			title: draft.title.trim().slice(0, 60),
			profiles: draft.about === 'fixtures' ? [...draft.profiles] : [],
			own: draft.about === 'fixtures' ? [...draft.own] : [],
			...(draft.about === 'fixtures' && draft.unseen !== '' ? { unseen: draft.unseen } : {}),
			rig:
				draft.about === 'rig' && draft.rig !== ''
					? draft.rig
					: draft.about === 'own'
						? (draft.pasted?.sheet ?? null)
						: null,
			topics: topicsAsked(draft),
			kinds: kindsAsked(draft),
			count,
			levels: draft.levels.length > 0 ? [...draft.levels] : ['easy', 'middle', 'hard'],
			minutes,
			pass,
			order: draft.order,
			feedback: draft.feedback,
		},
	};
}

/** Whether the quiz is on fixtures of the crew's own: their panels are stand-ins, and much about them is assumed. */
const isOnOwn = ({ about, own }: Pick<PaperDraft, 'about' | 'own'>): boolean => about === 'fixtures' && own.length > 0;

/** Kinds to ask: those picked, or none for all; of the crew's own fixtures only those that hang on a chart alone. */
function kindsAsked(draft: PaperDraft): KindId[] {
	if (!isOnOwn(draft)) return [...draft.kinds];
	const picked = draft.kinds.filter((id) => CHART_KIND_IDS.includes(id));
	return picked.length > 0 ? picked : [...CHART_KIND_IDS];
}

/** Topics to ask of, likewise. */
const topicsAsked = (draft: PaperDraft): TopicId[] =>
	draft.topics.filter((id) => !isOnOwn(draft) || CHART_KIND_IDS.some((kind) => KIND_TOPICS[kind] === id));

const isAllOfChart = (kinds: readonly KindId[]): boolean => CHART_KIND_IDS.every((id) => kinds.includes(id));

/** What is offered of all that could be: see `kindsAsked`. */
export function offerFor(draft: PaperDraft, offer: Offer): Offer {
	if (!isOnOwn(draft)) return offer;
	const topics = new Set(CHART_KIND_IDS.map((id) => KIND_TOPICS[id]));
	return {
		topics: offer.topics.map((topic) => ({ ...topic, fits: topic.fits && topics.has(topic.id) })),
		kinds: offer.kinds.filter(({ id }) => CHART_KIND_IDS.includes(id)),
	};
}

/** The boxes of a recipe, so that a paper can be taken up again. */
export function draftOf(recipe: PaperRecipe, seed: number): PaperDraft {
	const { rig } = recipe;
	return {
		version: recipe.version,
		title: recipe.title,
		about: rig === null ? 'fixtures' : typeof rig === 'string' ? 'rig' : 'own',
		profiles: recipe.profiles,
		unseen: recipe.unseen ?? '',
		rig: typeof rig === 'string' ? rig : '',
		pasted:
			rig === null || typeof rig === 'string' ? null : { sheet: rig, name: rig.name, fixtures: rig.fixtures.length },
		topics: recipe.topics,
		// all that can be asked of one's own is what a draft with no kind picked asks
		kinds: recipe.own.length > 0 && isAllOfChart(recipe.kinds) ? [] : recipe.kinds,
		count: String(recipe.count),
		levels: recipe.levels,
		minutes: recipe.minutes === null ? '' : String(recipe.minutes),
		pass: String(recipe.pass),
		order: recipe.order,
		feedback: recipe.feedback,
		own: recipe.own,
		seed,
	};
}

/** The boxes with some of them changed: what they set from then on is of the newest version. */
export const changed = (draft: PaperDraft, some: Partial<Omit<PaperDraft, 'version'>>): PaperDraft => ({
	...draft,
	...some,
	version: FIRST_DRAFT.version,
});

/** A list with one more or one less, in the order picked. */
export const withOrWithout = <T>(list: readonly T[], one: T): T[] =>
	list.includes(one) ? list.filter((each) => each !== one) : [...list, one];

/** A whole number in a range, or the sentence that says what to type. */
function wholeIn(text: string, least: number, most: number): number | string {
	const trimmed = text.trim();
	const value = /^\d{1,4}$/.test(trimmed) ? Number(trimmed) : Number.NaN;
	return value >= least && value <= most ? value : trainerWords.number(least, most);
}

const { draft: boxes } = KEPT;

/** Keeps the boxes as they stand; a device that refuses loses nothing but these. */
export function keepDraft(store: BrowserStore, draft: PaperDraft): void {
	putInPlace(store, boxes, JSON.stringify(draft));
}

/**
 * The boxes as they were left. Each is taken only where it is of the kind that it should be, and what comes of them is held to the
 * recipe's schema when the paper is set: so a damaged one costs that box alone, and all of them are set aside as they were.
 */
export function keptDraft(store: BrowserStore): PaperDraft {
	const text = textAt(store, boxes.key);
	if (text === null) return FIRST_DRAFT;
	const found = readJson(text, boxes.bounds);
	const read = typeof found === 'string' ? null : found.value;
	if (!isRecord(read)) {
		moveAside(store, { place: boxes.key, text, why: 'damaged', now: Date.now() });
		return FIRST_DRAFT;
	}
	// boxes kept before there were versions set papers of the first, which may have been given out
	const first: Readonly<Record<string, unknown>> = 'version' in read ? read : { ...read, version: 1 };
	// and those kept before charts were made up had none
	const kept: Readonly<Record<string, unknown>> = 'unseen' in first ? first : { ...first, unseen: '' };
	const isDamaged = Object.keys(FIRST_DRAFT).some((key) => key in kept && !fits(key, kept[key]));
	if (isDamaged) setAside(store, { place: boxes.key, text, why: 'damaged', now: Date.now() });
	return Object.fromEntries(
		Object.entries(FIRST_DRAFT).map(([key, first]) => [key, fits(key, kept[key]) ? kept[key] : first]),
	) as unknown as PaperDraft;
}

function fits(key: string, value: unknown): boolean {
	if (key === 'pasted') return value === null || isPasted(value);
	if (key === 'version') return value === 1 || value === 2;
	if (key === 'own') return Array.isArray(value);
	if (key === 'seed') return Number.isSafeInteger(value) && Number(value) >= 0 && Number(value) <= 0xffffffff;
	if (key === 'about') return value === 'fixtures' || value === 'rig' || value === 'own';
	if (key === 'order') return value === 'mixed' || value === 'by-topic' || value === 'easy-first';
	if (key === 'feedback') return value === 'each' || value === 'end';
	const first = FIRST_DRAFT[key as keyof PaperDraft];
	if (Array.isArray(first)) return Array.isArray(value) && value.every((each) => typeof each === 'string');
	return typeof value === 'string' && value.length <= 100;
}

function isPasted(value: unknown): boolean {
	const { name, fixtures, sheet } = (value ?? {}) as Readonly<Record<string, unknown>>;
	return typeof name === 'string' && typeof fixtures === 'number' && typeof sheet === 'object' && sheet !== null;
}
