import { locale } from '#words/locale/index.ts';
import { flagWords } from '#words/papers/index.ts';
import { isInputError } from '../../../../shared/error/index.ts';
import type { Paper, PaperMark } from '../../../../shared/paper/index.ts';
import { errorText, fill, misfitText } from '../../../wording/index.ts';
import { peopleOf, type ResultStanding, standingOf } from './people.ts';
import type { KeptCount, KeptName, PaperMarker, PaperSetter, TakenResult } from './types.ts';

export type { ResultStanding } from './people.ts';

/** Why a result wants looking at. The codes of `Misfit`, and those that only show when it is handed in. */
export interface Flag {
	readonly code: PaperMark['misfits'][number]['code'] | 'changed-after' | 'not-set';
	/** The question's id; empty for the result as a whole. */
	readonly item: string;
	readonly sentence: string;
}

/** One line of the class table. */
export interface ClassRow {
	readonly taken: TakenResult;
	/** The trainer's name for it, else the learner's own; may be empty. */
	readonly name: string;
	readonly mark: PaperMark;
	/** 1 for a person's first try at this paper, 2 for the second ...; always 1 where no name tells who it is. */
	readonly attemptNo: number;
	/** Which of several people of this name, from 1, and how many of them there are as far as can be told. */
	readonly person: number;
	readonly namesakes: number;
	/** Whether it is among those that figures are made of, and why. */
	readonly standing: ResultStanding;
	/** How long it took, ms; null where not known. */
	readonly milliseconds: number | null;
	readonly flags: readonly Flag[];
}

/** A paper and what was handed in for it. */
export interface ClassTable {
	readonly paper: Paper;
	/** By name, then by when they ended. */
	readonly rows: readonly ClassRow[];
}

/** Results sorted out: by paper, and those whose paper cannot be set. */
export interface SortedOut {
	readonly tables: readonly ClassTable[];
	readonly unset: readonly { readonly taken: TakenResult; readonly name: string; readonly flag: Flag }[];
	/** Results left out because the same attempt stands in a table already. */
	readonly duplicates: number;
}

/** A result with its mark and its paper, before it is laid beside the others. */
export interface MarkedResult {
	readonly taken: TakenResult;
	readonly paper: Paper;
	readonly mark: PaperMark;
}

/**
 * Marks a result: its paper set anew, its answers marked against it. What it claims of itself has no say.
 * @throws InputError where its recipe sets no paper
 */
async function markTaken(taken: TakenResult, set: PaperSetter, mark: PaperMarker): Promise<MarkedResult> {
	const { recipe, seed, answers } = taken.result;
	const paper = await set(recipe, seed);
	return { taken, paper, mark: await mark(paper, answers) };
}

/** What does not fit in a result that was marked: what its answers show, its score, its paper and its check. */
function flagsOf({ taken: { result, whole }, paper, mark }: MarkedResult): readonly Flag[] {
	const flags: Flag[] = mark.misfits.map((each) => ({
		code: each.code,
		item: each.item,
		sentence: misfitText(each),
	}));
	const told = new Set(flags.map(({ code }) => code));
	const flag = (code: Flag['code'], sentence: string): void => {
		if (!told.has(code)) flags.push({ code, item: '', sentence });
	};
	if (result.paper !== paper.mark) flag('paper-altered', flagWords['other-paper']);
	if (result.claimed !== mark.score)
		flag('score-differs', fill(flagWords['score-differs'], { claimed: result.claimed, score: mark.score }));
	if (!whole) flag('changed-after', flagWords['changed-after']);
	return flags;
}

/** Lays marked results out in tables by paper: one line an attempt, tries counted by person, each told whether it counts. */
function laidOut(
	marked: readonly MarkedResult[],
	names: readonly KeptName[] = [],
	counts: readonly KeptCount[] = [],
): Omit<SortedOut, 'unset'> {
	const nameOf = namedBy(names);
	const papers = new Map<string, { paper: Paper; rows: BareRow[] }>();
	const seen = new Set<string>();
	let duplicates = 0;
	for (const each of marked) {
		const { taken, paper, mark } = each;
		const { attempt, started, ended } = taken.result;
		if (seen.has(attempt)) {
			duplicates++;
			continue;
		}
		seen.add(attempt);
		const table = papers.get(paper.mark) ?? { paper, rows: [] };
		papers.set(paper.mark, table);
		const milliseconds = started !== null && ended !== null && ended >= started ? ended - started : null;
		table.rows.push({ taken, name: nameOf(taken), mark, milliseconds, flags: flagsOf(each) });
	}
	const tables = [...papers.values()].map(({ paper, rows }) => ({ paper, rows: inTries(rows, counts) }));
	return { tables, duplicates };
}

/** The trainer's name for an attempt, else the learner's own. */
function namedBy(names: readonly KeptName[]): (taken: TakenResult) => string {
	const typed = new Map(names.map(({ attempt, name }) => [attempt, name]));
	return ({ result }) => typed.get(result.attempt) ?? result.name;
}

/** A line before it is known whose try it is. */
type BareRow = Omit<ClassRow, 'attemptNo' | 'person' | 'namesakes' | 'standing'>;

/** How names are told apart: capitals, accents written either way and runs of space make no other person. */
const keyOf = (name: string): string => name.normalize('NFKC').toLowerCase().replace(/\s+/g, ' ').trim();

const endOf = ({ taken: { result } }: BareRow): number => result.ended ?? Number.POSITIVE_INFINITY;

function inTries(rows: readonly BareRow[], counts: readonly KeptCount[]): ClassRow[] {
	const byHand = new Map(counts.map((each) => [each.attempt, each.counts]));
	const keyed = new Map<string, BareRow[]>();
	for (const row of rows) keyed.set(keyOf(row.name), [...(keyed.get(keyOf(row.name)) ?? []), row]);
	return [...keyed]
		.sort(([a], [b]) => locale.compare(a, b) || (a < b ? -1 : Number(a > b)))
		.flatMap(([key, alike]) => {
			const inTime = alike.toSorted(later);
			// with no name nobody is anybody's namesake
			const whose = key === '' ? inTime.map((row) => [row]) : peopleOf(inTime);
			const known = new Map(
				whose.flatMap((tries, at) =>
					tries.map((row, n) => [row, { attemptNo: n + 1, person: at + 1, tries } as const] as const),
				),
			);
			return inTime.flatMap((row) => {
				const own = known.get(row);
				if (!own) return [];
				const { attemptNo, person, tries } = own;
				const said = byHand.get(row.taken.result.attempt);
				const namesakes = key === '' ? 1 : whose.length;
				return [
					{ ...row, attemptNo, person: key === '' ? 1 : person, namesakes, standing: standingOf(row, tries, said) },
				];
			});
		});
}

const later = (a: BareRow, b: BareRow): number => (endOf(a) === endOf(b) ? 0 : endOf(a) - endOf(b));

/**
 * Sorts a pile of results out: each marked from its answers and laid into the table of its paper, told which count, the same
 * attempt taken once, what does not fit flagged, and what belongs to no paper that can be set told by itself.
 * @param set best `settingOnce`, since a class sits one paper
 */
export async function sortResults(
	pile: readonly TakenResult[],
	{
		set,
		mark,
		names = [],
		counts = [],
	}: { set: PaperSetter; mark: PaperMarker; names?: readonly KeptName[]; counts?: readonly KeptCount[] },
): Promise<SortedOut> {
	const marked: MarkedResult[] = [];
	const unset: SortedOut['unset'][number][] = [];
	const nameOf = namedBy(names);
	for (const taken of pile) {
		try {
			marked.push(await markTaken(taken, set, mark));
		} catch (error) {
			if (!isInputError(error)) throw error;
			unset.push({ taken, name: nameOf(taken), flag: { code: 'not-set', item: '', sentence: errorText(error) } });
		}
	}
	return { ...laidOut(marked, names, counts), unset };
}
