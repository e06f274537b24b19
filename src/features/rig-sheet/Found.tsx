import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { rowWords, stepShort, tickWords } from '#words/plan/index.ts';
import { circuitKey, type Plan, profileOf, type RowStep, type TickBoard } from '../../../shared/plan/index.ts';
import { Button, Field, Notice, Title } from '../../ui/index.ts';
import type { Finding } from '../finder/index.ts';
import { foundText, noteWith, planAsFound, type StandsAt, standsText, wrongThen } from './foundView.ts';
import { CheckBox, NumberBox } from './Rows.tsx';
import { asksCircuit, circuitAfter, mayBeLit, reopenedBy, rowOfRepair } from './reopened.ts';
import { withRow } from './view.ts';

const words = tickWords.found;

/** What goes with a note. */
export interface AlsoDone {
	/** The row is ticked as lit. */
	readonly isLit: boolean;
	/** Steps that are unticked. */
	readonly reopens: readonly RowStep[];
	/** The plan from then on. */
	readonly plan: Plan;
}

interface Props {
	plan: Plan;
	board: TickBoard;
	finding: Finding;
	onNote: (row: string, text: string, also: AlsoDone) => void;
	onPlan: (next: Plan) => void;
	/** It is dealt with, or left. */
	onClose: () => void;
}

/** What the finder found on this rig: noted with one tap, or the plan changed by it. */
export default function Found(props: Props): JSX.Element | null {
	const { plan, finding, onClose } = props;
	const row = plan.rows.find(({ id }) => id === finding.fixture);
	if (!row) return null;
	return (
		<section class="tick-found" aria-label={words.title(row.name)} data-found={finding.repair !== null}>
			<Notice kind={finding.repair === null ? 'plain' : 'good'}>
				<Title level={2}>{words.title(row.name)}</Title>
				{finding.repair === null && finding.other ? (
					<Asks {...props} other={finding.other} />
				) : (
					<Noted {...props} row={row.id} />
				)}
				<Button look="quiet" onClick={onClose}>
					{words.leave}
				</Button>
			</Notice>
		</section>
	);
}

function Noted({ plan, board, finding, onNote, onClose, row }: Props & { row: string }): JSX.Element {
	const [circuit, type] = useState('');
	const [isUnknown, say] = useState(false);
	const text = noteWith(board, row, foundText(finding));
	const at = rowOfRepair(plan, finding);
	const reopens = reopenedBy(plan, board, finding);
	const asks = asksCircuit(plan, finding);
	const note = (isLit: boolean): void => {
		if (text === null) return;
		const next = asks && at ? withRow(plan, at.id, { circuit: circuitAfter(plan, at, circuit, isUnknown) }) : plan;
		onNote(row, text, { isLit, reopens, plan: next });
		onClose();
	};
	return (
		<>
			<p>{foundText(finding)}</p>
			{text === null && <p class="tick-told">{words.full}</p>}
			{at && reopens.length > 0 && (
				<p class="tick-told">
					{finding.done?.repair === 'swap-fixture'
						? words.swapped(at.name)
						: words.handled(
								at.name,
								reopens.map(({ step }) => stepShort[step]),
							)}{' '}
					{words.others}
				</p>
			)}
			{asks && at && (
				<>
					<Field
						label={words.circuit(at.name)}
						hint={words.circuitHint(circuitKey(at.circuit) === '' ? '' : at.circuit)}
						value={circuit}
						maxLength={60}
						disabled={isUnknown}
						onInput={(event) => type(event.currentTarget.value)}
					/>
					{circuitKey(at.circuit) !== '' && <CheckBox label={words.circuitUnknown} isOn={isUnknown} onChange={say} />}
				</>
			)}
			{mayBeLit(reopens) && <p class="rig-soft">{words.litHint}</p>}
			<div class="rig-ways">
				<Button look="main" disabled={text === null} onClick={() => note(false)}>
					{words.noteIt}
				</Button>
				{mayBeLit(reopens) && (
					<Button disabled={text === null} onClick={() => note(true)}>
						{words.noteLit}
					</Button>
				)}
			</div>
		</>
	);
}

/** The plan says one thing and the light, or the desk, another: which of the two changes is for the person to say. */
function Asks(props: Props & { other: NonNullable<Finding['other']> }): JSX.Element | null {
	const { plan, board, finding, other, onNote, onPlan, onClose } = props;
	const [at, stand] = useState<StandsAt>(other);
	const mode = useId();
	const row = plan.rows.find(({ id }) => id === other.fixture);
	if (!row) return null;
	const next = planAsFound(plan, other, at);
	const wrong = wrongThen(plan, next, row.id);
	const profile = profileOf(plan, row.profile);
	return (
		<>
			<p>{words.asks[other.by](row.name, standsText(plan, row.id, row))}</p>
			<div class="rig-fields">
				<NumberBox
					label={words.address[other.by]}
					value={at.address}
					most={512}
					onNumber={(address) => stand({ ...at, address })}
				/>
				<div class="rig-field">
					<label for={mode}>{rowWords.mode}</label>
					<select id={mode} value={at.mode} onChange={(event) => stand({ ...at, mode: event.currentTarget.value })}>
						{profile?.modes.map(({ id, name }) => (
							<option key={id} value={id}>
								{name}
							</option>
						))}
					</select>
				</div>
			</div>
			{wrong.map((each) => (
				<p key={each} class="tick-told">
					{words.ifChanged(each)}
				</p>
			))}
			<p>{words.after[other.by]}</p>
			<div class="rig-ways">
				<Button href="/finder/">{words.lightChanges[other.by]}</Button>
				<Button
					look="main"
					onClick={() => {
						const said = noteWith(board, row.id, words.planChanged(finding.was, standsText(plan, row.id, at)));
						// a note with no room left for it does not keep the plan from changing
						if (said === null) onPlan(next);
						else onNote(row.id, said, { isLit: false, reopens: [], plan: next });
						onClose();
					}}
				>
					{words.planChanges(standsText(plan, row.id, at))}
				</Button>
			</div>
		</>
	);
}
