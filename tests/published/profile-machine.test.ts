import { describe, expect, test } from 'vitest';
import { TIMING, upSwitches } from '../../shared/dmx/index.ts';
import { BUNDLED, bundledProfile, LOSSES, type Profile, readProfile } from '../../shared/profile/index.ts';
import { chargeOf, powerOf, signalOf } from '../../sim/fixture/index.ts';
import { withPut } from '../shared/json.ts';
import { Hands } from '../sim/fixture/kit.ts';

// The fixture machine against what is published of batteries, of lost data and of address switches.

const tallow = bundledProfile('tallow-6') as Profile;
const cobble = bundledProfile('cobble') as Profile;
const HOUR = 3_600_000;

/** Tallow with another battery in it. */
const withBattery = (wattHours: number): Profile =>
	readProfile(withPut(tallow, { 'power.battery.wattHours': wattHours }));

describe('a battery’s watt-hours are its volts times its ampere-hours (read: 49 CFR 171.8)', () => {
	test.each([
		{ volts: 11.1, ampereHours: 4.4, wattHours: 48.84, source: 'read: a battery seller’s example, given as 48.8' },
		{ volts: 12, ampereHours: 50, wattHours: 600, source: 'read: the same' },
		{ volts: 10.8, ampereHours: 2.5, wattHours: 27, source: 'read: another seller’s example' },
		{ volts: 3.7, ampereHours: 6, wattHours: 22.2, source: 'read: a dangerous goods adviser’s example' },
	])('$volts V and $ampereHours Ah are $wattHours Wh, and last as many hours at one ampere ($source)', (one) => {
		const { volts, ampereHours, wattHours } = one;
		expect(volts * ampereHours).toBeCloseTo(wattHours, 9);
		const profile = withBattery(wattHours);
		const hands = new Hands(profile, { live: false }).send({ type: 'draw.change', watts: volts });
		const ends = Math.round(ampereHours * HOUR);
		expect(powerOf(hands.wait(ends - 1).state)).toBe('battery');
		// a millisecond's grace: 48.84 / 11.1 is not exact in binary
		expect(powerOf(hands.wait(2).state)).toBe('flat');
	});

	test('twice the current is half the time, and at one ampere half the time is half the charge (recalculated)', () => {
		const profile = withBattery(48.84);
		const run = (amperes: number) =>
			new Hands(profile, { live: false }).send({ type: 'draw.change', watts: 11.1 * amperes });
		expect(powerOf(run(2).wait(2.2 * HOUR - 1).state)).toBe('battery');
		expect(powerOf(run(2).wait(2.2 * HOUR + 1).state)).toBe('flat');
		const half = run(1).wait(2.2 * HOUR);
		expect(chargeOf(half.profile, half.state, half.context.now)).toBeCloseTo(24.42, 9);
	});

	test('Tallow’s 148 Wh are 14.8 V at 10 Ah (recalculated; four cells of 3.7 V in a row: common practice, no source)', () => {
		expect(tallow.power.battery?.wattHours).toBeCloseTo(4 * 3.7 * 10, 9);
	});

	test('and lie between 101 and 160 Wh, so that spares fly only with the carrier’s leave (read; rules change)', () => {
		const wattHours = tallow.power.battery?.wattHours ?? 0;
		expect(wattHours > 100 && wattHours <= 160).toBe(true);
	});

	test('charging takes the energy over the charger’s power: 148 Wh at 45 W, 3 h 17 min 20 s (recalculated)', () => {
		const hands = new Hands(tallow, { on: false, wattHours: 0 });
		const full = () => chargeOf(hands.profile, hands.state, hands.context.now) === 148;
		hands.wait(((3 * 60 + 17) * 60 + 20) * 1000 - 1);
		expect(full()).toBe(false);
		hands.wait(1);
		expect(full()).toBe(true);
	});
});

describe('E1.11: loss of data', () => {
	test('is 1.25 s without a packet, the least a receiver may wait (from memory)', () => {
		expect(TIMING.lossOfDataMs).toBe(1250);
		for (const profile of BUNDLED) {
			const hands = new Hands(profile).send({ type: 'data.change', present: true });
			hands.send({ type: 'data.change', present: false }).wait(1249);
			expect(signalOf(hands.state)).toBe('overdue');
			expect(['holding', 'dark', 'running']).toContain(signalOf(hands.wait(1).state));
		}
	});

	test('is not what the slowest transmitter makes: break to break it may take up to a second (read)', () => {
		const slowest = TIMING.transmitter.longestPacketUs / 1000;
		const hands = new Hands(tallow).send({ type: 'data.change', present: true });
		for (let i = 0; i < 5; i++) {
			hands.send({ type: 'data.change', present: false }).wait(slowest);
			hands.send({ type: 'data.change', present: true });
			expect(signalOf(hands.state)).toBe('present');
		}
	});

	test('is answered by holding the last look, by going dark, or by light of the fixture’s own (read: makers’ manuals and a trade forum)', () => {
		expect(LOSSES).toEqual(['hold', 'dark', 'programme']);
	});
});

describe('DIP switches on a whole fixture', () => {
	test.each([
		{ address: 10, up: [2, 4], source: 'read: a maker’s appendix' },
		{ address: 24, up: [4, 5], source: 'read: the same' },
		{ address: 233, up: [1, 4, 6, 7, 8], source: 'read: the same' },
		{ address: 247, up: [1, 2, 3, 5, 6, 7, 8], source: 'read: a technicians’ chart' },
		{ address: 511, up: [1, 2, 3, 4, 5, 6, 7, 8, 9], source: 'recalculated: all nine weights' },
		{ address: 1, up: [], source: 'read: one of three customs for all down' },
	])('switches $up put up set $address ($source)', ({ address, up }) => {
		const hands = new Hands(cobble);
		for (const number of up) hands.send({ type: 'switch.flip', switch: number, up: true });
		expect([hands.settings.work, hands.settings.address]).toEqual(['line', address]);
		expect(upSwitches(hands.context.switches)).toEqual(up);
	});

	test('each of the nine alone sets its weight: 1 2 4 8 16 32 64 128 256 (read: a technicians’ chart)', () => {
		const alone = [1, 2, 3, 4, 5, 6, 7, 8, 9].map(
			(number) => new Hands(cobble).send({ type: 'switch.flip', switch: number, up: true }).settings.address,
		);
		expect(alone).toEqual([1, 2, 4, 8, 16, 32, 64, 128, 256]);
	});
});
