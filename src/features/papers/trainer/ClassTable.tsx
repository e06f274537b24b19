import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { locale } from '#words/locale/index.ts';
import { trainerWords } from '#words/papers/index.ts';
import type { AskRoute } from '../../../engine/index.ts';
import { Button, Dialog } from '../../../ui/index.ts';
import { CountButton } from './CountButton.tsx';
import { EachQuestion } from './EachQuestion.tsx';
import type { ClassView, RowView } from './views.ts';

interface Props {
	ask: AskRoute;
	shown: ClassView;
	onChanged: () => Promise<void>;
}

/** Everybody's results of one paper, marked from their answers. */
export function ClassTable({ ask, shown, onChanged }: Props): JSX.Element {
	const [removing, remove] = useState<RowView | null>(null);
	const nameOf = ({ label }: RowView) => label;
	return (
		<>
			{/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways has to be reached by keyboard */}
			<section class="table-box" aria-label={trainerWords.table} tabIndex={0}>
				<table class="class-table">
					<caption>{`${trainerWords.table}: ${shown.title}`}</caption>
					<thead>
						<tr>
							<th scope="col">{trainerWords.who}</th>
							<th scope="col">{trainerWords.scoreHead}</th>
							<th scope="col">{trainerWords.passHead}</th>
							<th scope="col">{trainerWords.when}</th>
							<th scope="col">{trainerWords.took2}</th>
							<th scope="col">{trainerWords.notes}</th>
							<th scope="col">
								<span class="visually-hidden">{trainerWords.remove}</span>
							</th>
						</tr>
					</thead>
					<tbody>
						{shown.rows.map((row) => (
							<tr key={row.attempt} data-flagged={row.flags.length > 0}>
								<th scope="row">
									<input
										type="text"
										aria-label={trainerWords.rename(nameOf(row))}
										placeholder={trainerWords.nameless}
										maxLength={80}
										defaultValue={row.name}
										key={row.name}
										onChange={({ currentTarget }) => {
											void ask('papers.rename', { attempt: row.attempt, name: currentTarget.value }).then(onChanged);
										}}
									/>
								</th>
								<td class="value">{`${row.score} / ${row.of} (${row.percent} %)`}</td>
								<td>
									<span class="class-passed" data-passed={row.passed}>
										{row.passed ? trainerWords.yes : trainerWords.no}
									</span>
								</td>
								<td>{row.ended === null ? '' : locale.date(row.ended)}</td>
								<td>{row.minutes === null ? '' : trainerWords.minutes2(row.minutes)}</td>
								<td>
									{row.standing !== '' && <p class="class-standing">{row.standing}</p>}
									{row.tryNo > 1 && <span class="class-note">{trainerWords.tryOf(row.tryNo)}</span>}
									{row.flags.length > 0 && (
										<div class="class-flags">
											<strong>{trainerWords.flag}</strong>
											<ul>
												{row.flags.map((flag) => (
													<li key={flag}>{flag}</li>
												))}
											</ul>
										</div>
									)}
								</td>
								<td>
									<CountButton ask={ask} row={row} onChanged={onChanged} />
									<Button look="quiet" aria-label={trainerWords.removeOne(nameOf(row))} onClick={() => remove(row)}>
										{trainerWords.remove}
									</Button>
								</td>
							</tr>
						))}
					</tbody>
				</table>
			</section>
			<EachQuestion shown={shown} />
			{removing && (
				<Dialog
					open
					onClose={() => remove(null)}
					title={trainerWords.removeAsk(nameOf(removing))}
					closeWords={trainerWords.removeKeep}
				>
					<p>{trainerWords.removeWords}</p>
					<Button
						onClick={() => {
							remove(null);
							void ask('papers.removeResult', { attempt: removing.attempt }).then(onChanged);
						}}
					>
						{trainerWords.removeDo}
					</Button>
				</Dialog>
			)}
		</>
	);
}
