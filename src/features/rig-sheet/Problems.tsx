import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { planWords } from '#words/plan/index.ts';
import { type PlanProblem, repaired, repairsOf } from '../../../shared/plan/index.ts';
import { Button, Live, Notice, Title } from '../../ui/index.ts';
import type { PlanStore } from './store.ts';
import { repairSays, saysOf } from './view.ts';

/** Problems shown at once: of a heap, the first are enough to begin with. */
const MOST_SHOWN = 12;

/** What is wrong with the plan, and one tap for each. */
export function Problems({ store, problems }: { store: PlanStore; problems: readonly PlanProblem[] }): JSX.Element {
	const [turn, setTurn] = useState(0);
	const { plan } = store;
	const shown = useMemo(
		() => problems.slice(0, MOST_SHOWN).map((problem) => ({ problem, repairs: repairsOf(plan, problem) })),
		[plan, problems],
	);
	return (
		<section class="rig-problems" aria-labelledby="rig-problems">
			<Title level={2} id="rig-problems">
				{planWords.problems}
			</Title>
			{problems.length === 0 && <Notice>{planWords.noProblems}</Notice>}
			<ul>
				{shown.map(({ problem, repairs }) => (
					<li key={`${problem.is} ${problem.rows.join(' ')}`}>
						<p>{saysOf(plan, problem)}</p>
						<div class="rig-ways">
							{repairs.map((repair) => (
								<Button
									key={repair.do}
									onClick={() => {
										store.change((before) => repaired(before, repair));
										setTurn(turn + 1);
									}}
								>
									{repairSays(plan, repair)}
								</Button>
							))}
						</div>
					</li>
				))}
			</ul>
			{problems.length > MOST_SHOWN && <p>{planWords.more(problems.length - MOST_SHOWN)}</p>}
			<Live text={turn === 0 ? '' : planWords.repaired} turn={turn} />
		</section>
	);
}
