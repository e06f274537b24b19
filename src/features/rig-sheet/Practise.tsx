import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { planWords, practiseWords as words } from '#words/plan/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import type { Plan } from '../../../shared/plan/index.ts';
import { Button, Notice } from '../../ui/index.ts';
import { errorTextLater } from '../../wording/index.ts';
import { lastRig } from './lastRig.ts';
import { faultAddress, hasPanelTasks, MOST_PRACTISED, taskAddress } from './practise.ts';

/** Offers a hidden fault and a task at the panels, on a copy of this rig. @param plan left out, the rig planned last; nothing where there is none */
export default function Practise({ plan: given }: { plan?: Plan }): JSX.Element | null {
	const [plan, set] = useState<Plan | null>(given ?? null);
	const [trouble, tell] = useState<string | null>(null);
	useEffect(() => {
		if (given) return;
		lastRig().then(
			(last) => set(last?.plan ?? null),
			() => tell(planWords.failed),
		);
	}, []);
	if (trouble === null && (!plan || plan.rows.length === 0)) return null;
	const go = (address: (plan: Plan) => Promise<string>): void => {
		if (!plan) return;
		tell(null);
		address(plan).then(
			(next) => {
				location.href = next;
			},
			async (error) => tell(isInputError(error) ? await errorTextLater(error) : planWords.failed),
		);
	};
	return (
		<section class="rig-practise" aria-labelledby="rig-practise">
			<h2 id="rig-practise">{words.heading(plan?.name ?? '')}</h2>
			<p>{words.lead}</p>
			{plan && plan.rows.length > MOST_PRACTISED && <p>{words.part(MOST_PRACTISED, plan.rows.length)}</p>}
			{trouble !== null && (
				<Notice kind="wrong">
					<p role="alert">{trouble}</p>
				</Notice>
			)}
			{plan && (
				<p class="rig-practise-ways">
					<Button onClick={() => go(faultAddress)}>{words.fault}</Button>
					{hasPanelTasks(plan) && (
						<Button onClick={() => go((its) => taskAddress(its, crypto.getRandomValues(new Uint32Array(1))[0] ?? 0))}>
							{words.task}
						</Button>
					)}
				</p>
			)}
		</section>
	);
}
