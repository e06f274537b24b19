import { tickWords } from '#words/plan/index.ts';
import {
	LONGEST_NOTE,
	type Plan,
	problemsOf,
	profileOf,
	sawPanels,
	type TickBoard,
} from '../../../shared/plan/index.ts';
import type { Finding } from '../finder/index.ts';
import { modeTitle, saysOf, threeDigits, withRow } from './view.ts';

/** What the finder found, as a note says it. */
export const foundText = ({ was, isSure, repair }: Finding): string =>
	tickWords.found.note(isSure ? was : tickWords.found.likely(was), repair);

/** A row's note with more written under it: what stood stays. Null where that is longer than a note may be. */
export function noteWith(board: TickBoard, row: string, more: string): string | null {
	const text = [...board.notes(row).map((note) => note.text), more].join('\n');
	return text.length > LONGEST_NOTE ? null : text;
}

/** What a light, or the desk for it, is found to be at. */
export interface StandsAt {
	readonly address: number;
	readonly mode: string;
}

/** The plan with a row as its light, or the desk, was found to have it. */
export function planAsFound(plan: Plan, { fixture, by, universe }: NonNullable<Finding['other']>, at: StandsAt): Plan {
	const { address, mode } = at;
	const next = withRow(plan, fixture, { address, mode, ...(universe === null ? {} : { universe }) });
	return by === 'light' ? sawPanels(next, new Set([fixture]), { address, mode }) : next;
}

/** What would be wrong with the row then, in sentences: what was wrong before is not said again. */
export function wrongThen(plan: Plan, next: Plan, row: string): string[] {
	const before = new Set(problemsOf(plan).map((problem) => saysOf(plan, problem)));
	return problemsOf(next)
		.filter(({ rows }) => (rows as readonly string[]).includes(row))
		.map((problem) => saysOf(next, problem))
		.filter((each) => !before.has(each));
}

/** A row's address and mode in one line. */
export function standsText(plan: Plan, row: string, { address, mode }: StandsAt): string {
	const its = plan.rows.find(({ id }) => id === row);
	return `${threeDigits(address)}, ${modeTitle(its ? profileOf(plan, its.profile) : null, mode)}`;
}
