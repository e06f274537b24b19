import type { JSX, RefObject } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { linesOf, type Mark, type TextLine } from '../../../shared/stock/index.ts';

/** Where something is underlined; as a note where it only says how it was read. */
export interface Underline {
	readonly place: Mark['place'];
	readonly isNote: boolean;
}

interface Props {
	box: RefObject<HTMLTextAreaElement>;
	label: string;
	hint: string;
	example: string;
	rows: number;
	/** By place, the first in the text first. */
	underlines: readonly Underline[];
	text: string;
	onText: (text: string) => void;
}

/** A text to type or paste into, with what was not understood underlined where it stands. */
export function ChartBox({ box, label, hint, example, rows, underlines, text, onText }: Props): JSX.Element {
	const id = useId();
	const behind = useRef<HTMLPreElement>(null);
	return (
		<div class="field stock-box">
			<label for={id}>{label}</label>
			<p class="field-hint" id={`${id}-hint`}>
				{hint}
			</p>
			<div class="stock-paper">
				{/* the same text under the box, unseen but for its underlines */}
				<pre ref={behind} aria-hidden="true">
					{linesOf(text).map((line, i) => (
						<Line key={i} line={line} underlines={underlines.filter(({ place }) => place.line === i + 1)} />
					))}
				</pre>
				<textarea
					ref={box}
					id={id}
					rows={rows}
					wrap="off"
					spellcheck={false}
					autocapitalize="off"
					autocomplete="off"
					aria-describedby={`${id}-hint`}
					placeholder={example}
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

interface LineProps {
	line: TextLine;
	underlines: readonly Underline[];
}

/** A line with its underlines, the first of those that stand on one another. */
function Line({ line: { text: line, ending }, underlines }: LineProps): JSX.Element {
	const pieces: (string | JSX.Element)[] = [];
	let at = 0;
	for (const { place, isNote } of underlines) {
		const from = place.column - 1;
		if (from < at) continue;
		const to = Math.min(Math.max(line.length, from + 1), from + place.length);
		pieces.push(line.slice(at, from), <mark class={isNote ? 'note' : 'wrong'}>{line.slice(from, to) || ' '}</mark>);
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
