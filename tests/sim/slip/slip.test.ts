import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyPlan, type Plan, type PlanRow, packed, settingsOf, withRows } from '../../../shared/plan/index.ts';
import { BUNDLED, bundledProfile } from '../../../shared/profile/index.ts';
import { fewestPresses, HAND } from '../../../sim/drill/index.ts';
import { displayOf, type PanelDisplay } from '../../../sim/fixture/index.ts';
import { openRig, type Rig } from '../../../sim/rig/index.ts';
import { panelAtRest, type SlipStep, slipFor, slipTask } from '../../../sim/slip/index.ts';
import { runs } from '../../runs.ts';
import { nameOf, plans } from '../../shared/plan/plans.ts';

/** Plans whose panels show something: as they come from the case, or as somebody left them. */
const shownPlans: fc.Arbitrary<Plan> = plans.chain((drawn) => {
	const { plan } = packed({ ...drawn, rows: drawn.rows.slice(0, 3) });
	const shows = fc.record({ mode: fc.nat(9), address: fc.integer({ min: 1, max: 500 }), is: fc.boolean() });
	return fc.array(shows, { minLength: plan.rows.length, maxLength: plan.rows.length }).map((all) => ({
		...plan,
		rows: plan.rows.map((row, i): PlanRow => {
			const { mode = 0, address = 1, is = false } = all[i] ?? {};
			const modes = bundledProfile(row.profile)?.modes ?? [];
			return { ...row, shows: is ? { mode: modes[mode % modes.length]?.id ?? row.mode, address } : null };
		}),
	}));
});

const linesOf = (display: PanelDisplay): string[] =>
	display.kind === 'keyed' ? display.lines.map((line) => line.trim()).filter((line) => line !== '') : [];

/**
 * Does what a slip says, as a person would who has only the slip: looks at the display, lets go a moment after it shows what it is
 * to show, and taps on to what stands on the slip.
 * @param lateMs how long after, within a hand's scatter
 */
function press(rig: Rig, row: string, steps: readonly SlipStep[], lateMs: number): void {
	// the display alone: a whole look works out the light as well
	const shown = (): string => {
		const unit = rig.gear.units.get(row);
		return unit ? linesOf(displayOf(unit.profile, unit.state, rig.now)).join('|') : '';
	};
	for (const step of steps) {
		if (step.do === 'power') rig.send({ type: 'power.switch', fixture: row, on: true });
		else if (step.do === 'switches')
			for (const n of step.move)
				rig.send({ type: 'switch.flip', fixture: row, switch: n, up: step.up[n - 1] === true });
		else if (step.do === 'slide') {
			const panel = rig.gear.units.get(row)?.profile.panel;
			const positions = panel?.kind === 'dip' ? panel.slides.find(({ title }) => title === step.title)?.positions : [];
			const to = (positions ?? []).findIndex(({ label }) => label === step.to);
			rig.send({ type: 'slide.move', fixture: row, slide: step.slide, to });
		} else if (step.do === 'tap') {
			for (let n = 0; n < step.times; n++) rig.send({ type: 'key.tap', fixture: row, key: step.key });
			expect(shown()).toBe(step.shows.join('|'));
		} else if (step.do === 'unlock' || step.do === 'long') {
			rig.send({ type: 'key.down', fixture: row, key: step.key });
			rig.wait(step.seconds * 1000);
			rig.send({ type: 'key.up', fixture: row, key: step.key });
			expect(shown()).toBe(step.shows.join('|'));
		} else if (step.do === 'hold') {
			rig.send({ type: 'key.down', fixture: row, key: step.key });
			// it is held for something
			expect(shown()).not.toBe(step.until.join('|'));
			for (let ms = 0; ms < 10_000 && shown() !== step.until.join('|'); ms += 20) rig.wait(20);
			rig.wait(lateMs);
			rig.send({ type: 'key.up', fixture: row, key: step.key });
			const wanted = step.shows.join('|');
			const wraps = rig.gear.units.get(row)?.profile.id === 'tallow-6';
			const number = (text: string): number => Number(/(\d+)\D*$/.exec(text)?.[1]);
			for (let n = 0; n < 512 && shown() !== wanted; n++) {
				// whichever way round is nearer, where it goes round at all
				const ahead = number(wanted) - number(shown());
				rig.send({
					type: 'key.tap',
					fixture: row,
					key: ahead > 0 === (!wraps || Math.abs(ahead) < 256) ? 'up' : 'down',
				});
			}
			expect(shown()).toBe(wanted);
		}
	}
}

describe('a prep slip', () => {
	test('pressed on the simulated rig, gives the plan, and leaves every other setting as it was', () => {
		fc.assert(
			fc.property(shownPlans, fc.integer({ min: HAND.soonestMs, max: HAND.latestMs }), (plan, lateMs) => {
				for (const row of plan.rows) {
					const slip = slipFor(plan, row);
					if (!slip) throw new Error(`no slip for ${row.id}`);
					const task = slipTask(plan, row);
					const rig = openRig(task.sheet);
					const before = rig.gear.units.get(row.id)?.state.context.settings;
					press(rig, row.id, slip.steps, lateMs);
					const after = rig.gear.units.get(row.id)?.state.context.settings;
					const asked = settingsOf(plan, row);
					expect(after).toMatchObject(asked);
					if (bundledProfile(row.profile)?.panel.kind !== 'dip') expect(after).toEqual({ ...before, ...asked });
				}
			}),
			{ numRuns: runs(200) },
		);
	});

	test('takes as few presses as the fewest there are', () => {
		fc.assert(
			fc.property(shownPlans, (plan) => {
				for (const row of plan.rows) {
					const task = slipTask(plan, row);
					expect(slipFor(plan, row)?.presses).toBe(fewestPresses(task, openRig(task.sheet)));
				}
			}),
			{ numRuns: runs(30) },
		);
	});

	test('of a fixture that stands as planned has no steps', () => {
		const plan = withRows(emptyPlan('Done'), [{ profile: 'picket-8' }], nameOf);
		const set = { ...plan, loss: 'dark' as const };
		expect(set.rows.map((row) => slipFor(set, row)?.steps)).toEqual([[]]);
	});

	test('says what a panel has no way to', () => {
		const plan = withRows(
			{ ...emptyPlan('Locked'), lock: 'on' },
			BUNDLED.map(({ id }) => ({ profile: id })),
			nameOf,
		);
		const cannot = plan.rows.map((row) => [row.profile, slipFor(plan, row)?.cannot]);
		expect(Object.fromEntries(cannot)).toMatchObject({ cobble: ['lock'] });
		const far = withRows(emptyPlan('Far'), [{ profile: 'cobble', address: 512 }], nameOf);
		expect(far.rows.map((row) => slipFor(far, row)?.cannot)).toEqual([['address']]);
		const two = [{ profile: 'thimble-4' }, { profile: 'thimble-4' }];
		const led = withRows({ ...emptyPlan('Led'), source: 'leader' }, two, nameOf);
		expect(led.rows.map((row) => slipFor(led, row)?.cannot)).toEqual([['work'], ['work']]);
	});
});

describe('a panel at rest', () => {
	const plan = packed(
		withRows(
			emptyPlan('p'),
			BUNDLED.map(({ id }) => ({ profile: id, universe: 1, address: 37 })),
			nameOf,
		),
	).plan;
	const rowOf = (profile: string): PlanRow => {
		const row = plan.rows.find((each) => each.profile === profile);
		if (!row) throw new Error(profile);
		return row;
	};

	test.each(BUNDLED.map(({ id }) => id))('%s tells its start address only where that can be read off it', (id) => {
		const { lines, up, tellsAddress } = panelAtRest(plan, rowOf(id));
		const isThere = lines.some((line) => Number(/\d+/.exec(line)?.[0]) === rowOf(id).address);
		expect({ lines, tellsAddress }).toEqual({ lines, tellsAddress: up !== null || isThere });
	});

	test('and the four-character one that rests on its source tells none', () => {
		expect(panelAtRest(plan, rowOf('tallow-6'))).toMatchObject({ up: null, tellsAddress: false });
	});
});
