import type { JSX } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { slipSteps, slipWords, checkWords as words } from '#words/plan/index.ts';
import { type Plan, type PlanRow, profileOf } from '../../../shared/plan/index.ts';
import { panelFrom } from '../../../shared/profile/index.ts';
import type { PanelAtRest } from '../../../sim/slip/index.ts';
import type { AskRoute } from '../../engine/index.ts';
import { Button, Field } from '../../ui/index.ts';
import { typedNumber } from './typed.ts';
import { modeTitle, threeDigits } from './view.ts';

interface Props {
	plan: Plan;
	row: PlanRow;
	/** From where one stands. */
	metres: number;
	/** Whether it comes after another, whose button had the focus. */
	takesFocus: boolean;
	ask: AskRoute;
	onSaw: (shows: NonNullable<PlanRow['shows']>) => void;
	onLater: () => void;
}

/** One panel to look at: what it is to show, and what it does. */
export function CheckCard({ plan, row, metres, takesFocus, ask, onSaw, onLater }: Props): JSX.Element {
	const { place, mode, address } = row;
	const profile = profileOf(plan, row.profile);
	const [types, type] = useState(false);
	const [panel, set] = useState<PanelAtRest | null>(null);
	const from = profile ? panelFrom(profile) : 'stand-in';
	const isSilent = from === 'invented' && panel !== null && !panel.tellsAddress;
	const head = useRef<HTMLHeadingElement>(null);
	useEffect(() => {
		if (takesFocus) head.current?.focus({ preventScroll: true });
		let isWanted = true;
		// an aid and no more: without it the mode and the start address are there
		ask('slips.panel', { plan, row: row.id }).then(
			(found) => isWanted && set(found),
			() => {},
		);
		return () => {
			isWanted = false;
		};
	}, [row.id]);
	return (
		<section class="check-card" aria-label={row.name}>
			<p class="rig-soft">
				{words.next} · {words.walk(metres)}
			</p>
			<h2 ref={head} tabIndex={-1}>
				{row.name}
			</h2>
			<p>
				{profile?.name ?? row.profile} · {words.at(place.x, place.overhead)}
			</p>
			{isSilent ? (
				<p>{place.overhead ? words.silentUp : words.silent}</p>
			) : (
				<p>{place.overhead ? words.overhead : words.lookOnly}</p>
			)}
			<p class="check-says">
				<span>{words.says}</span>
				<strong>{threeDigits(address)}</strong>
				<span>{modeTitle(profile, mode)}</span>
			</p>
			{from !== 'invented' ? (
				<p>{words.standIn}</p>
			) : panel?.up ? (
				<p>{slipSteps.switches(panel.up.flatMap((isUp, i) => (isUp ? [i + 1] : [])))}</p>
			) : (
				panel && panel.lines.length > 0 && <p>{words.shows(panel.lines.join(' / '))}</p>
			)}
			{from === 'invented' && <p>{slipWords.panelFrom.invented}</p>}
			{types ? (
				<Other {...{ plan, row, onSaw }} onBack={() => type(false)} />
			) : (
				<div class="check-ways">
					<Button look="main" onClick={() => onSaw({ mode, address })}>
						{words.same}
					</Button>
					<Button onClick={() => type(true)}>{words.other}</Button>
					<Button look="quiet" onClick={onLater}>
						{words.later}
					</Button>
				</div>
			)}
		</section>
	);
}

type OtherProps = Pick<Props, 'plan' | 'row' | 'onSaw'> & { onBack: () => void };

/** What the panel shows instead. */
function Other({ plan, row, onSaw, onBack }: OtherProps): JSX.Element {
	const id = useId();
	const profile = profileOf(plan, row.profile);
	const [mode, pick] = useState(row.mode);
	const [text, write] = useState('');
	const [wrong, tell] = useState(false);
	return (
		<form
			class="check-other"
			onSubmit={(event) => {
				event.preventDefault();
				const address = typedNumber(text, 1, 512, true);
				tell(address === null);
				if (address !== null) onSaw({ mode, address });
			}}
		>
			<Field
				label={words.start}
				hint={words.startHint}
				inputMode="numeric"
				autocomplete="off"
				value={text}
				error={wrong ? words.startBad : undefined}
				onInput={(event) => write(event.currentTarget.value)}
			/>
			<div class="rig-field">
				<label for={id}>{words.mode}</label>
				<select id={id} value={mode} onChange={(event) => pick(event.currentTarget.value)}>
					{(profile?.modes ?? []).map((each) => (
						<option key={each.id} value={each.id}>
							{modeTitle(profile, each.id)}
						</option>
					))}
				</select>
			</div>
			<div class="check-ways">
				<Button look="main" type="submit">
					{words.keep}
				</Button>
				<Button look="quiet" onClick={onBack}>
					{words.back}
				</Button>
			</div>
		</form>
	);
}
