import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batteryHours, chargeHours, mainsWatts, wattHoursLeft, wattsAt } from '../../../shared/power/index.ts';
import { bundledProfile, type Profile } from '../../../shared/profile/index.ts';
import { quickSheet } from '../../../shared/sheet/index.ts';
import { chargeOf, powerOf } from '../../../sim/fixture/index.ts';
import { wattsOf } from '../../../sim/light/index.ts';
import { openRig, type Rig } from '../../../sim/rig/index.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';
import { fixtures } from '../light/lab.ts';

// What a lesson reckons with a formula, and what the simulated battery does, are one figure: this holds them together.

const HOUR = 3_600_000;
const tallow = bundledProfile('tallow-6') as Profile;
const battery = tallow.power.battery as NonNullable<Profile['power']['battery']>;

/** A battery wash by itself, holding a colour at a brightness; its battery holds a share of what it did when new. */
function alone(held: string, level: number, health: number): Rig {
	const rig = openRig(quickSheet({ count: 1, linked: 'alone', profile: 'tallow-6' }));
	const fixture = rig.sheet.fixtures[0]?.id ?? '';
	rig.send({ type: 'mains.plug', fixture, into: 'none' });
	rig.send({ type: 'condition.become', fixture, change: { batteryHealth: health } });
	rig.send({ type: 'charge.become', fixture, charge: 1 });
	rig.send({ type: 'settings.become', fixture, change: { work: 'held', held, level, curve: 'straight', sleep: 0 } });
	return rig;
}

const unitOf = (rig: Rig) => {
	const [unit] = rig.gear.units.values();
	if (!unit) throw new Error('the rig is empty');
	return unit;
};
const energyIn = (rig: Rig) => chargeOf(unitOf(rig).profile, unitOf(rig).state, rig.now);

const look = fc.record({
	held: fc.constantFrom(...tallow.held),
	level: fc.integer({ min: 0, max: 100 }),
	health: between(0.3, 1),
});

describe('a battery at a held look', () => {
	it('lasts in the rig what the formula says, and holds in between what the formula says is left', () => {
		fc.assert(
			fc.property(look, between(0.05, 0.95), ({ held, level, health }, part) => {
				const outputs = Object.fromEntries(
					Object.entries(held.levels).map(([id, each]) => [id, (each / 255) * (level / 100)]),
				);
				const watts = wattsAt(tallow, outputs);
				const hours = batteryHours(battery.wattHours, watts, health);
				const rig = alone(held.id, level, health);
				rig.wait(Math.floor(hours * part * HOUR));
				expect(energyIn(rig)).toBeCloseTo(wattHoursLeft(battery.wattHours, watts, hours * part, health), 2);
				rig.wait(Math.floor(hours * HOUR * 0.9999) - rig.now);
				expect(powerOf(unitOf(rig).state)).toBe('battery');
				rig.wait(Math.ceil(hours * HOUR * 1.0001) - rig.now);
				expect(powerOf(unitOf(rig).state)).toBe('flat');
			}),
			{ numRuns: runs(25) },
		);
	});

	it('fills up in the rig in the time the formula says', () => {
		fc.assert(
			fc.property(between(0, 0.95), (charge) => {
				const rig = alone('white', 100, 1);
				const fixture = rig.sheet.fixtures[0]?.id ?? '';
				rig.send({ type: 'power.switch', fixture, on: false });
				rig.send({ type: 'charge.become', fixture, charge });
				rig.send({ type: 'mains.plug', fixture, into: 'wall' });
				const hours = chargeHours(battery.wattHours * (1 - charge), battery.chargeWatts);
				rig.wait(Math.floor((hours * HOUR) / 2));
				expect(energyIn(rig)).toBeCloseTo((battery.wattHours * (1 + charge)) / 2, 2);
				rig.wait(Math.ceil(hours * HOUR) - rig.now);
				expect(energyIn(rig)).toBe(battery.wattHours);
			}),
			{ numRuns: runs(20) },
		);
	});
});

describe('watts at a look', () => {
	it('are those the light works out, emitter by emitter', () => {
		fc.assert(
			fc.property(
				fc.constantFrom(...fixtures),
				fc.array(between(0, 1), { minLength: 12, maxLength: 12 }),
				(profile, shares) => {
					const { emitters, cells } = profile;
					const outputs = Float32Array.from(
						{ length: cells * emitters.length },
						(_, i) => shares[i % emitters.length] ?? 0,
					);
					const levels = Object.fromEntries(emitters.map(({ id }, i) => [id, Math.fround(shares[i] ?? 0)]));
					expect(wattsAt(profile, levels)).toBeCloseTo(wattsOf(profile, outputs), 4);
				},
			),
			{ numRuns: runs(100) },
		);
	});

	it('from the mains are at most the light at full and the charge', () => {
		expect(mainsWatts(tallow)).toBe(
			wattsOf(tallow, new Float32Array(tallow.emitters.length).fill(1)) + battery.chargeWatts,
		);
	});
});
