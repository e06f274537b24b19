import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stockNames } from '#words/stock/index.ts';
import { BUNDLED, bundledProfile, type Mode, type Profile, readProfile } from '../../../shared/profile/index.ts';
import { blankEntry, readEntry, stockFixture } from '../../../shared/stock/index.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../thrown.ts';
import { chartsOf, STYLES } from './printed.ts';

const entryOf = (chart: string) => ({ ...blankEntry('own-1', 'Made up', 0), chart });
const made = (chart: string, label: Partial<ReturnType<typeof entryOf>> = {}) =>
	stockFixture({ ...entryOf(chart), ...label }, stockNames);
const layouts = readFileSync(new URL('./layouts.txt', import.meta.url), 'utf8')
	.split(/^=== .*\n/m)
	.slice(1)
	.map((part) => (part.split('\n--- reads')[0] ?? '').replaceAll('⇥', '\t'));
const printed = BUNDLED.flatMap((profile) =>
	Object.values(STYLES).map((print) => chartsOf(profile).map(print).join('\n\n')),
);

describe('a fixture made from a chart', () => {
	test('passes what every profile must, or says what stops it', () => {
		for (const chart of [...layouts, ...printed]) {
			const { profile, stops, chart: read } = made(chart);
			if (profile) expect(readProfile(JSON.parse(JSON.stringify(profile)))).toEqual(profile);
			else expect(stops.length > 0 || read.modes.length === 0).toBe(true);
		}
	});

	test('passes it from damaged charts too', () => {
		const damaged = fc
			.tuple(fc.constantFrom(...printed), fc.nat(), fc.nat({ max: 40 }), fc.string({ maxLength: 3 }))
			.map(([text, at, length, by]) => {
				const from = at % text.length;
				return text.slice(0, from) + by + text.slice(from + length);
			});
		fc.assert(
			fc.property(damaged, (chart) => {
				const { profile } = made(chart);
				if (profile) readProfile(profile);
			}),
			{ numRuns: runs(150) },
		);
	});

	/** What each slot of a mode drives, its bands by what they do. */
	const drivesOf = ({ slots }: Mode) =>
		slots.map(({ at, fine, drives }) => ({
			at,
			fine: drives.kind === 'intensity' ? fine : undefined,
			drives:
				drives.kind === 'emitter'
					? drives.emitter
					: drives.kind === 'bands'
						? drives.bands.map(({ from, to, effect }) => `${from}-${to} ${effect.do}`)
						: drives.kind,
		}));

	test('does what the fixture does whose chart it is', () => {
		const tallow = bundledProfile('tallow-6') as Profile;
		const { profile } = made(
			chartsOf(tallow)
				.map(STYLES['run on'] as (typeof STYLES)[string])
				.join('\n\n'),
		);
		expect(profile?.modes.map((mode) => drivesOf(mode).map(({ drives }) => drives))).toMatchInlineSnapshot(`
			[
			  [
			    "white",
			    "amber",
			    "red",
			    "green",
			    "blue",
			    "ultraviolet",
			  ],
			  [
			    "intensity",
			    [
			      "0-13 nothing",
			      "14-50 programme",
			      "51-117 programme",
			      "118-140 programme",
			      "141-172 strobe",
			      "173-255 programme",
			    ],
			    "speed",
			    "red",
			    "green",
			    "blue",
			    "white",
			    "amber",
			    "ultraviolet",
			  ],
			  [
			    "intensity",
			    [
			      "0-20 open",
			      "21-33 dark",
			      "34-239 strobe",
			      "240-255 open",
			    ],
			    "white",
			    "amber",
			    "red",
			    "green",
			    "blue",
			    "ultraviolet",
			    [
			      "0-9 nothing",
			      "10-31 nothing",
			      "32-54 held",
			      "55-90 held",
			      "91-133 held",
			      "134-199 held",
			      "200-255 held",
			    ],
			    [
			      "0-16 nothing",
			      "17-44 programme",
			      "45-101 programme",
			      "102-122 programme",
			      "123-150 strobe",
			      "151-171 programme",
			      "172-203 programme",
			      "204-230 programme",
			      "231-255 programme",
			    ],
			    "speed",
			  ],
			]
		`);
	});

	test('says of every figure whether it was given', () => {
		const chart = '1 Dimmer\n2 Red\n3 Strobe 0-9 off 10-255 1-12 Hz\n4 Zoom';
		const assumed = made(chart)
			.figures.filter(({ is }) => is === 'assumed')
			.map(({ code }) => code);
		const given = made(chart, { beam: 18, watts: 60, lumens: 900, feed: 'battery', wattHours: 99 });
		expect(assumed).toEqual(expect.arrayContaining(['beam', 'watts', 'lumens', 'feed', 'link', 'panel', 'not-acted']));
		const isGiven = given.figures.filter(({ is }) => is === 'given').map(({ code }) => code);
		expect(isGiven.toSorted()).toEqual(['beam', 'feed', 'lumens', 'strobe', 'watt-hours', 'watts']);
		expect(given.profile?.optics.beam).toBe(18);
		expect(given.profile?.power.battery?.wattHours).toBe(99);
		expect(Math.round(given.profile?.emitters.reduce((sum, { lumens }) => sum + lumens, 0) ?? 0)).toBe(900);
	});

	test('fills what the chart leaves out with nothing, and says so', () => {
		const { profile, figures } = made('1 Red\n3 Strobe 0-9 off 20-255 on');
		expect(profile && drivesOf(profile.modes[0] as Mode).map(({ drives }) => drives)).toEqual([
			'red',
			['0-255 nothing'],
			['0-9 open', '10-19 nothing', '20-255 strobe'],
		]);
		expect(figures.map(({ code }) => code)).toEqual(expect.arrayContaining(['gap', 'slot-missing']));
	});

	test('carries ultraviolet wherever the chart speaks of it', () => {
		for (const chart of ['1 Red\n2 UV', '1 Red\n2 Colours 0-127 none 128-255 ultraviolet', '1 Red UV'])
			expect(made(chart).profile?.emitters.some(({ ultraviolet }) => ultraviolet)).toBe(true);
	});

	test('has another id when anything in it changes, and the same when nothing does', () => {
		const id = made('1 Red').profile?.id;
		expect(made('1 Red').profile?.id).toBe(id);
		expect(made('1 Red\n2 Green').profile?.id).not.toBe(id);
		expect(made('1 Red', { beam: 12 }).profile?.id).not.toBe(id);
	});
});

test('an entry from outside is held to its shape', () => {
	expect(readEntry(entryOf('1 Red'))).toEqual(entryOf('1 Red'));
	expect(thrownBy(() => readEntry({ ...entryOf(''), beam: 0 }))).toMatchObject({ code: 'stock.shape', path: 'beam' });
	expect(thrownBy(() => readEntry([])).code).toBe('stock.shape');
});
