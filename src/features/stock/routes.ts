/** The crew's own panels in the worker: which presses on the real one tell two readings of it apart. */

import { stockNames } from '#words/stock/index.ts';
import { fileFixture, type Question, type StockEntry, stockFixture } from '../../../shared/stock/index.ts';
import { type Tell, tellApart } from '../../../sim/settle/index.ts';

/** A check on the real fixture that answers a question, or part of it. */
export interface SettleAnswer extends Tell {
	readonly question: Question;
}

/** Steps past which nobody would follow. */
const MOST_STEPS = 8;

export const routes = {
	/**
	 * The check of fewest presses that answers an open question of a panel.
	 * @param left answers that are still possible, by question, where a check has ruled some out
	 * @returns null where no question is open, or none is told by few presses
	 */
	settle({
		entry,
		left,
	}: {
		readonly entry: StockEntry;
		readonly left: Readonly<Partial<Record<Question, readonly string[]>>>;
	}): SettleAnswer | null {
		const made = (each: StockEntry) =>
			each.kind === 'file' ? fileFixture(each, stockNames) : stockFixture(each, stockNames);
		const { panel } = entry;
		if (!panel) return null;
		const open = (made(entry).own?.asked ?? []).flatMap(({ id, answers, given }) => {
			// a panel locked to see what opens it may stay locked
			if (given !== null || id === 'opens') return [];
			const readings = (left[id] ?? answers).flatMap((answer) => {
				const { profile, own } = made({
					...entry,
					panel: { ...panel, answers: { ...panel.answers, [id]: answer } },
				} as StockEntry);
				return profile && own?.panel ? [{ answer, profile }] : [];
			});
			return [{ question: id, readings }];
		});
		// one step more each round: the cheapest question is found before the others are searched far
		for (let most = 1; most <= MOST_STEPS && open.length > 0; most++)
			for (const { question, readings } of open) {
				const tell = tellApart(readings, most);
				if (tell) return { ...tell, question };
			}
		return null;
	},
};
