import type { JSX } from 'preact';
import { useEffect, useId, useMemo, useRef, useState } from 'preact/hooks';
import { type CautionId, cautions, siteFirst } from '#words/cautions/index.ts';
import { locale } from '#words/locale/index.ts';
import { rowWords, ruleWords, slipWords, stepNames, stepShort, tickWords, warningWords } from '#words/plan/index.ts';
import {
	type DataLink,
	LONGEST_NOTE,
	type Plan,
	type PlanRow,
	profileOf,
	type TickBoard,
	type TickNote,
	type TickStep,
	type TickWarning,
	warningsOf,
} from '../../../shared/plan/index.ts';
import { Button, CautionBox, CautionLine, Notice } from '../../ui/index.ts';
import { cautionsAt, doneOf, stepDetail } from './ticksView.ts';
import { threeDigits } from './view.ts';

interface RowProps {
	plan: Plan;
	row: PlanRow;
	steps: readonly TickStep[];
	board: TickBoard;
	/** The step of this row that is next of all; null where that is another row's. */
	next: TickStep | null;
	/** Whether another light on its circuit is ticked as lit. */
	isCircuitLit: boolean;
}

/** The step that a warning is about. */
const WARNED_AT: Readonly<Record<TickWarning, TickStep>> = { bond: 'bond', supply: 'off' };

/** What is unsafe about a row. */
export const rowWarnings = ({ row, steps, board, next, isCircuitLit }: Omit<RowProps, 'plan'>): TickWarning[] =>
	warningsOf(steps, (step) => board.state(row.id, step).standing, { next, isCircuitLit });

/** Where a plug first goes in: to charge, and where it has no battery to run on, to be set. */
const PLUGGED_AT: readonly TickStep[] = ['charged', 'mode'];

interface LineProps extends RowProps {
	onOpen: (row: string) => void;
}

/** A fixture in one line, which opens. Drawn again only where it is to look otherwise: there may be hundreds. */
export function TickLine(props: LineProps): JSX.Element {
	const { plan, row, steps, board, next } = props;
	const looks = [
		next,
		props.isCircuitLit,
		board.notes(row.id).length,
		...steps.map((step) => board.state(row.id, step).standing),
	].join();
	return useMemo(() => <Line {...props} />, [plan, row, looks]);
}

function Line(props: LineProps): JSX.Element {
	const { plan, row, steps, board, next, onOpen } = props;
	const done = doneOf(board, row.id, steps);
	const unclear = steps.some((step) => ['split', 'stale'].includes(board.state(row.id, step).standing));
	const notes = board.notes(row.id).length;
	const first = steps.find((step) => !board.isDone(row.id, step));
	return (
		<button
			type="button"
			class="tick-line"
			data-next={next !== null}
			data-wrong={unclear || rowWarnings(props).length > 0}
			aria-expanded={false}
			onClick={() => onOpen(row.id)}
		>
			<span class="rig-address">{rowWords.address(row.universe, threeDigits(row.address))}</span>
			<span class="rig-name">{row.name}</span>
			<span class="rig-unit">{profileOf(plan, row.profile)?.name ?? row.profile}</span>
			<span class="tick-count">
				<strong>{first === undefined ? tickWords.allOf : tickWords.of(done, steps.length)}</strong>
				{first !== undefined && <span>{stepShort[first]}</span>}
				{notes > 0 && <span>{tickWords.note}</span>}
			</span>
		</button>
	);
}

interface CardProps extends RowProps {
	link: DataLink | null;
	/** The row at which each caution was met in full; this card adds its own. */
	met: Map<CautionId, string>;
	onTick: (step: TickStep, on: boolean) => void;
	onNote: (text: string) => void;
	onDark: () => void;
	onClose: () => void;
}

/** A fixture's steps, with the cautions where the hands are. */
export function TickCard(props: CardProps): JSX.Element {
	const { plan, row, steps, board, next, link, met, onTick, onDark, onClose } = props;
	const head = useRef<HTMLButtonElement>(null);
	useEffect(() => head.current?.focus({ preventScroll: true }), []);
	const care = cautionsAt(plan, row);
	const notes = board.notes(row.id);
	const warnings = rowWarnings(props);
	return (
		<section class="tick-card" aria-label={row.name}>
			<button ref={head} type="button" class="tick-line" aria-expanded={true} onClick={onClose}>
				<span class="rig-address">{rowWords.address(row.universe, threeDigits(row.address))}</span>
				<span class="rig-name">{row.name}</span>
				<span class="rig-unit">{profileOf(plan, row.profile)?.name ?? row.profile}</span>
			</button>
			<ol class="tick-steps">
				{steps.map((step) => (
					<li key={step} data-next={next === step}>
						{(care.get(step) ?? []).map((id) => (
							<Caution key={id} id={id} row={row.id} step={step} met={met} />
						))}
						{step === PLUGGED_AT.find((each) => steps.includes(each)) && (
							<p class="rig-soft">{ruleWords.otherSupply}</p>
						)}
						{step === 'placed' && <p class="rig-soft">{slipWords.notOverhead}</p>}
						{warnings.map(
							(warning) =>
								step === WARNED_AT[warning] && (
									<Notice key={warning} kind="wrong">
										{warningWords[warning]}
									</Notice>
								),
						)}
						<StepBox {...{ plan, row, link, board, step, onTick }} />
					</li>
				))}
			</ol>
			<Note name={row.name} notes={notes} onNote={props.onNote} />
			<div class="rig-ways tick-dark">
				<Button aria-label={tickWords.darkOne(row.name)} onClick={onDark}>
					{tickWords.dark}
				</Button>
				<span class="rig-soft">{tickWords.back}</span>
			</div>
		</section>
	);
}

/** Whole where it is met first, and then a line that opens. */
function Caution(props: { id: CautionId; row: string; step: TickStep; met: Map<CautionId, string> }): JSX.Element {
	const { id, row, step, met } = props;
	const at = `${row} ${step}`;
	const first = met.get(id) ?? at;
	met.set(id, first);
	const its = { caution: cautions[id], siteFirst };
	return first === at ? <CautionBox {...its} level={2} /> : <CautionLine {...its} />;
}

interface StepProps extends Pick<CardProps, 'plan' | 'row' | 'link' | 'board' | 'onTick'> {
	step: TickStep;
}

function StepBox({ plan, row, link, board, step, onTick }: StepProps): JSX.Element {
	const { standing, ticks } = board.state(row.id, step);
	const detail = stepDetail(plan, row, link, step);
	const isUp = row.place.overhead && board.state(row.id, 'hung').standing !== 'open';
	const isSaidLit = board.state(row.id, 'lit').standing !== 'open';
	const latest = ticks.findLast(({ on }) => on);
	const when = (at: number): string => locale.date(at);
	const name = (
		<span class="tick-name">
			<strong>{stepNames[step]}</strong>
			{detail !== '' && <span>{detail}</span>}
		</span>
	);
	if (standing === 'split')
		return (
			<div class="tick-split">
				{name}
				<p class="tick-told">{tickWords.split}</p>
				<ul>
					{ticks.map(({ id, on, by, at }) => (
						<li key={id}>{(on ? tickWords.saidOn : tickWords.saidOff)(by, when(at))}</li>
					))}
				</ul>
				<div class="rig-ways">
					<Button onClick={() => onTick(step, true)}>{tickWords.isDone}</Button>
					<Button onClick={() => onTick(step, false)}>{tickWords.isNot}</Button>
				</div>
			</div>
		);
	return (
		<label class="tick-step" data-standing={standing}>
			<input
				type="checkbox"
				data-buzz="done"
				checked={standing === 'done'}
				onChange={(event) => onTick(step, event.currentTarget.checked)}
			/>
			<span class="tick-says">
				{name}
				{standing === 'stale' && (
					<span class="tick-told">{isUp && step !== 'lit' ? tickWords.staleUp : tickWords.stale}</span>
				)}
				{step === 'off' && standing === 'done' && isSaidLit && <span class="tick-told">{tickWords.litSince}</span>}
				{standing === 'done' && latest && <span class="rig-soft">{tickWords.byAt(latest.by, when(latest.at))}</span>}
			</span>
		</label>
	);
}

interface NoteProps {
	name: string;
	/** What stands: more than one where two people wrote. */
	notes: readonly TickNote[];
	onNote: (text: string) => void;
}

function Note({ name, notes, onNote }: NoteProps): JSX.Element {
	const id = useId();
	const stood = notes.map(({ text }) => text).join('\n');
	const [text, type] = useState(stood);
	const was = useRef(stood);
	if (was.current !== stood) {
		// what is being typed stays, whatever comes in
		if (text === was.current) type(stood);
		was.current = stood;
	}
	const isLong = text.length > LONGEST_NOTE;
	return (
		<div class="tick-note">
			{notes.length > 1 && <p class="tick-told">{tickWords.notes}</p>}
			{notes.map((note) => (
				<p key={note.id}>
					{note.text} <span class="rig-soft">{tickWords.byAt(note.by, locale.date(note.at))}</span>
				</p>
			))}
			<div class="rig-field">
				<label for={id}>{tickWords.noteFor(name)}</label>
				<p class="rig-soft">{tickWords.noteHint}</p>
				<textarea id={id} rows={2} value={text} onInput={(event) => type(event.currentTarget.value)} />
			</div>
			{isLong && <p class="field-error">{tickWords.noteLong}</p>}
			<Button disabled={isLong || (text.trim() === stood && notes.length < 2)} onClick={() => onNote(text.trim())}>
				{tickWords.noteDo}
			</Button>
		</div>
	);
}
