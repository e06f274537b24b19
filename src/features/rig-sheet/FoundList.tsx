import type { JSX } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { cautions, siteFirst } from '#words/cautions/index.ts';
import { slipWords, checkWords as words } from '#words/plan/index.ts';
import { foundOff, isOff, isSeen, type Plan, type PlanRow, profileOf } from '../../../shared/plan/index.ts';
import { panelFrom } from '../../../shared/profile/index.ts';
import type { Slip } from '../../../sim/slip/index.ts';
import type { AskRoute } from '../../engine/index.ts';
import { Button, CautionLine, Notice } from '../../ui/index.ts';
import { foundText } from './checkView.ts';
import { stepText } from './SlipBlock.tsx';

interface Props {
	plan: Plan;
	ask: AskRoute;
	onRight: (row: PlanRow) => void;
	onAgain: (row: PlanRow) => void;
}

/** What differs from the patch, what it does at the desk meanwhile, and the fewest presses that put it right; then what was found to be as the patch says. */
export function FoundList({ plan, ask, onRight, onAgain }: Props): JSX.Element {
	const off = useMemo(() => foundOff(plan), [plan]);
	const [slips, set] = useState<ReadonlyMap<string, Slip | null>>(new Map());
	const only = off.map(({ row }) => row.id);
	useEffect(() => {
		if (only.length === 0) return;
		let isWanted = true;
		// what differs is told without the presses too
		ask('slips.slips', { plan, from: 'shown', only }).then(
			(made) => isWanted && set(new Map(only.map((id, i) => [id, made[i] ?? null]))),
			() => {},
		);
		return () => {
			isWanted = false;
		};
	}, [plan, only.join(' ')]);
	const same = plan.rows.filter((row) => isSeen(row) && !isOff(row));
	return (
		<>
			<ul class="check-found">
				{off.map((found) => (
					<li key={found.row.id}>
						<h3>{found.row.name}</h3>
						{foundText(plan, found).map((line) => (
							<p key={line}>{line}</p>
						))}
						<Right plan={plan} row={found.row} slip={slips.get(found.row.id)} />
						<div class="rig-ways">
							<Button onClick={() => onRight(found.row)}>{words.isRight}</Button>
							<Button look="quiet" aria-label={words.look(found.row.name)} onClick={() => onAgain(found.row)}>
								{words.lookDo}
							</Button>
						</div>
					</li>
				))}
			</ul>
			{same.length > 0 && (
				<details class="check-same">
					<summary>
						{words.others} ({same.length})
					</summary>
					<ul>
						{same.map((row) => (
							<li key={row.id}>
								{row.name}{' '}
								<Button look="quiet" aria-label={words.look(row.name)} onClick={() => onAgain(row)}>
									{words.lookDo}
								</Button>
							</li>
						))}
					</ul>
				</details>
			)}
		</>
	);
}

/** What presses at a real light may do to who is there. */
const SHOWN_FIRST = ['live-show', 'flashing'] as const;

function Right({ plan, row, slip }: { plan: Plan; row: PlanRow; slip: Slip | null | undefined }): JSX.Element {
	if (slip === undefined) return <p class="coming">{words.working}</p>;
	if (slip === null || slip.steps.length === 0) return <Notice kind="wrong">{words.noWay}</Notice>;
	if (row.place.overhead) return <Notice kind="wrong">{words.hangs}</Notice>;
	const profile = profileOf(plan, row.profile);
	const panelIs = profile ? panelFrom(profile) : 'stand-in';
	return (
		<details open>
			<summary>{words.presses(slip.presses)}</summary>
			<p>
				<strong>{slipWords.panelFrom[panelIs]}</strong>
			</p>
			<p>{words.before}</p>
			{SHOWN_FIRST.map((id) => (
				<CautionLine key={id} caution={cautions[id]} siteFirst={siteFirst} />
			))}
			<ol>
				{slip.steps.map((step, i) => (
					<li key={i}>{stepText(step, profile?.panel)}</li>
				))}
			</ol>
		</details>
	);
}
