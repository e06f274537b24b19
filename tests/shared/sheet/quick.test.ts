import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BUNDLED, footprintOf, modeOf } from '../../../shared/profile/index.ts';
import {
	profileFor,
	QUICK_LINKS,
	QUICK_MOST,
	type QuickRig,
	quickSheet,
	readSheet,
} from '../../../shared/sheet/index.ts';
import { openRig, type Rig } from '../../../sim/rig/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../thrown.ts';

/** What a tech can answer: a leader and a second universe are offered from two fixtures on. */
const quickRigs: fc.Arbitrary<QuickRig> = fc
	.record({
		count: fc.integer({ min: 1, max: QUICK_MOST }),
		linked: fc.constantFrom(...QUICK_LINKS),
		profile: fc.constantFrom(...BUNDLED.map(({ id }) => id)),
	})
	.filter(({ count, linked }) => count > 1 || linked === 'desk' || linked === 'alone');

/** The rig as it stands once data has come and gone as long as it may. */
function settled(quick: QuickRig): Rig {
	const rig = openRig(quickSheet(quick));
	rig.wait(3000);
	return rig;
}

describe('a rig from three answers', () => {
	test('is a sheet like any other, with nothing left out for its reader to fill in', () => {
		fc.assert(
			fc.property(quickRigs, (quick) => {
				const sheet = quickSheet(quick);
				expect(readSheet(JSON.parse(JSON.stringify(sheet)))).toEqual(sheet);
				expect(sheet.fixtures).toHaveLength(quick.count);
			}),
			{ numRuns: runs(60) },
		);
	});

	test('stands lit, every fixture of it, steady and with no ultraviolet', () => {
		fc.assert(
			fc.property(quickRigs, (quick) => {
				const rig = settled(quick);
				for (const { id } of rig.sheet.fixtures) {
					const { whole, moving, flicker, flashes } = rig.look(id).light;
					expect(whole.brightness, id).toBeGreaterThan(0.1);
					expect({ ultraviolet: whole.ultraviolet, moving, flicker, flashes }).toEqual({
						ultraviolet: 0,
						moving: false,
						flicker: false,
						flashes: 0,
					});
				}
			}),
			{ numRuns: runs(40) },
		);
	});

	test('has clean data at every receiver that is linked, and no footprint over another', () => {
		fc.assert(
			fc.property(quickRigs, (quick) => {
				const rig = settled(quick);
				const heard = rig.sheet.fixtures.map(({ id }) => rig.gear.receptions.get(id)?.quality);
				if (quick.linked === 'alone') expect(new Set(heard)).toEqual(new Set(['nothing']));
				else expect(heard.slice(1)).toEqual(heard.slice(1).map(() => 'clean'));
				const taken = (rig.sheet.desk?.patch ?? []).flatMap(({ fixture, universe, address, mode }) => {
					const placed = rig.sheet.fixtures.find(({ id }) => id === fixture);
					const profile = profileFor(rig.sheet, placed?.profile ?? '');
					const { settings } = rig.gear.units.get(fixture)?.state.context ?? {};
					expect({ address: settings?.address, mode: settings?.mode }).toEqual({ address, mode });
					return Array.from({ length: footprintOf(modeOf(profile, mode)) }, (_, i) => `${universe}.${address + i}`);
				});
				expect(new Set(taken).size).toBe(taken.length);
			}),
			{ numRuns: runs(40) },
		);
	});

	test('behind a leader, all the others show what it shows', () => {
		for (const { id } of BUNDLED) {
			const rig = settled({ count: 3, linked: 'leader', profile: id });
			const [first, ...rest] = rig.sheet.fixtures.map((each) => rig.look(each.id).light.whole.words);
			expect(rest, id).toEqual([first, first]);
		}
	});

	test('on two universes, half hang on each, with addresses from 1 in both', () => {
		const { desk, cables, terminators } = quickSheet({ count: 5, linked: 'two-universes', profile: 'tallow-6' });
		expect(desk?.patch.map(({ universe, address }) => [universe, address])).toEqual([
			[1, 1],
			[1, 10],
			[1, 19],
			[2, 1],
			[2, 10],
		]);
		expect(cables.map(({ from, to }) => `${from} ${to}`)).toEqual([
			'desk:a wash-1:in',
			'wash-1:out wash-2:in',
			'wash-2:out wash-3:in',
			'desk:b wash-4:in',
			'wash-4:out wash-5:in',
		]);
		expect(terminators).toEqual(['wash-3:out', 'wash-5:out']);
	});

	test.each([
		[{ count: 0, linked: 'desk', profile: 'cobble' }, 'quick.count', 'from 1 to 24; found 0.'],
		[{ count: 25, linked: 'alone', profile: 'cobble' }, 'quick.count', 'from 1 to 24; found 25.'],
		[{ count: 1, linked: 'leader', profile: 'cobble' }, 'quick.count', 'from 2 to 24; found 1.'],
		[{ count: 1, linked: 'two-universes', profile: 'cobble' }, 'quick.count', 'from 2 to 24; found 1.'],
		[{ count: 2.5, linked: 'desk', profile: 'cobble' }, 'quick.count', 'found 2.5.'],
		[{ count: 2, linked: 'daisies', profile: 'cobble' }, 'quick.linked', 'one of: desk, leader, alone, two-universes.'],
		[{ count: 2, linked: 'desk', profile: 'nobody' }, 'quick.profile', "No bundled fixture is called 'nobody'."],
	])('is refused where the answers make none: %j', (quick, code, sentence) => {
		const error = thrownBy(() => quickSheet(quick as QuickRig));
		expect(error.code).toBe(code);
		expect(errorText(error)).toContain(sentence);
	});
});
