import type { JSX } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { marksFrame, pageDoubtWords, manualWords as words } from '#words/stock/index.ts';
import {
	NOTES,
	type PageDoubt,
	type PageText,
	readChart,
	stillOpen,
	withUnchecked,
} from '../../../../shared/stock/index.ts';
import { Button, Live, Notice } from '../../../ui/index.ts';
import { ChartBox } from '../ChartBox.tsx';
import { goTo } from '../goTo.ts';
import { Marks } from '../Marks.tsx';
import { ReadTable } from '../ReadTable.tsx';

interface Props {
	page: number;
	read: PageText;
	/** As it was read, or as it was changed by now. */
	text: string;
	/** Letters that there is still room for in the chart, and in all. */
	room: number;
	most: number;
	onText: (text: string) => void;
	onUse: (text: string) => void;
	onMark: () => void;
}

const doubtText = ({ code, facts }: PageDoubt): string =>
	(pageDoubtWords as Readonly<Record<string, (facts: never) => string>>)[code]?.(facts as never) ?? '';

/** What was read of a page, to be held against it and put right before any of it is used. */
export function FoundOnPage({ page, read, text, room, most, onText, onUse, onMark }: Props): JSX.Element {
	const box = useRef<HTMLTextAreaElement>(null);
	const heading = useRef<HTMLHeadingElement>(null);
	const chart = useMemo(() => readChart(text), [text]);
	const doubts = useMemo(() => stillOpen(read, text), [read, text]);
	const used = withUnchecked(text, doubts);
	const open = new Set(doubts.map(({ place }) => place.line)).size;
	const notes = chart.marks.filter(({ code }) => NOTES.has(code)).length;
	const summary = marksFrame.counted(chart.marks.length - notes, notes);
	useEffect(() => heading.current?.focus(), []);
	const underlines = [
		...doubts.map(({ place }) => ({ place, isNote: false })),
		...chart.marks.map(({ code, place }) => ({ place, isNote: NOTES.has(code) })),
	].toSorted((a, b) => a.place.line - b.place.line || a.place.column - b.place.column);
	const isFull = used.length > room;
	return (
		<>
			<h2 ref={heading} tabIndex={-1}>
				{words.found(page)}
			</h2>
			<p>{words.foundLead}</p>
			<Live text={summary} />
			{isFull && (
				<Notice kind="wrong">
					<p role="alert">{words.full(most)}</p>
				</Notice>
			)}
			<div class="stock-chart">
				<section>
					<ChartBox
						box={box}
						label={words.text}
						hint={words.textHint}
						example=""
						rows={12}
						underlines={underlines}
						text={text}
						onText={onText}
					/>
					{doubts.length > 0 && (
						<section class="stock-marks" aria-label={words.doubts}>
							<h3>{words.doubts}</h3>
							<ol>
								{doubts.map((doubt, i) => (
									<li key={i} class="wrong">
										<button type="button" onClick={() => goTo(box.current, doubt.place)}>
											<strong>{marksFrame.at(doubt.place.line)}</strong> <span>{doubtText(doubt)}</span>
										</button>
									</li>
								))}
							</ol>
						</section>
					)}
					<Marks chart={chart} box={box} summary={summary} />
				</section>
				<ReadTable modes={chart.modes} profile={null} />
			</div>
			{open > 0 && (
				<Notice kind="wrong">
					<p>
						{words.unchecked(open)} {words.uncheckedMarked}
					</p>
				</Notice>
			)}
			<div class="stock-ways">
				<Button look="main" disabled={text.trim() === '' || isFull} onClick={() => onUse(used)}>
					{words.use}
				</Button>
				<Button onClick={onMark}>{words.mark}</Button>
			</div>
		</>
	);
}
