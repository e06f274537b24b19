import { describe, expect, it } from 'vitest';
import { quickSheet } from '../../../shared/sheet/index.ts';
import { makeDrill, makeTask, markDrill, shortestWay } from '../../../sim/drill/index.ts';
import { saidBy } from '../../shared/thrown.ts';

const sheet = quickSheet({ count: 2, linked: 'desk', profile: 'tallow-6' });
const goal = [{ is: 'setting', fixture: 'wash-1', key: 'address', value: 50 }] as const;
const task = makeTask({ scene: 'bench', rig: sheet, hands: ['panel', 'power'], goal });

describe('a task of one’s own', () => {
	it('is done by its shortest way, and by nothing less', () => {
		const way = shortestWay(task);
		expect(markDrill(task, []).done).toBe(false);
		const { done, presses, fewest } = markDrill(task, way);
		expect([done, presses]).toEqual([true, fewest]);
		expect(shortestWay(task, way)).toEqual([]);
	});

	it('keeps what was right: another setting spoilt is found', () => {
		const spoilt = [...shortestWay(task), { type: 'power.switch', fixture: 'wash-2', on: false } as const];
		expect(markDrill(task, spoilt).wrong.map(({ place, what }) => [place, what])).toEqual([['wash-2', 'power']]);
	});

	it('is plain JSON, and has its cautions looked up as a drill has', () => {
		expect(JSON.parse(JSON.stringify(task))).toEqual(task);
		const drill = makeDrill('address-keys', 1);
		const { scene, hands } = drill;
		const again = makeTask({ scene, hands, rig: drill.sheet, goal: drill.goal.slice(0, 1) });
		expect([again.cautions, again.disturbs]).toEqual([drill.cautions, drill.disturbs]);
		expect(again.goal).toEqual(drill.goal);
	});

	it('that asks for nothing new is refused with a sentence', () => {
		const value = sheet.fixtures[0]?.settings.address ?? 1;
		expect(saidBy(() => makeTask({ ...task, rig: sheet, goal: [{ ...goal[0], value }] }))).toMatch(
			/done before it begins/,
		);
	});
});
