import { describe, expect, it } from 'vitest';
import { changeWords } from '#words/plan/index.ts';
import {
	changesOf,
	emptyPlan,
	type Plan,
	type PlanRow,
	packed,
	swapped,
	withRows,
} from '../../../../shared/plan/index.ts';
import { doingText } from '../../../../src/features/rig-sheet/changesView.ts';
import { nameOf } from '../../../../src/features/rig-sheet/view.ts';

const rows = [{ profile: 'tallow-6' }, { profile: 'picket-8', overhead: true }, { profile: 'cobble' }];
const plan: Plan = packed(withRows(emptyPlan('Barn'), rows, nameOf)).plan;
const [wash, bar] = plan.rows.map(({ id }) => id) as [string, string];
const { does } = changeWords;

const doing = (now: Plan, id: string, before = plan): string[] => {
	const change = changesOf(before, now).rows.find(({ row }) => row.id === id);
	if (!change) throw new Error('nothing to do there');
	return doingText(now, before, change);
};
const withRow = (id: string, part: Partial<PlanRow>, of = plan): Plan => ({
	...of,
	rows: of.rows.map((row) => (row.id === id ? { ...row, ...part } : row)),
});
const isSet = (line: string): boolean => line.startsWith(does.set('').slice(0, 3));

describe('what is done at one light', () => {
	it('is in a safe order where another one hangs in its place: down, set, up with the supply off, linked', () => {
		const lines = doing(swapped(plan, bar, 'cobble'), bar);
		expect(lines.map((line) => (isSet(line) ? 'set' : line))).toEqual([does.down, 'set', does.hang, does.link]);
		expect(does.hang).toMatch(/^On the mains: supply off and wall plug out first/);
	});

	it('begins with lowering it where hands go to what hangs and stays: for its panel, its circuit or its cables', () => {
		const set = doing(withRow(bar, { address: 400 }), bar);
		expect(set.map((line) => (isSet(line) ? 'set' : line))).toEqual([does.lower, 'set', does.hang, does.link]);
		expect(doing(withRow(bar, { circuit: 'B' }), bar)).toEqual([does.lower, does.hang, does.circuit('B')]);
		const fewer = { ...plan, rows: plan.rows.filter(({ id }) => id !== wash) };
		expect(doing(fewer, bar)).toEqual([does.lower, does.wires, does.hang, does.link]);
		expect(doing(withRow(wash, { address: 400 }), wash)).not.toContain(does.lower);
	});

	it('never leaves down what is lowered or moved overhead: up with clamp and second fixing, then fed or linked, last', () => {
		const mains = { place: { x: 3, y: 5, throw: 3, overhead: true } };
		const hung = withRow(wash, { ...mains, circuit: 'A' });
		for (const [now, before] of [
			[withRow(wash, { address: 400 }, hung), hung],
			[withRow(wash, { circuit: 'B' }, hung), hung],
			[withRow(wash, { circuit: 'B', address: 400 }, hung), hung],
			[withRow(wash, { place: { ...mains.place, x: 9 } }, hung), hung],
			[hung, plan],
		] as const) {
			const lines = doing(now, wash, before);
			expect(lines.at(-2)).toBe(does.hang);
			expect([does.link, does.circuit('A'), does.circuit('B')]).toContain(lines.at(-1));
		}
		// on its battery from now on, it is charged before it is out of reach
		expect(doing(withRow(wash, { circuit: '' }, hung), wash, hung)).toEqual([
			does.lower,
			does.battery,
			does.hang,
			does.link,
		]);
	});

	it('ends with linking it again where it moves', () => {
		const moved = doing(withRow(wash, { place: { x: 9, y: 0, throw: 3, overhead: false } }), wash);
		expect(moved.at(-1)).toBe(does.link);
	});

	it('charges what runs on its battery from now on, and asks for no electrician', () => {
		const fed = withRow(wash, { circuit: 'A' });
		expect(doing(plan, wash, fed)).toEqual([does.battery]);
		const old = plan.rows[2]?.id ?? '';
		expect(doing(plan, old, withRow(old, { circuit: 'A' }))).toEqual([does.noCircuit]);
	});
});
