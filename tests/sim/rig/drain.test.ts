import { describe, expect, test } from 'vitest';
import { batteryHours, wattsAt } from '../../../shared/power/index.ts';
import { bundledProfile, type Profile } from '../../../shared/profile/index.ts';
import { bundledRig } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { openRig, type Rig } from '../../../sim/rig/index.ts';

// Symptom: a desk whose levels drained no battery left every test green. Cause: a battery was only ever tried with the fixture holding a
// colour by itself. So here one is run down by the desk and by a leader, whatever moves: levels, master, output, patch, colour.

const HOUR = 3_600_000;
const tallow = bundledProfile('tallow-6') as Profile;
const full = tallow.power.battery?.wattHours ?? 0;

/** Watts that a fixture draws by what is seen of it: emitter by emitter, with no curve or limit between. */
function wattsSeen(rig: Rig, fixture: string): number {
	const [cell] = rig.look(fixture).light.cells;
	return wattsAt(tallow, Object.fromEntries(tallow.emitters.map(({ id }, e) => [id, cell?.levels[e] ?? 0])));
}

const isUp = (rig: Rig, fixture: string): boolean => rig.look(fixture).lamps.power === 'lit';

/** Hours until a fixture goes out, found by looking: to a hundredth. */
function hoursLeft(rig: Rig, fixture: string): number {
	let hours = 0;
	for (let step = 64; step > 0.005; step /= 2) {
		const later = rig.fork();
		later.wait(Math.round((hours + step) * HOUR));
		if (isUp(later, fixture)) hours += step;
	}
	return hours;
}

const address = 19;
const level = (slot: number, to: number): RigEvent => ({
	type: 'desk.level',
	universe: 1,
	slot: address + slot - 1,
	level: to,
});

/** Four washes on a desk, on full batteries, with the desk sending nothing but to the third. */
function fed(...events: readonly RigEvent[]): Rig {
	const rig = openRig(bundledRig('four-in-line'));
	for (const { id: fixture } of rig.sheet.fixtures) rig.send({ type: 'charge.become', fixture, charge: 1 });
	rig.send({ type: 'desk.recall', levels: [] });
	rig.wait(1000);
	for (const event of events) rig.send(event);
	rig.wait(1000);
	return rig;
}

describe('a battery driven by the desk', () => {
	const slots = tallow.modes.find(({ id }) => id === 'middle')?.slots ?? [];
	const at = (wanted: string): number =>
		slots.find(({ drives }) => drives.kind === wanted || (drives.kind === 'emitter' && drives.emitter === wanted))
			?.at ?? 0;
	const white = [level(at('intensity'), 255), level(at('white'), 255)];

	test('lasts its idle hours while nothing is sent, as the maker of the sheet would reckon', () => {
		const rig = fed();
		expect(wattsSeen(rig, 'wash-3')).toBe(tallow.power.idleWatts);
		expect(hoursLeft(rig, 'wash-3')).toBeCloseTo(batteryHours(full, tallow.power.idleWatts), 1);
	});

	test.each<[string, readonly RigEvent[]]>([
		['levels', white],
		['two colours', [...white, level(at('red'), 255)]],
		['half a level', [level(at('intensity'), 128), level(at('white'), 255)]],
		['the master at half', [...white, { type: 'desk.master', level: 128 }]],
	])('lasts what the light it is seen to give draws: by %s', (_, events) => {
		const rig = fed(...events);
		const watts = wattsSeen(rig, 'wash-3');
		expect(watts).toBeGreaterThan(tallow.power.idleWatts + 1);
		expect(hoursLeft(rig, 'wash-3')).toBeCloseTo(batteryHours(full, watts), 1);
		// the one beside it, which is sent nothing, goes on
		expect(hoursLeft(rig, 'wash-2')).toBeGreaterThan(hoursLeft(rig, 'wash-3') + 1);
	});

	test('is spared from the moment the desk lets go, and drawn on from the moment it comes back', () => {
		const recalled: RigEvent = {
			type: 'desk.recall',
			levels: [at('intensity'), at('white')].map((slot) => ({ universe: 1, slot: address + slot - 1, level: 255 })),
		};
		const lit = fed(...white);
		const hours = hoursLeft(lit, 'wash-3');
		const idle = hoursLeft(fed(), 'wash-3');
		for (const [off, on] of [
			[
				{ type: 'desk.master', level: 0 },
				{ type: 'desk.master', level: 255 },
			],
			[{ type: 'desk.recall', levels: [] }, recalled],
		] as const satisfies readonly (readonly [RigEvent, RigEvent])[]) {
			const rig = lit.fork();
			rig.wait(Math.round((hours / 2) * HOUR));
			rig.send(off);
			// half of it is left, at the idle draw
			expect(hoursLeft(rig, 'wash-3')).toBeCloseTo(idle / 2, 0);
			rig.send(on);
			expect(hoursLeft(rig, 'wash-3')).toBeCloseTo(hours / 2, 1);
		}
	});

	test('is drawn on by the levels of the universe its line carries, and by no other', () => {
		const rig = fed(...white);
		const hours = hoursLeft(rig, 'wash-3');
		rig.send({ type: 'desk.level', universe: 2, slot: address + at('red') - 1, level: 255 });
		expect(hoursLeft(rig, 'wash-3')).toBeCloseTo(hours, 1);
		// another universe on the output: all that was sent is sent no more
		rig.send({ type: 'desk.universe', output: 'a', universe: 2 });
		expect(hoursLeft(rig, 'wash-3')).toBeGreaterThan(hours + 1);
	});
});

describe('a battery driven by a leader', () => {
	/** The row with its leader holding a colour; the follower last in line is looked at. */
	function led(held: string, brightness: number): Rig {
		const rig = openRig(bundledRig('leader-and-three'));
		for (const { id: fixture } of rig.sheet.fixtures) rig.send({ type: 'charge.become', fixture, charge: 1 });
		rig.send({ type: 'settings.become', fixture: 'wash-1', change: { held, level: brightness, curve: 'straight' } });
		rig.wait(1000);
		return rig;
	}

	test.each([
		['red', 100],
		['white', 100],
		['white', 40],
	])('lasts what its own light draws, in the leader’s colour: %s at %i', (held, brightness) => {
		const rig = led(held, brightness);
		for (const fixture of ['wash-2', 'wash-4']) {
			const watts = wattsSeen(rig, fixture);
			expect(watts).toBeGreaterThan(tallow.power.idleWatts + 0.5);
			expect(hoursLeft(rig, fixture)).toBeCloseTo(batteryHours(full, watts), 1);
		}
	});

	test('lasts longer as the leader’s light goes down, and draws on for the look it holds once the leader is off', () => {
		const rig = led('white', 100);
		const hours = hoursLeft(rig, 'wash-4');
		rig.send({ type: 'settings.become', fixture: 'wash-1', change: { level: 20 } });
		expect(hoursLeft(rig, 'wash-4')).toBeGreaterThan(hours * 1.5);
		rig.wait(1000);
		const watts = wattsSeen(rig, 'wash-4');
		rig.send({ type: 'power.switch', fixture: 'wash-1', on: false });
		rig.wait(3000);
		expect(wattsSeen(rig, 'wash-4')).toBeCloseTo(watts, 6);
		expect(hoursLeft(rig, 'wash-4')).toBeCloseTo(batteryHours(full, watts), 1);
	});
});
