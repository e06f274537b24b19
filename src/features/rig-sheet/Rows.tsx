import type { JSX } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { planWords, rowWords } from '#words/plan/index.ts';
import { type Plan, type PlanProblem, type PlanRow, profileOf, rowFootprint } from '../../../shared/plan/index.ts';
import { Button, Field, Title } from '../../ui/index.ts';
import { Choices } from './Choices.tsx';
import { useGrown } from './growing.ts';
import type { PlanStore } from './store.ts';
import { typedNumber } from './typed.ts';
import { circuitSays, fedFrom, modeTitle, movedRow, movedTo, threeDigits, withoutRow, withRow } from './view.ts';

interface Props {
	store: PlanStore;
	problems: readonly PlanProblem[];
	/** The row that is open. */
	picked: string | null;
	onPick: (row: string | null) => void;
}

/** A line as it was drawn, and what it showed beside its row. */
interface DrawnLine {
	readonly line: JSX.Element;
	readonly isWrong: boolean;
	readonly takesFocus: boolean;
	readonly profiles: Plan['profiles'];
}

/** The fixtures of the plan; the one that is picked can be changed in place. */
export function Rows({ store, problems, picked, onPick }: Props): JSX.Element {
	const { plan } = store;
	const wrong = new Set(problems.flatMap(({ rows }) => rows));
	// where the focus was when a row was closed
	const [back, setBack] = useState<string | null>(null);
	const count = useGrown(plan.rows.length);
	const drawn = useRef(new WeakMap<PlanRow, DrawnLine>());
	/** The line of a row, the same element as before wherever nothing it shows has changed: the page then leaves it alone. */
	const lineOf = (row: PlanRow, isWrong: boolean, takesFocus: boolean): JSX.Element => {
		const before = drawn.current.get(row);
		const { profiles } = plan;
		if (before?.isWrong === isWrong && before.takesFocus === takesFocus && before.profiles === profiles)
			return before.line;
		const line = (
			<li key={row.id} data-wrong={isWrong}>
				<RowLine plan={plan} row={row} takesFocus={takesFocus} onPick={() => onPick(row.id)} />
			</li>
		);
		drawn.current.set(row, { line, isWrong, takesFocus, profiles });
		return line;
	};
	return (
		<section class="rig-rows" aria-labelledby="rig-rows">
			<Title level={2} id="rig-rows">
				{rowWords.heading}
			</Title>
			<p class="rig-soft">{planWords.fixtures(plan.rows.length)}</p>
			{plan.rows.length === 0 && <p>{rowWords.none}</p>}
			<ol class="rig-list">
				{plan.rows.map((row, i) => {
					if (picked === row.id)
						return (
							<li key={row.id} data-wrong={wrong.has(row.id)}>
								<RowFields
									store={store}
									row={row}
									onClose={() => {
										setBack(row.id);
										onPick(null);
									}}
								/>
							</li>
						);
					return i < count ? lineOf(row, wrong.has(row.id), back === row.id) : null;
				})}
			</ol>
		</section>
	);
}

/** What else is to be known of a row, in a few words: its label is written, its panel was never looked at. */
const notesOf = ({ labelled, unseen }: PlanRow): string =>
	[labelled ? rowWords.labelledShort : '', unseen ? rowWords.unseenShort : ''].filter(Boolean).join(', ');

interface LineProps {
	plan: Plan;
	row: PlanRow;
	takesFocus: boolean;
	onPick: () => void;
}

function RowLine({ plan, row, takesFocus, onPick }: LineProps): JSX.Element {
	const line = useRef<HTMLButtonElement>(null);
	useEffect(() => {
		if (takesFocus) line.current?.focus();
	}, [takesFocus]);
	const profile = profileOf(plan, row.profile);
	const power = row.circuit !== '' ? circuitSays(row.circuit) : profile?.power.battery ? rowWords.battery : '–';
	return (
		<button ref={line} type="button" class="rig-line" onClick={onPick}>
			<span class="visually-hidden">{rowWords.edit}</span>
			<span class="rig-address">{rowWords.address(row.universe, threeDigits(row.address))}</span>
			<span class="rig-name">{row.name}</span>
			<span class="rig-unit">{profile?.name ?? row.profile}</span>
			<span class="rig-mode">{modeTitle(profile, row.mode)}</span>
			<span class="rig-place">
				{rowWords.metres(row.place.x)}
				{row.place.overhead ? `, ${rowWords.overheadShort}` : ''}
			</span>
			<span class="rig-power">{power}</span>
			<span class="rig-label">{notesOf(row)}</span>
		</button>
	);
}

function RowFields({ store, row, onClose }: { store: PlanStore; row: PlanRow; onClose: () => void }): JSX.Element {
	const { plan } = store;
	const box = useRef<HTMLFieldSetElement>(null);
	const modeId = useId();
	useEffect(() => box.current?.querySelector('input')?.focus(), []);
	const profile = profileOf(plan, row.profile);
	const change = (part: Partial<PlanRow>): void => store.change((before) => withRow(before, row.id, part));
	const at = plan.rows.findIndex(({ id }) => id === row.id);
	return (
		<fieldset
			ref={box}
			class="rig-edit"
			onKeyDown={(event) => {
				if (event.key === 'Escape') onClose();
			}}
		>
			<legend>
				{row.name} ({profile?.name ?? row.profile})
			</legend>
			<Field
				label={rowWords.name}
				value={row.name}
				maxLength={60}
				onChange={(event) => {
					const name = event.currentTarget.value.trim();
					if (name !== '') change({ name });
				}}
			/>
			<div class="rig-field">
				<label for={modeId}>{rowWords.mode}</label>
				<select id={modeId} value={row.mode} onChange={(event) => change({ mode: event.currentTarget.value })}>
					{profile?.modes.map(({ id, name }) => (
						<option key={id} value={id}>
							{name} ({rowWords.channels(rowFootprint(plan, { profile: row.profile, mode: id }))})
						</option>
					))}
				</select>
			</div>
			<NumberBox
				label={rowWords.universe}
				value={row.universe}
				most={63999}
				onNumber={(universe) => change({ universe })}
			/>
			<NumberBox label={rowWords.start} value={row.address} most={512} onNumber={(address) => change({ address })} />
			<NumberBox
				label={rowWords.x}
				value={row.place.x}
				least={0}
				most={200}
				isWhole={false}
				onNumber={(x) => store.change((before) => movedTo(before, row.id, x))}
			/>
			<div class="rig-field">
				<label for={`${modeId}-after`}>{rowWords.after}</label>
				<select
					id={`${modeId}-after`}
					value={row.after ?? ''}
					onChange={(event) => store.change((before) => fedFrom(before, row.id, event.currentTarget.value))}
				>
					<option value="">{rowWords.afterRoom}</option>
					<Choices
						of={plan.rows.flatMap(({ id, name, universe }) =>
							id !== row.id && (universe === row.universe || plan.source === 'leader') ? [{ value: id, name }] : [],
						)}
						value={row.after ?? ''}
					/>
				</select>
			</div>
			<Field
				label={rowWords.circuit}
				value={row.circuit}
				maxLength={60}
				onChange={(event) => change({ circuit: event.currentTarget.value.trim() })}
			/>
			<CheckBox label={rowWords.labelled} isOn={row.labelled} onChange={(labelled) => change({ labelled })} />
			<CheckBox
				label={rowWords.overhead}
				isOn={row.place.overhead}
				onChange={(overhead) => change({ place: { ...row.place, overhead, y: overhead ? 5 : 0 } })}
			/>
			<div class="rig-ways">
				<Button look="main" onClick={onClose}>
					{rowWords.done}
				</Button>
				<Button disabled={at === 0} onClick={() => store.change((before) => movedRow(before, row.id, -1))}>
					{rowWords.up}
				</Button>
				<Button
					disabled={at === plan.rows.length - 1}
					onClick={() => store.change((before) => movedRow(before, row.id, 1))}
				>
					{rowWords.down}
				</Button>
				<Button look="quiet" onClick={() => store.change((before) => withoutRow(before, row.id))}>
					{rowWords.remove}
				</Button>
			</div>
		</fieldset>
	);
}

interface NumberProps {
	label: string;
	hint?: string;
	value: number | null;
	least?: number;
	most: number;
	isWhole?: boolean;
	/** Values to choose from besides typing one. */
	offers?: readonly number[];
	onNumber: (value: number) => void;
	/** Told where the box was emptied; without it that is no answer. */
	onNone?: () => void;
}

/** A box for a number; what is none stays in it, with a sentence, and changes nothing. */
export function NumberBox({
	label,
	hint,
	value,
	least = 1,
	most,
	isWhole = true,
	offers,
	onNumber,
	onNone,
}: NumberProps): JSX.Element {
	const [wrong, tell] = useState(false);
	const id = useId();
	const field = (
		<Field
			label={label}
			{...(hint === undefined ? {} : { hint })}
			{...(offers ? { list: id } : {})}
			inputMode={isWhole ? 'numeric' : 'decimal'}
			value={value === null ? '' : String(value)}
			error={wrong ? rowWords.bad(least, most) : undefined}
			onChange={(event) => {
				const text = event.currentTarget.value;
				const number = typedNumber(text, least, most, isWhole);
				const isNone = text.trim() === '' && onNone !== undefined;
				tell(number === null && !isNone);
				if (isNone) onNone();
				else if (number !== null) onNumber(number);
			}}
		/>
	);
	if (!offers) return field;
	return (
		<div>
			{field}
			<datalist id={id}>
				{offers.map((each) => (
					<option key={each} value={String(each)} />
				))}
			</datalist>
		</div>
	);
}

interface CheckProps {
	label: string;
	isOn: boolean;
	onChange: (on: boolean) => void;
}

export function CheckBox({ label, isOn, onChange }: CheckProps): JSX.Element {
	return (
		<label class="rig-check">
			<input type="checkbox" checked={isOn} onChange={(event) => onChange(event.currentTarget.checked)} />
			<span>{label}</span>
		</label>
	);
}
