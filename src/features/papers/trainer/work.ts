import { trainerWords } from '#words/papers/index.ts';
import { InputError, isInputError } from '../../../../shared/error/index.ts';
import type { PaperMark, PaperRecipe } from '../../../../shared/paper/index.ts';
import { errorText } from '../../../wording/index.ts';
import { fileNameOf, markAny, setAny } from '../engine.ts';
import {
	type ClassTable,
	classCsv,
	type HandedIn,
	openPaperStore,
	type PaperMarker,
	type PaperStore,
	type Refusal,
	readHandedIn,
	type SortedOut,
	sortResults,
	storeFile,
	type TakenIn,
	type TakenResult,
	type TrainerRecords,
} from '../exchange/index.ts';
import { showClass } from './learn.ts';
import { type ClassView, type FileView, type HoldView, summaryOf, type TakenView } from './views.ts';

/** A table for a spreadsheet, questions for a learning platform, statements for a record store. */
export type ClassExport = 'csv' | 'qti-3' | 'qti-2' | 'xapi';

/** What the trainer's page alone asks: of results, and of what is kept on this device. */
export interface TrainerWork {
	/** Sorts pasted text, the fragment of a link, or the text of a file by its name, into what it is. */
	readText(asks: { readonly text: string; readonly from?: string }): Promise<readonly HandedIn[]>;
	/** Takes in what was sorted. */
	takeIn(asks: { readonly handed: readonly HandedIn[] }): Promise<TakenView>;
	hold(asks: null): Promise<HoldView>;
	classOf(asks: { readonly mark: string }): Promise<ClassView>;
	keepPaper(asks: { readonly recipe: PaperRecipe; readonly seed: number }): Promise<void>;
	/** What a kept paper is set from. */
	keptPaper(asks: { readonly mark: string }): Promise<{ readonly recipe: PaperRecipe; readonly seed: number }>;
	rename(asks: { readonly attempt: string; readonly name: string }): Promise<void>;
	/** Says whether a result counts, whatever would be so by itself. */
	count(asks: { readonly attempt: string; readonly counts: boolean }): Promise<void>;
	removeResult(asks: { readonly attempt: string }): Promise<void>;
	removePaper(asks: { readonly mark: string }): Promise<void>;
	removeAll(asks: null): Promise<void>;
	exportAll(asks: null): Promise<FileView>;
	exportClass(asks: { readonly mark: string; readonly as: ClassExport }): Promise<FileView>;
}

let opened: Promise<PaperStore> | null = null;
const store = (): Promise<PaperStore> => {
	opened ??= openPaperStore();
	return opened;
};

export const trainerWork: TrainerWork = {
	readText: ({ text, from = trainerWords.pasted }) => readHandedIn(text, setAny, from),
	async takeIn({ handed }) {
		const kept = await store();
		const refused: Refusal[] = [];
		const papers: string[] = [];
		const pile: TakenResult[] = [];
		const stored: TakenResult[] = [];
		const taken: TakenIn[] = [];
		for (const each of handed) {
			if (each.is === 'refused') refused.push(each);
			else if (each.is === 'store') {
				taken.push(await kept.putHeld(each.held));
				// one by one: a file may hold more than a call takes
				for (const unread of each.refused) refused.push(unread);
				papers.push(...each.held.papers.map(({ recipe }) => recipe.title));
				stored.push(...each.held.results);
			} else if (each.is === 'paper') {
				try {
					const { mark } = await setAny(each.recipe, each.seed);
					await kept.putPaper(each, mark);
					papers.push(each.recipe.title);
				} catch (error) {
					if (!isInputError(error)) throw error;
					refused.push({ from: each.from, code: error.code, sentence: errorText(error) });
				}
			} else pile.push(each);
		}
		taken.push(await kept.putResults(pile));
		const all = [...stored, ...pile];
		const last = all.at(-1)?.result;
		if (last) await keepPapersOf(kept, all);
		return {
			fresh: taken.reduce((sum, { fresh }) => sum + fresh, 0),
			again: taken.reduce((sum, { again }) => sum + again, 0),
			papers: [...new Set(papers)],
			refused: summaryOf([
				...refused,
				...taken
					.flatMap(({ differ }) => differ)
					.map(({ result }) => ({
						from: result.name || trainerWords.nameless,
						sentence: trainerWords.differs,
					})),
			]),
			paper: last ? await markOf(last) : null,
		};
	},
	async hold() {
		const kept = await store();
		const held = await kept.held();
		const { tables, unset } = await sorted(held);
		const counts = new Map(tables.map(({ paper, rows }) => [paper.mark, rows.length]));
		return {
			keeps: kept.keeps(),
			asides: summaryOf(await kept.asides()),
			papers: held.papers
				.toSorted((a, b) => b.kept - a.kept)
				.map(({ mark, recipe, seed }) => ({
					mark,
					title: recipe.title,
					seed,
					questions: recipe.count,
					results: counts.get(mark) ?? 0,
				})),
			results: held.results.length,
			unset: summaryOf(
				unset.map(({ name, flag }) => ({ from: name || trainerWords.nameless, sentence: flag.sentence })),
			),
		};
	},
	classOf: async ({ mark }) => showClass(await tableOf(mark)),
	async keepPaper({ recipe, seed }) {
		const { mark } = await setAny(recipe, seed);
		await (await store()).putPaper({ recipe, seed }, mark);
	},
	async keptPaper({ mark }) {
		const found = (await (await store()).papers()).find((each) => each.mark === mark);
		if (!found) throw gone();
		return { recipe: found.recipe, seed: found.seed };
	},
	rename: async ({ attempt, name }) => (await store()).putName(attempt, name),
	count: async ({ attempt, counts }) => (await store()).putCount(attempt, counts),
	removeResult: async ({ attempt }) => (await store()).removeResult(attempt),
	async removePaper({ mark }) {
		const kept = await store();
		// by what is in its table: a result may say of itself that it belongs elsewhere
		for (const { taken } of (await sorted(await kept.held())).tables.find(({ paper }) => paper.mark === mark)?.rows ??
			[])
			await kept.removeResult(taken.result.attempt);
		await kept.removePaper(mark);
	},
	async removeAll() {
		marks.clear();
		await (await store()).removeAll();
	},
	async exportAll() {
		return {
			name: fileNameOf(trainerWords.allFile),
			type: 'application/json',
			content: storeFile(await (await store()).held()),
		};
	},
	async exportClass({ mark, as }) {
		const table = await tableOf(mark);
		const { title } = table.paper.recipe;
		if (as === 'csv') return { name: fileNameOf(title, '.csv'), type: 'text/csv', content: classCsv(table) };
		if (as === 'xapi') {
			const { xapiFile } = await import('../exchange/xapi.ts');
			return { name: fileNameOf(`${title} xapi`), type: 'application/json', content: xapiFile(table) };
		}
		const { qtiZip } = await import('../exchange/qti.ts');
		const version = as === 'qti-3' ? '3.0' : '2.2';
		const { zip } = qtiZip(table.paper, version);
		return { name: fileNameOf(`${title} qti ${version}`, '.zip'), type: 'application/zip', content: zip };
	},
};

/** Marks kept, so that a class is not marked anew whenever it is looked at; emptied when there are too many. */
const MOST_MARKS = 5000;
const marks = new Map<string, PaperMark>();

const markOnce: PaperMarker = async (paper, answers) => {
	const key = `${paper.mark} ${JSON.stringify(answers)}`;
	const known = marks.get(key) ?? (await markAny(paper, answers));
	if (marks.size >= MOST_MARKS) marks.clear();
	marks.set(key, known);
	return known;
};

const sorted = ({ results, names, counts }: TrainerRecords): Promise<SortedOut> =>
	sortResults(results, { set: setAny, mark: markOnce, names, counts });

/** The table of a paper; of one with no results, an empty one. */
async function tableOf(mark: string): Promise<ClassTable> {
	const held = await (await store()).held();
	const table = (await sorted(held)).tables.find(({ paper }) => paper.mark === mark);
	if (table) return table;
	const paper = held.papers.find((each) => each.mark === mark);
	if (!paper) throw gone();
	return { paper: await setAny(paper.recipe, paper.seed), rows: [] };
}

/** The mark of the paper that a result belongs to as it is set here; null where none can be. */
async function markOf({ recipe, seed }: TakenResult['result']): Promise<string | null> {
	try {
		return (await setAny(recipe, seed)).mark;
	} catch (error) {
		if (!isInputError(error)) throw error;
		return null;
	}
}

/** Keeps the papers of results that came without theirs, so that each is in the list. */
async function keepPapersOf(kept: PaperStore, pile: readonly TakenResult[]): Promise<void> {
	const there = new Set((await kept.papers()).map(({ mark }) => mark));
	for (const { result } of pile) {
		const mark = await markOf(result);
		if (mark === null || there.has(mark)) continue;
		there.add(mark);
		await kept.putPaper({ recipe: result.recipe, seed: result.seed }, mark);
	}
}

const gone = (): InputError => new InputError('papers.gone', '', { trouble: 'not-kept' });
