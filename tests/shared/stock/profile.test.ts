import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stockNames } from '#words/stock/index.ts';
import {
	BUNDLED,
	bundledProfile,
	isStandIn,
	type Mode,
	type Profile,
	readProfile,
} from '../../../shared/profile/index.ts';
import { blankEntry, printMode, readEntry, stockFixture } from '../../../shared/stock/index.ts';
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

	test('has its cells as one line says them, the same as with each written out', () => {
		const names = fc.shuffledSubarray(['Red', 'Green', 'Blue', 'Amber', 'White', 'Dimmer'], { minLength: 1 });
		const before = fc.shuffledSubarray(['Shutter', 'Speed', 'Colours'], { maxLength: 2 });
		const say = fc.constantFrom<(from: number, to: number, cells: number) => string>(
			(from, to, cells) => `${from}-${to} for each of ${cells} cells`,
			(from, to, cells) => `CH ${from} to ${to}: the same for each of the ${cells} cells`,
			(from, to, cells) => `Channels ${from}–${to} × ${cells} cells`,
		);
		fc.assert(
			fc.property(
				before,
				names,
				fc.integer({ min: 2, max: 64 }),
				say,
				fc.boolean(),
				(heads, each, cells, said, isFirst) => {
					const first = heads.length + 1;
					const lines = (all: readonly string[], from: number) => all.map((name, i) => `${from + i}  ${name}`);
					const line = said(first, first + each.length - 1, cells);
					const once = [...(isFirst ? [line] : []), ...lines([...heads, ...each], 1), ...(isFirst ? [] : [line])];
					const out = Array.from({ length: cells }, (_, cell) => each.map((name) => `${name} cell ${cell + 1}`)).flat();
					const whole = made(lines([...heads, ...out], 1).join('\n'));
					const short = made(once.join('\n'));
					expect(short.chart.marks.map(({ code }) => code)).toEqual(whole.chart.marks.map(({ code }) => code));
					expect(short.profile).toEqual(whole.profile);
					expect(short.profile?.cells).toBe(cells);
					// what is copied as lines reads back to the same
					const copied = made(short.chart.modes.map(printMode).join('\n\n'));
					expect(copied.profile?.modes).toEqual(short.profile?.modes);
				},
			),
			{ numRuns: runs(120) },
		);
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

	/** What the one slot of a chart drives, and what is noted of it. */
	const acts = (chart: string) => {
		const { profile, figures } = made(chart);
		const noted = figures.filter(({ facts }) => 'slot' in facts).map(({ code }) => code);
		return { drives: drivesOf(profile?.modes[0] as Mode)[0]?.drives, noted };
	};

	test.each([
		'Strobe speed',
		'Master strobe',
		'Red strobe',
		'Dimmer mode',
		'Dimmer curve',
		'White flash',
		'Master presets',
	])('a slot named %s is not plain light, and it is noted that nothing acts it out', (name) => {
		for (const values of ['', ' 0-255'])
			expect(acts(`1 ${name}${values}`)).toEqual({ drives: ['0-255 nothing'], noted: ['not-acted'] });
	});

	// symptom: `red dimmer` dimmed all of the light. cause: its name was looked at for a dimmer first
	test.each([
		['Red dimmer', 'red'],
		['UV intensity', 'ultraviolet'],
		['Warm white brightness', 'warm-white'],
		['Dimmer amber', 'amber'],
		['Master dimmer', 'intensity'],
		['Dimmer', 'intensity'],
	])('a slot named %s drives %s', (name, drives) => {
		for (const values of ['', ' 0-255 dark to full']) expect(acts(`1 ${name}${values}`).drives).toBe(drives);
	});

	test('a slot of a strobe’s speed with words for it strobes', () => {
		expect(acts('1 Strobe speed 0-255 slow to fast')).toEqual({ drives: ['0-255 strobe'], noted: ['strobe'] });
	});

	test.each(['Strobe, rate depends on ch 5', 'Channel 6 decides the programme', 'Manual flash'])(
		'a band that leaves it to something else is noted: %s',
		(words) => {
			expect(acts(`1 Function 0-127 none 128-255 ${words}`)).toEqual({
				drives: ['0-127 nothing', '128-255 nothing'],
				noted: ['not-acted'],
			});
		},
	);

	test.each([
		['1-40 Hz', [1, 30], [[40, 30]]],
		['0.05-12 Hz', [0.1, 12], [[0.05, 0.1]]],
		[
			'0 to 50 Hz',
			[0.1, 30],
			[
				[0, 0.1],
				[50, 30],
			],
		],
		['1-12 Hz', [1, 12], []],
	])(
		'a strobe at %s goes by the chart as far as the bench can flash, and what is past that is noted',
		(rate, [slow, fast], past) => {
			const { profile, figures } = made(`1 Strobe 0-9 off 10-255 strobe ${rate}`);
			const drives = profile?.modes[0]?.slots[0]?.drives;
			expect(drives?.kind === 'bands' && drives.bands[1]?.effect).toEqual({ do: 'strobe', slow, fast });
			expect(figures.find(({ code }) => code === 'strobe')).toMatchObject({ is: 'given', facts: { slow, fast } });
			const clamped = figures.flatMap(({ code, facts }) =>
				code === 'strobe-clamped' ? [[facts.found, facts.rate]] : [],
			);
			expect(clamped).toEqual(past);
		},
	);

	test('carries ultraviolet wherever the name or the chart speaks of it', () => {
		const band = (words: string) => `1 Red\n2 Colours 0-127 none 128-255 ${words}`;
		const charts = ['1 Red\n2 UV', '1 Red\n2 UV1', '1 UVA', '1 Red UV', '1 Red\n2 UV strobe'];
		for (const chart of [...charts, ...['ultraviolet', 'Ultra-violet', 'Black light', 'UV2', 'blacklight'].map(band)])
			expect(
				made(chart).profile?.emitters.some(({ ultraviolet }) => ultraviolet),
				chart,
			).toBe(true);
		expect(made('1 Red', { name: 'UV bar' }).profile?.emitters).toContainEqual(
			expect.objectContaining({ ultraviolet: true }),
		);
		expect(made('1 Red\n2 Louvre').profile?.emitters.every(({ ultraviolet }) => !ultraviolet)).toBe(true);
	});

	test('has a stand-in panel', () => {
		const { profile } = made('1 Red');
		expect(profile && isStandIn(profile.panel)).toBe(true);
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
