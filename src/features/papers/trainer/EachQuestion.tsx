import type { JSX } from 'preact';
import { sitWords, trainerWords } from '#words/papers/index.ts';
import type { CellView, ClassView } from './views.ts';

const STATES: Readonly<Record<CellView['state'], { readonly mark: string; readonly words: string }>> = {
	right: { mark: '✓', words: sitWords.right },
	wrong: { mark: '×', words: sitWords.wrong },
	open: { mark: '·', words: sitWords.skipped },
};

/** Who had which question right: a row a person, a column a question. */
export function EachQuestion({ shown }: { shown: ClassView }): JSX.Element {
	return (
		<details class="table-whole">
			<summary>{trainerWords.whole}</summary>
			{/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways has to be reached by keyboard */}
			<section class="table-box" aria-label={trainerWords.whole} tabIndex={0}>
				<table class="cells">
					<thead>
						<tr>
							<th scope="col">{trainerWords.who}</th>
							{shown.questions.map(({ id, text }, at) => (
								<th key={id} scope="col" title={text}>
									{at + 1}
								</th>
							))}
						</tr>
					</thead>
					<tbody>
						{shown.rows.map(({ attempt, label, cells }) => (
							<tr key={attempt}>
								<th scope="row">{label}</th>
								{cells.map(({ state, gave }, at) => (
									<td key={shown.questions[at]?.id} data-state={state} title={gave}>
										<span aria-hidden="true">{STATES[state].mark}</span>
										<span class="visually-hidden">{STATES[state].words}</span>
									</td>
								))}
							</tr>
						))}
					</tbody>
				</table>
			</section>
		</details>
	);
}
