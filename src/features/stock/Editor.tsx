import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { manualWords, marksFrame, stockWords as words } from '#words/stock/index.ts';
import { type ChartEntry, type ChartMode, NOTES, printMode } from '../../../shared/stock/index.ts';
import type { BrowserStore } from '../../storage/index.ts';
import { Live, laterWith, Notice } from '../../ui/index.ts';
import { ChartBox } from './ChartBox.tsx';
import { CloseManual } from './CloseManual.tsx';
import { Doubts } from './Doubts.tsx';
import { EditorTop } from './EditorTop.tsx';
import { FileCautions } from './FileCautions.tsx';
import { Label } from './Label.tsx';
import { Marks } from './Marks.tsx';
import { chartFixture } from './maker.ts';
import { NO_NOTES } from './notes.ts';
import { OpenManual } from './OpenManual.tsx';
import { OwnPanelPart } from './OwnPanelPart.tsx';
import { ReadTable } from './ReadTable.tsx';
import { Send } from './Send.tsx';
import { useEntry } from './useEntry.ts';

const Manual = laterWith(manualWords, 'coming')(() => import('./manual/Manual.tsx'));

interface Props {
	entry: ChartEntry;
	storage: BrowserStore;
	onDone: () => void;
}

/** Milliseconds without a key until what was read is read out. */
const SAY_AFTER_MS = 1200;

/** One fixture: its chart, what was read of it, its label, and what is assumed. */
export default function Editor({ entry: begun, storage, onDone }: Props): JSX.Element {
	const at = useEntry(storage, begun);
	const { entry, change } = at;
	const fixture = useMemo(() => chartFixture(entry), [entry]);
	const { chart, profile, figures } = fixture;
	const box = useRef<HTMLTextAreaElement>(null);
	/** Counted, so that the same is read out again. */
	const [{ said, turn }, setSaid] = useState({ said: '', turn: 0 });
	const say = (text: string) => setSaid((before) => ({ said: text, turn: before.turn + 1 }));
	const [heard, tellOf] = useState('');
	const [wrong, tell] = useState<string | null>(null);
	/** A manual's file, as long as its pages are shown in place of the chart. */
	const [manual, openManual] = useState<File | null>(null);
	/** Text of the manual was changed and isn't in the chart. */
	const [isEdited, setEdited] = useState(false);

	const notes = chart.marks.filter(({ code }) => NOTES.has(code)).length;
	const summary = marksFrame.counted(chart.marks.length - notes, notes);
	const unchecked = chart.marks.filter(({ code }) => code === 'unchecked').length;
	const hasChart = entry.chart.trim() !== '';
	useEffect(() => {
		if (!hasChart) return;
		const timer = window.setTimeout(() => tellOf(summary), SAY_AFTER_MS);
		return () => window.clearTimeout(timer);
	}, [entry.chart]);

	const copyMode = (mode: ChartMode) => {
		const named = words.copyName(mode.name === '' ? words.modeNamed(mode.slots.length) : mode.name);
		// a chart with one mode and no heading gets one, so that the copy is told from it
		const own = chart.modes.length === 1 && mode.name === '' ? `${words.modeNamed(mode.slots.length)}\n` : '';
		change({ chart: `${own}${entry.chart.trimEnd()}\n\n${printMode({ ...mode, name: named })}\n` });
		say(words.copied(named));
	};
	const closeManual = () => {
		openManual(null);
		setEdited(false);
	};
	if (manual)
		return (
			<div class="stock stock-editor">
				<CloseManual isEdited={isEdited} onClose={closeManual} />
				<p aria-hidden="true">{said}</p>
				<Live text={said} turn={turn} />
				<Manual
					file={manual}
					used={entry.chart.length}
					onEdited={setEdited}
					onUse={(text, page, hasMore) => {
						change({ chart: hasChart ? `${entry.chart.trimEnd()}\n${text}\n` : `${text}\n` });
						say(manualWords.added(page));
						if (!hasMore) closeManual();
					}}
				/>
			</div>
		);
	return (
		<div class="stock stock-editor">
			<EditorTop storage={storage} at={at} onDone={onDone} />
			<div class="stock-chart">
				<section>
					<ChartBox
						box={box}
						label={words.chart}
						hint={words.chartHint}
						example={words.example}
						rows={14}
						underlines={chart.marks.map(({ code, place }) => ({ place, isNote: NOTES.has(code) }))}
						text={entry.chart}
						onText={(text) => change({ chart: text })}
					/>
					<OpenManual onFile={openManual} />
					{unchecked > 0 && (
						<Notice kind="wrong">
							<p>{manualWords.unchecked(unchecked)}</p>
						</Notice>
					)}
					{hasChart && <Marks chart={chart} box={box} summary={summary} />}
				</section>
				<ReadTable modes={chart.modes} profile={profile} onCopy={copyMode} />
			</div>
			<Live text={heard} />
			<p aria-hidden="true">{said}</p>
			<Live text={said} turn={turn} />
			{profile && <FileCautions entry={NO_NOTES} profile={profile} />}
			<Label entry={entry} onChange={change} />
			{profile && <OwnPanelPart entry={entry} fixture={fixture} onChange={change} />}
			{profile && <Doubts figures={figures} />}
			{wrong !== null && (
				<Notice kind="wrong">
					<p role="alert">{wrong}</p>
				</Notice>
			)}
			{hasChart && !profile && <p>{words.fix}</p>}
			<Send entry={entry} profile={profile} onTrouble={tell} />
		</div>
	);
}
