import { learnWords } from '#words/papers/index.ts';
import { answerText, questionAsk } from '../../../wording/index.ts';
import type { ClassRow, ClassTable } from '../exchange/index.ts';
import { labelOf } from './label.ts';
import { learnFrom } from './learn.ts';
import type { CellView, ClassView, RowView } from './views.ts';

/** A class table in words. */
export function showClass(table: ClassTable): ClassView {
	const { paper, rows } = table;
	return {
		mark: paper.mark,
		title: paper.recipe.title,
		seed: paper.seed,
		questions: paper.items.map((item) => ({ id: item.id, text: questionAsk(item) })),
		rows: rows.map((row) => showRow(table, row)),
		learn: learnFrom(table),
	};
}

/** Why a result counts or does not, where that is not plain; empty where it is. */
function standingText({ standing: { counts, why }, namesakes }: ClassRow): string {
	if (!counts) return learnWords.notCounted[why];
	if (why !== 'first') return learnWords.counted[why];
	return namesakes > 1 ? learnWords.namesakes(namesakes) : '';
}

function showRow({ paper }: ClassTable, row: ClassRow): RowView {
	const { taken, name, mark, attemptNo, milliseconds, flags, standing } = row;
	const { attempt, ended, answers } = taken.result;
	return {
		attempt,
		name,
		score: mark.score,
		of: mark.of,
		percent: mark.percent,
		passed: mark.passed,
		ended,
		minutes: milliseconds === null ? null : Math.round(milliseconds / 60_000),
		tryNo: attemptNo,
		label: labelOf(row),
		counts: standing.counts,
		standing: standingText(row),
		flags: flags.map(({ item, sentence }) => {
			const at = paper.items.findIndex(({ id }) => id === item);
			return at < 0 ? sentence : `${at + 1}: ${sentence}`;
		}),
		cells: paper.items.map((item): CellView => {
			const one = mark.items.find((each) => each.item === item.id);
			const answer = Object.hasOwn(answers, item.id) ? answers[item.id] : undefined;
			if (!one?.answered || !answer) return { state: 'open', gave: '' };
			return { state: one.right ? 'right' : 'wrong', gave: answerText(item, answer) };
		}),
	};
}
