import type { JSX } from 'preact';
import { planAsks } from '#words/finder/index.ts';
import { Button, Notice } from '../../ui/index.ts';
import type { FinderStore } from './store.ts';
import { type MayBePlan, planAddress, type WalkView } from './view.ts';

/** What may be right as it is: of the repair that is tried, or of a verdict not repaired yet. */
function mayBePlan({ check, verdict }: WalkView): MayBePlan | null {
	if (check) return check.tries;
	return verdict?.because === 'mended' ? null : (verdict?.causes.find(({ other }) => other !== null) ?? null);
}

interface Props {
	store: FinderStore;
	view: WalkView;
	plan: string;
}

/** A light, or a desk, at another address or mode than planned may be right: then the plan changes. */
export default function PlanMayBeWrong({ store, view, plan }: Props): JSX.Element | null {
	const cause = mayBePlan(view);
	if (!cause?.other) return null;
	return (
		<Notice>
			<p>{planAsks.planWrong[cause.other.by]}</p>
			<Button data-way="change-plan" href={planAddress(plan)} onClick={() => store.askPlan(cause)}>
				{planAsks.changePlan}
			</Button>
		</Notice>
	);
}
