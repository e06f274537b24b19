import type { JSX, RefObject } from 'preact';
import { marksFrame, markWords } from '#words/stock/index.ts';
import { type Mark, type MarkCode, NOTES, type ReadChart } from '../../../shared/stock/index.ts';
import { goTo } from './goTo.ts';

/** What is said of a mark. */
const markText = ({ code, facts }: Mark): string =>
	(markWords satisfies Readonly<Record<MarkCode, unknown>> as Readonly<Record<MarkCode, (facts: never) => string>>)[
		code
	](facts as never);

interface Props {
	chart: ReadChart;
	box: RefObject<HTMLTextAreaElement>;
	summary: string;
}

/** Every mark in words, what must be looked at first: pressing one goes to its place in the chart. */
export function Marks({ chart, box, summary }: Props): JSX.Element {
	const { marks } = chart;
	if (marks.length === 0) return <p class="stock-good">{marksFrame.none}</p>;
	const inOrder = [...marks].sort((a, b) => Number(NOTES.has(a.code)) - Number(NOTES.has(b.code)));
	return (
		<section class="stock-marks" aria-label={marksFrame.heading}>
			<h2>{marksFrame.heading}</h2>
			<p>{summary}</p>
			<ol>
				{inOrder.map((mark) => (
					<li
						key={`${mark.code}-${mark.place.line}-${mark.place.column}`}
						class={NOTES.has(mark.code) ? 'note' : 'wrong'}
					>
						<button type="button" onClick={() => goTo(box.current, mark.place)}>
							<strong>{marksFrame.at(mark.place.line)}</strong> <span>{markText(mark)}</span>
						</button>
					</li>
				))}
			</ol>
		</section>
	);
}
