import type { JSX, RefObject } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { stockWords as words } from '#words/stock/index.ts';
import { linesOf, type Mark, NOTES, type ReadChart, type TextLine } from '../../../shared/stock/index.ts';

interface Props {
	box: RefObject<HTMLTextAreaElement>;
	chart: ReadChart;
	text: string;
	onText: (text: string) => void;
}

/** The chart to type or paste into, with what was not understood underlined where it stands. */
export function ChartBox({ box, chart, text, onText }: Props): JSX.Element {
	const id = useId();
	const behind = useRef<HTMLPreElement>(null);
	return (
		<div class="field stock-box">
			<label for={id}>{words.chart}</label>
			<p class="field-hint" id={`${id}-hint`}>
				{words.chartHint}
			</p>
			<div class="stock-paper">
				{/* the same text under the box, unseen but for its underlines */}
				<pre ref={behind} aria-hidden="true">
					{linesOf(text).map((line, i) => (
						<Line key={i} line={line} marks={chart.marks.filter(({ place }) => place.line === i + 1)} />
					))}
				</pre>
				<textarea
					ref={box}
					id={id}
					rows={14}
					wrap="off"
					spellcheck={false}
					autocapitalize="off"
					autocomplete="off"
					aria-describedby={`${id}-hint`}
					placeholder={words.example}
					value={text}
					onInput={(event) => onText(event.currentTarget.value)}
					onScroll={({ currentTarget }) => {
						if (!behind.current) return;
						behind.current.scrollTop = currentTarget.scrollTop;
						behind.current.scrollLeft = currentTarget.scrollLeft;
					}}
				/>
			</div>
		</div>
	);
}

/** What a text box shows as a new line; whatever else ends a line stands in it as it is. */
const BREAKS_IN_BOX = /[\r\n]/;

/** A line with its marks, the first of those that stand on one another. */
function Line({ line: { text: line, ending }, marks }: { line: TextLine; marks: readonly Mark[] }): JSX.Element {
	const pieces: (string | JSX.Element)[] = [];
	let at = 0;
	for (const { code, place } of marks) {
		const from = place.column - 1;
		if (from < at) continue;
		const to = Math.min(Math.max(line.length, from + 1), from + place.length);
		pieces.push(
			line.slice(at, from),
			<mark class={NOTES.has(code) ? 'note' : 'wrong'}>{line.slice(from, to) || ' '}</mark>,
		);
		at = to;
	}
	return (
		<>
			{pieces}
			{line.slice(at)}
			{BREAKS_IN_BOX.test(ending) || ending === '' ? '\n' : ending}
		</>
	);
}
