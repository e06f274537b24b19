import { describe, expect, test } from 'vitest';
import { EIA485 } from '../../../shared/dmx/index.ts';
import { bundledRig } from '../../../shared/sheet/index.ts';
import { faultEvents, MENDS, placedFaults } from '../../../sim/fault/index.ts';
import { openFinder, openOutcomes } from '../../../sim/finder/index.ts';
import { openRig, why } from '../../../sim/rig/index.ts';

/** A line input gone bad, on a rig where the others on its line make it too many. */
describe('too many loads', () => {
	const long = bundledRig('long-line');
	const placed = { fault: 'too-many-loads', place: 'bar-7' } as const;

	test('makes everybody on the line jump about, and the trail says how many loads there are', () => {
		const rig = openRig(long, { faults: [placed] });
		rig.wait(3000);
		for (const { id } of long.fixtures) {
			expect(rig.look(id).light.flicker, id).toBe(true);
			expect(rig.look(id).lamps.data, id).toBe('flickering');
		}
		const trail = why(rig, 'bar-24').find(({ id }) => id === 'line.too-many-loads');
		expect(trail).toMatchObject({ facts: { loads: 24 + 30 } });
	});

	test.each([
		['two-universes', 'bar-1', false],
		['four-in-line', 'wash-2', true],
	] as const)('shows where the line carries more than 32 with it: %s', (id, place, shows) => {
		const sheet = bundledRig(id);
		const rig = openRig(sheet, { faults: [{ fault: 'too-many-loads', place }] });
		rig.wait(3000);
		const on = [...rig.gear.receptions.values()].filter(
			({ talker }) => JSON.stringify(talker) === JSON.stringify(rig.gear.receptions.get(place)?.talker),
		);
		expect(on.length + 30 > EIA485.mostUnitLoads).toBe(shows);
		expect(rig.look(place).light.flicker).toBe(shows);
	});

	test('sits on fixtures that hang on a line, and another fixture in its place clears it', () => {
		const places = placedFaults(long).flatMap(({ placed: each }) => (each.fault === placed.fault ? [each.place] : []));
		expect(places).toEqual(long.fixtures.map(({ id }) => id));
		expect(placedFaults(bundledRig('one-wash')).some(({ placed: each }) => each.fault === placed.fault)).toBe(false);
		const rig = openRig(long);
		rig.sendTogether(faultEvents(long, placed));
		rig.sendTogether(MENDS['swap-fixture'].events(long, placed.place));
		rig.wait(3000);
		for (const { id } of long.fixtures) expect(rig.look(id).light.flicker, id).toBe(false);
	});

	test('is among the suspects of a lamp that flickers, and ending the line tells on which side it is', () => {
		const complaint = { kind: 'flicker', fixture: 'bar-12' } as const;
		expect(
			openFinder(long, complaint)
				.suspects()
				.map(({ id }) => id),
		).toContain('too-many-loads@bar-7');
		const bench = openOutcomes(long, complaint);
		const at = bench.candidates.findIndex(
			({ faults }) => faults[0]?.fault === placed.fault && faults[0].place === 'bar-7',
		);
		const ended = (place: string) =>
			bench.outcomes[bench.checks.findIndex(({ id }) => id === `line-ended@${place}`)]?.[at];
		expect(ended('bar-10')).toBe('flickering');
		expect(ended('bar-4')).toBe('steady');
	});
});
