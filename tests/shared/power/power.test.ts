import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	amps,
	batteryHours,
	CAUTIOUS_SHARE,
	chainWatts,
	chargeHours,
	fullWatts,
	mainsWatts,
	mostOnChain,
	wattHours,
	wattHoursLeft,
	wattsAt,
} from '../../../shared/power/index.ts';
import { BUNDLED, bundledProfile, type Profile } from '../../../shared/profile/index.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';
import { saidBy, thrownBy } from '../thrown.ts';

const some = (min: number, max: number) => between(min, max);
const share = some(0.01, 1);
const tallow = bundledProfile('tallow-6') as Profile;

describe('a battery', () => {
	it('is empty at the end of its hours, half full halfway, and never less than empty', () => {
		fc.assert(
			fc.property(some(1, 2000), some(0.5, 500), share, (energy, watts, part) => {
				const hours = batteryHours(energy, watts, part);
				expect(wattHoursLeft(energy, watts, hours, part)).toBeCloseTo(0, 6);
				expect(wattHoursLeft(energy, watts, hours / 2, part)).toBeCloseTo((energy * part) / 2, 6);
				expect(wattHoursLeft(energy, watts, hours * 3, part)).toBe(0);
			}),
			{ numRuns: runs(200) },
		);
	});

	it('takes as long to fill as the charger needs for what is missing', () => {
		fc.assert(
			fc.property(some(0, 2000), some(1, 500), share, (missing, watts, part) => {
				expect(chargeHours(missing, watts, part) * watts * part).toBeCloseTo(missing, 6);
			}),
			{ numRuns: runs(100) },
		);
	});

	it('is planned on with a reserve', () => {
		expect(CAUTIOUS_SHARE).toBeGreaterThan(0.5);
		expect(CAUTIOUS_SHARE).toBeLessThan(1);
	});

	it.each([
		['no draw', () => batteryHours(148, 0), 'watts', 'A draw in watts is a number over 0; found 0.'],
		['less than no energy', () => batteryHours(-1, 10), 'energy', 'An energy in watt-hours is 0 or more; found -1.'],
		['no share', () => batteryHours(148, 10, 0), 'share', 'A share of the energy is a number over 0; found 0.'],
		['too big a share', () => batteryHours(148, 10, 80), 'share', 'A share of the energy is a number from 0 to 1'],
		['hours that are none', () => wattHoursLeft(148, 10, Number.NaN), 'hours', 'A time in hours is 0 or more'],
		['a dead charger', () => chargeHours(10, 0), 'chargeWatts', 'A charging power in watts is a number over 0'],
		['no volts', () => wattHours(0, 10), 'volts', 'A voltage is a number over 0; found 0.'],
		['endless ampere-hours', () => wattHours(12, Number.POSITIVE_INFINITY), 'ampHours', 'A charge in ampere-hours'],
	])('with %s is refused', (_, act, path, sentence) => {
		expect(thrownBy(act)).toMatchObject({ code: 'power.range', path });
		expect(saidBy(act)).toContain(sentence);
	});
});

describe('what a look draws', () => {
	it.each(BUNDLED)('$id: its idle draw in the dark, the sum of all at full, straight in between', (profile) => {
		expect(wattsAt(profile, {})).toBe(profile.power.idleWatts);
		const sum = profile.emitters.reduce((watts, each) => watts + each.watts, profile.power.idleWatts);
		expect(fullWatts(profile)).toBe(sum);
		const half = Object.fromEntries(profile.emitters.map(({ id }) => [id, 0.5]));
		expect(wattsAt(profile, half)).toBeCloseTo((profile.power.idleWatts + sum) / 2, 9);
	});

	it('is refused for an emitter that is not there, or an output that is none', () => {
		expect(thrownBy(() => wattsAt(tallow, { lime: 1 }))).toMatchObject({ code: 'power.emitter', path: 'lime' });
		expect(saidBy(() => wattsAt(tallow, { lime: 1 }))).toContain('Its emitters: red, green, blue');
		expect(thrownBy(() => wattsAt(tallow, { red: 255 }))).toMatchObject({ code: 'power.range', path: 'red' });
	});
});

describe('a chain on the mains', () => {
	it('takes the sum of its fixtures, and as many fit as stay within the current', () => {
		fc.assert(
			fc.property(
				some(1, 500),
				some(1, 32),
				fc.constantFrom(110, 120, 230, 240),
				share,
				(watts, most, volts, factor) => {
					const fit = mostOnChain(watts, most, volts, factor);
					const chain = (count: number) => amps(chainWatts(new Array<number>(count).fill(watts)), volts, factor);
					expect(chain(fit)).toBeLessThanOrEqual(most * (1 + 1e-8));
					expect(chain(fit + 1)).toBeGreaterThan(most);
				},
			),
			{ numRuns: runs(200) },
		);
	});

	it('counts a battery that charges while it is lit', () => {
		expect(mainsWatts(tallow)).toBe(fullWatts(tallow) + 45);
		const picket = bundledProfile('picket-8') as Profile;
		expect(mainsWatts(picket)).toBe(fullWatts(picket));
	});

	it('of none takes nothing; nonsense is refused with its place', () => {
		expect(chainWatts([])).toBe(0);
		expect(thrownBy(() => chainWatts([10, -1]))).toMatchObject({ code: 'power.range', path: '[1]' });
		expect(thrownBy(() => amps(10, 230, 1.2))).toMatchObject({ path: 'powerFactor' });
		expect(thrownBy(() => mostOnChain(10, 0, 230))).toMatchObject({ path: 'most' });
		expect(thrownBy(() => mostOnChain(0, 10, 230))).toMatchObject({ path: 'watts' });
	});
});
