import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rigDrills } from '#words/drills/index.ts';
import { packed, planSheet } from '../../../shared/plan/index.ts';
import { bundledRig } from '../../../shared/sheet/index.ts';
import { markDrill, RIG_GOALS, rigTask, shortestWay } from '../../../sim/drill/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import { ownTaskText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { throughJson } from '../../shared/json.ts';
import { plans } from '../../shared/plan/plans.ts';

describe('a task on a rig of the crew’s own', () => {
	it('is done by its own fewest presses and not before, and then stands as the sheet had it', () => {
		fc.assert(
			fc.property(plans, fc.nat(1000), (drawn, seed) => {
				const sheet = planSheet(packed(drawn).plan);
				const made = rigTask(sheet, seed);
				if (!made) return;
				const { task } = made;
				const way = shortestWay(task);
				const mark = markDrill(task, way);
				expect([markDrill(task, []).done, mark.done, mark.presses]).toEqual([false, true, mark.fewest]);
				expect(throughJson(made)).toEqual(made);
				expect(rigTask(sheet, seed)).toEqual(made);
				// names, places and patch are those of the rig
				expect(task.sheet.fixtures.map(({ id, name, place }) => [id, name, place])).toEqual(
					sheet.fixtures.map(({ id, name, place }) => [id, name, place]),
				);
				expect([task.sheet.name, task.sheet.desk, task.sheet.cables]).toEqual([sheet.name, sheet.desk, sheet.cables]);
				const [right, end] = [openRig(sheet), openRig(task.sheet)];
				for (const event of way) event.type === 'clock.wait' ? end.wait(event.ms) : end.send(event);
				for (const { id } of sheet.fixtures) {
					const settings = right.gear.units.get(id)?.state.context.settings;
					const { mode, address, work } = settings ?? {};
					expect(end.gear.units.get(id)?.state.context.settings, id).toMatchObject(
						work === 'line' ? { mode, address, work } : { work },
					);
				}
				const text = ownTaskText(made, rigDrills.task);
				expect(text).not.toMatch(/[{}[\]]/);
				expect(text).toContain(sheet.fixtures.find(({ id }) => id === made.facts['fixture'])?.name);
			}),
			{ numRuns: runs(30) },
		);
	});

	it('asks for each of its goals where the rig has what that takes, and never for what it has not', () => {
		const sheet = bundledRig('four-in-line');
		expect(new Set([0, 1, 2, 3].map((seed) => rigTask(sheet, seed)?.goal))).toEqual(new Set(RIG_GOALS));
		const follows = bundledRig('leader-and-three');
		expect(new Set([0, 1, 2, 3].map((seed) => rigTask(follows, seed)?.goal))).toEqual(new Set(['listen']));
		const [one] = sheet.fixtures;
		const alone = { ...sheet, fixtures: one ? [one] : [], cables: [], terminators: [] };
		expect([0, 1, 2, 3].map((seed) => rigTask(alone, seed)?.goal)).not.toContain('swapped');
		expect(rigTask({ ...sheet, fixtures: [], cables: [], terminators: [], desk: null }, 0)).toBeNull();
	});
});
