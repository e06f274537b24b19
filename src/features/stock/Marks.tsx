import type { JSX, RefObject } from 'preact';
import { marksFrame, markWords } from '#words/stock/index.ts';
import { linesOf, type Mark, type MarkCode, NOTES, type ReadChart } from '../../../shared/stock/index.ts';

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
	const go = ({ place }: Mark) => {
		const area = box.current;
		if (!area) return;
		// the box has an ending of its own in place of some: it counts from its own text
		const lines = linesOf(area.value);
		const start = (lines[place.line - 1]?.start ?? 0) + place.column - 1;
		area.focus();
		area.setSelectionRange(start, start + place.length);
		// a browser brings the caret into sight by itself only as keys are pressed
		area.scrollTop = (area.scrollHeight / Math.max(1, lines.length)) * Math.max(0, place.line - 3);
	};
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
						<button type="button" onClick={() => go(mark)}>
							<strong>{marksFrame.at(mark.place.line)}</strong> <span>{markText(mark)}</span>
						</button>
					</li>
				))}
			</ol>
		</section>
	);
}
