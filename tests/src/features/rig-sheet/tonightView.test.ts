import { expect, it } from 'vitest';
import { stepShort } from '#words/plan/index.ts';
import {
	alongRoom,
	emptyPlan,
	NO_TICKS,
	type Plan,
	packed,
	planSays,
	walkOf,
	withRows,
	withTick,
} from '../../../../shared/plan/index.ts';
import { tonightOf } from '../../../../src/features/rig-sheet/tonightView.ts';

const plan: Plan = packed(
	withRows(
		emptyPlan('Barn'),
		[{ profile: 'tallow-6' }, { profile: 'picket-8', overhead: true, circuit: 'A' }, { profile: 'cobble' }],
		() => 'Light',
	),
).plan;

it('goes step by step through the walk of tick off, and lights come one by one', () => {
	let ticks = NO_TICKS;
	const says = planSays(plan);
	expect(tonightOf(plan, ticks)).toMatchObject({ name: 'Barn', lit: 0, isBegun: false });
	for (const [i, at] of walkOf(plan).entries()) {
		const { next, lit } = tonightOf(plan, ticks);
		expect(next).toMatchObject({ step: stepShort[at.step], name: plan.rows.find(({ id }) => id === at.row)?.name });
		ticks = withTick(ticks, says, { ...at, on: true }, { id: `${i}`.padStart(8, '0'), by: 'AB', at: i });
		const after = tonightOf(plan, ticks);
		expect(after.lit - lit).toBe(at.step === 'lit' ? 1 : 0);
		expect(after.lights.filter(({ isLit }) => isLit)).toHaveLength(after.lit);
		expect(after.isBegun).toBe(true);
	}
	const done = tonightOf(plan, ticks);
	expect(done.next).toBeNull();
	expect(done.lights.map(({ id }) => id)).toEqual(alongRoom(plan.rows).map(({ id }) => id));
});
