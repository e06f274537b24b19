import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import {
	BUNDLED,
	bundledProfile,
	checkValue,
	footprintOf,
	type KeyedPanel,
	type LeafItem,
	modeOf,
	type Profile,
	readProfile,
	SETTING_KEYS,
	type SettingKey,
	settingsSchema,
	slotAt,
} from '../../../shared/profile/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { throughJson } from '../json.ts';
import { thrownBy } from '../thrown.ts';
import { idsOf } from './ids.ts';

const named = BUNDLED.map((profile): [string, Profile] => [profile.id, profile]);

/** Every leaf of a keyed panel's menu, in order. */
const leavesOf = (panel: KeyedPanel): LeafItem[] =>
	panel.menu.flatMap((item) => (item.kind === 'menu' ? item.items : [item]));

/** Every setting a panel can make, whatever kind it is. */
function settable(profile: Profile): { key: SettingKey; value: unknown }[] {
	const { panel } = profile;
	if (panel.kind !== 'dip') {
		return leavesOf(panel).flatMap((item) => {
			if (item.kind === 'choice') return item.options.map(({ value }) => ({ key: item.setting, value }));
			if (item.kind !== 'number') return [];
			return Array.from({ length: item.most - item.least + 1 }, (_, i) => ({
				key: item.setting,
				value: item.least + i,
			}));
		});
	}
	return [
		...panel.slides.flatMap(({ positions }) => positions),
		...panel.fields.flatMap(({ choices }) => choices),
	].flatMap(({ sets }) => Object.entries(sets).map(([key, value]) => ({ key: key as SettingKey, value })));
}

/** The values of one setting that a panel can make. */
const settableFor = (profile: Profile, key: SettingKey) =>
	new Set(settable(profile).flatMap((one) => (one.key === key ? [one.value] : [])));

/** What the bands of a profile's modes start or call up. */
const banded = (profile: Profile) =>
	profile.modes
		.flatMap(({ slots }) => slots)
		.flatMap(({ drives }) => (drives.kind === 'bands' ? drives.bands : []))
		.map(({ effect }) => effect);

// Ids are permanent: saved progress, links and sheets are keyed by them. What changes here must be added, never renamed.
describe('the ids of the bundled profiles', () => {
	test.each<[string, string]>([
		[
			'tallow-6',
			`
tallow-6
emitters: red green blue white amber ultraviolet
held: candle white amber red rose violet blue sea green ultraviolet
programmes: steps drift breathe flashes ear-step ear-swell ear-flash ear-run
mode short: 1=white 2=amber 3=red 4=green 5=blue 6=ultraviolet
mode middle: 1=intensity 2=function 3=speed 4=red 5=green 6=blue 7=white 8=amber 9=ultraviolet
  function: 0-13=colours 14-50=change 51-117=fade 118-140=pulse 141-172=strobe 173-255=sound
mode long: 1+2=intensity 3=shutter 4=white 5=amber 6=red 7=green 8=blue 9=ultraviolet 10=held 11=function 12=speed
  shutter: 0-20=open 21-33=closed 34-239=strobe 240-255=open-again
  held: 0-9=colours 10-31=candle 32-54=amber 55-90=rose 91-133=violet 134-199=sea 200-255=white
  function: 0-16=colours 17-44=change 45-101=fade 102-122=pulse 123-150=strobe 151-171=ear-step 172-203=ear-swell 204-230=ear-flash 231-255=ear-run
menu source
  work: work held programme line follow
  lead: lead off on
menu data
  address: address 1 to 512 and round
  mode: mode short middle long
  loss: loss hold dark programme
menu own
  held: held candle white amber red rose violet blue sea green ultraviolet
  level: level 0 to 100
  strobe: strobe 0 to 20
  programme: programme steps drift breathe flashes ear-step ear-swell ear-flash ear-run
  speed: speed 1 to 100
  hearing: hearing 0 to 100
menu remote
  sensor: sensor open shut
  code: code 1 to 4 and round
menu keep
  charge: shows charge
  hours: shows hours
  curve: curve straight square soft
  limit: limit 10 to 100
  lock: lock off on
  sleep: sleep 0 10 30 60
  defaults: does defaults`,
		],
		[
			'picket-8',
			`
picket-8
emitters: red green blue warm-white
held: warm red gold green ice blue plum
programmes: march tide swell blink ear-step ear-swell ear-flash ear-run
mode whole: 1=blue 2=green 3=red 4=warm-white
mode whole-plus: 1=shutter 2=blue 3=green 4=red 5=warm-white 6+7=intensity 8=function 9=speed
  shutter: 0-7=closed 8-63=open 64-211=strobe 212-255=open-again
  function: 0-9=colours 10-60=fade 61-86=change 87-149=pulse 150-177=run 178-204=flash 205-255=gold
mode halves: 1=blue-1-4 2=green-1-4 3=red-1-4 4=warm-white-1-4 5=blue-5-8 6=green-5-8 7=red-5-8 8=warm-white-5-8 9+10=intensity 11=shutter
  shutter: 0-7=closed 8-63=open 64-211=strobe 212-255=open-again
mode cells: 1=shutter 2+3=intensity 4=blue-1-1 5=green-1-1 6=red-1-1 7=warm-white-1-1 8=blue-2-2 9=green-2-2 10=red-2-2 11=warm-white-2-2 12=blue-3-3 13=green-3-3 14=red-3-3 15=warm-white-3-3 16=blue-4-4 17=green-4-4 18=red-4-4 19=warm-white-4-4 20=blue-5-5 21=green-5-5 22=red-5-5 23=warm-white-5-5 24=blue-6-6 25=green-6-6 26=red-6-6 27=warm-white-6-6 28=blue-7-7 29=green-7-7 30=red-7-7 31=warm-white-7-7 32=blue-8-8 33=green-8-8 34=red-8-8 35=warm-white-8-8
  shutter: 0-7=closed 8-63=open 64-211=strobe 212-255=open-again
address: address 1 to 512
mode: mode whole whole-plus halves cells
menu source
  work: work line follow held programme
  lead: lead off on
  loss: loss hold dark programme
menu alone
  held: held warm red gold green ice blue plum
  programme: programme march tide swell blink ear-step ear-swell ear-flash ear-run
  speed: speed 1 to 100
  level: level 0 to 100
  strobe: strobe 0 to 20
  hearing: hearing 0 to 100
menu house
  curve: curve straight square soft
  limit: limit 10 to 100
  sleep: sleep 0 20 60
  lock: lock off on
  signal: shows signal
  footprint: shows footprint
  defaults: does defaults`,
		],
		[
			'cobble',
			`
cobble
emitters: red green blue
held: red orange yellow green cyan blue magenta white
programmes: hop slide pant snap ear-step ear-swell ear-flash
mode three: 1=green 2=red 3=blue
mode five: 1=function 2=intensity 3=red 4=green 5=blue
  function: 0-40=colours 41-66=change 67-129=fade 130-155=pulse 156-238=strobe 239-255=sound
mode seven: 1=red 2=green 3=blue 4+5=intensity 6=function 7=speed
  function: 0-21=colours 22-73=fade 74-99=pulse 100-148=change 149-180=strobe 181-218=step 219-255=swell
slide mode: three five seven
slide loss: dark hold programme
slide curve: straight square
switches 1 2 3 4 what: held+red held+orange held+yellow held+green held+cyan held+blue held+magenta held+white programme+hop programme+slide programme+pant programme+snap programme+ear-step programme+ear-swell programme+ear-flash follow
switches 5 6 7 speed: 1 15 29 43 57 71 85 100
switches 8 hearing: 40 90
switches 9 lead: off on`,
		],
		[
			'thimble-4',
			`
thimble-4
emitters: red green blue amber
held: amber red pink blue cyan green white
programmes: walk melt heave burst ear-step ear-flash
mode four: 1=amber 2=blue 3=green 4=red
mode six: 1=shutter 2=red 3=green 4=blue 5=amber 6=intensity
  shutter: 0-11=closed 12-189=strobe 190-255=open
mode nine: 1=red 2=amber 3=green 4=blue 5+6=intensity 7=shutter 8=function 9=speed
  shutter: 0-31=open 32-44=closed 45-226=strobe 227-255=open-again
  function: 0-23=colours 24-57=pulse 58-118=change 119-161=fade 162-207=step 208-255=flash
address: address 1 to 512 and round
mode: mode four six nine
loss: loss dark hold programme
curve: curve straight square
follow: shows signal
held: held amber red pink blue cyan green white
lead: lead off on
level: level 0 to 100
strobe: strobe 0 to 20
programme: programme walk melt heave burst ear-step ear-flash
speed: speed 1 to 100
hearing: hearing 0 to 100`,
		],
	])('%s', (id, lines) => {
		expect(idsOf(bundledProfile(id) as Profile).split('\n')).toEqual(lines.trim().split('\n'));
	});

	test('are these, in this order', () => {
		expect(BUNDLED.map(({ id }) => id)).toEqual(['tallow-6', 'picket-8', 'cobble', 'thimble-4']);
	});

	test('of settings are these, in this order', () => {
		expect(SETTING_KEYS.join(' ')).toBe(
			'work lead address mode held programme speed level strobe loss curve limit sensor code hearing lock sleep',
		);
	});
});

test('how many slots each mode takes', () => {
	const table = BUNDLED.flatMap((profile) => profile.modes.map((mode) => [profile.id, mode.id, footprintOf(mode)]));
	expect(table).toEqual([
		['tallow-6', 'short', 6],
		['tallow-6', 'middle', 9],
		['tallow-6', 'long', 12],
		['picket-8', 'whole', 4],
		['picket-8', 'whole-plus', 9],
		['picket-8', 'halves', 11],
		['picket-8', 'cells', 35],
		['cobble', 'three', 3],
		['cobble', 'five', 5],
		['cobble', 'seven', 7],
		['thimble-4', 'four', 4],
		['thimble-4', 'six', 6],
		['thimble-4', 'nine', 9],
	]);
});

describe.each(named)('%s', (_, profile) => {
	test('reads, and comes back from JSON as it was', () => {
		expect(readProfile(profile)).toEqual(profile);
		expect(readProfile(throughJson(profile))).toEqual(profile);
		// nothing that JSON would lose: no function, no undefined, no symbol
		expect(throughJson(profile)).toEqual(profile);
	});

	test('has several modes, no two of one footprint, and names that tell their slots', () => {
		const footprints = profile.modes.map(footprintOf);
		expect(footprints.length).toBeGreaterThanOrEqual(3);
		expect(new Set(footprints).size).toBe(footprints.length);
		for (const mode of profile.modes) expect(mode.name).toContain(`${footprintOf(mode)} slots`);
	});

	test('has a 16-bit slot, and function bands of uneven widths', () => {
		const slots = profile.modes.flatMap((mode) => mode.slots);
		expect(slots.some(({ fine }) => fine !== undefined)).toBe(true);
		const functions = slots.filter(({ id }) => id === 'function');
		expect(functions.length).toBeGreaterThan(0);
		for (const { drives } of functions) {
			const widths = drives.kind === 'bands' ? drives.bands.map(({ from, to }) => to - from + 1) : [];
			expect(widths.length).toBeGreaterThanOrEqual(5);
			expect(new Set(widths).size).toBeGreaterThanOrEqual(5);
			expect(widths.reduce((sum, width) => sum + width, 0)).toBe(256);
		}
	});

	test('every slot of every mode answers to its number, and none past the end', () => {
		for (const mode of profile.modes) {
			const last = footprintOf(mode);
			const found = Array.from({ length: last }, (_, i) => slotAt(mode, i + 1));
			expect(found.every((one) => one !== null)).toBe(true);
			for (const slot of mode.slots) {
				expect(slotAt(mode, slot.at)).toEqual({ slot, part: slot.fine === undefined ? 'whole' : 'coarse' });
				if (slot.fine !== undefined) expect(slotAt(mode, slot.fine)).toEqual({ slot, part: 'fine' });
			}
			expect([slotAt(mode, 0), slotAt(mode, last + 1)]).toEqual([null, null]);
		}
	});

	test('every cell has every colour in a mode that splits the cells', () => {
		for (const mode of profile.modes) {
			const cells = new Map<number, Set<string>>();
			for (const slot of mode.slots) {
				if (slot.drives.kind !== 'emitter') continue;
				for (const cell of slot.cells ?? Array.from({ length: profile.cells }, (_, i) => i + 1)) {
					const colours = cells.get(cell) ?? new Set();
					expect(colours.has(slot.drives.emitter), `${mode.id}: ${slot.drives.emitter} of cell ${cell} twice`).toBe(
						false,
					);
					cells.set(cell, colours.add(slot.drives.emitter));
				}
			}
			expect(cells.size).toBe(profile.cells);
			for (const colours of cells.values()) expect(colours.size).toBe(profile.emitters.length);
		}
	});

	test('whatever its panel can set passes the schema and fits the fixture', () => {
		const all = settable(profile);
		expect(all.length).toBeGreaterThan(30);
		for (const { key, value } of all) {
			expect(v.is(settingsSchema.entries[key], value), `${key} ${String(value)}`).toBe(true);
			expect(() => checkValue(profile, key, value, '')).not.toThrow();
		}
		for (const [key, value] of Object.entries(profile.defaults)) checkValue(profile, key as SettingKey, value, key);
	});

	test('its panel reaches every mode, every way to lose data, and more than one dim curve', () => {
		expect([...settableFor(profile, 'mode')].sort()).toEqual(profile.modes.map(({ id }) => id).sort());
		expect([...settableFor(profile, 'loss')].sort()).toEqual(['dark', 'hold', 'programme']);
		expect(settableFor(profile, 'curve').size).toBeGreaterThanOrEqual(2);
	});

	test('every held colour and every programme can be had, by the panel or by a band', () => {
		const effects = banded(profile);
		for (const { id } of profile.held)
			expect(settableFor(profile, 'held').has(id) || effects.some((it) => it.do === 'held' && it.held === id), id).toBe(
				true,
			);
		for (const { id } of profile.programmes)
			expect(
				settableFor(profile, 'programme').has(id) || effects.some((it) => it.do === 'programme' && it.programme === id),
				id,
			).toBe(true);
	});

	test('every emitter has a colour slot of its own in some mode, and shines in some held colour', () => {
		for (const { id } of profile.emitters) {
			expect(
				profile.modes.some(({ slots }) =>
					slots.some(({ drives }) => drives.kind === 'emitter' && drives.emitter === id),
				),
			).toBe(true);
			expect(profile.held.some(({ levels }) => (levels[id] ?? 0) > 0)).toBe(true);
		}
	});

	test('a mode that is not there is refused with those that are', () => {
		const error = thrownBy(() => modeOf(profile, 'nowhere'));
		expect([error.code, error.path, errorText(error)]).toEqual([
			'mode.unknown',
			'mode',
			`${profile.name} has no mode 'nowhere'. Its modes: ${profile.modes.map(({ id }) => id).join(', ')}.`,
		]);
		for (const mode of profile.modes) expect(modeOf(profile, mode.id)).toBe(mode);
	});
});

test('between them they have what crews meet', () => {
	const [tallow, picket, cobble] = BUNDLED as readonly [Profile, Profile, Profile];
	expect([tallow.panel.kind, picket.panel.kind, cobble.panel.kind]).toEqual(['code', 'text', 'dip']);
	expect([tallow, picket, cobble].map(({ power }) => [power.battery !== null, power.link])).toEqual([
		[true, false],
		[false, true],
		[false, true],
	]);
	expect([tallow, picket, cobble].map(({ cells, emitters }) => [cells, emitters.length])).toEqual([
		[1, 6],
		[8, 4],
		[1, 3],
	]);
	expect(BUNDLED.map(({ sensor, microphone, follows }) => [sensor, microphone, follows])).toEqual([
		[true, true, 'slot-one'],
		[false, true, 'own-address'],
		[false, true, 'slot-one'],
		[false, true, 'own-address'],
	]);
	// every kind of programme and of sound answer, on the two with keys
	for (const { programmes } of [tallow, picket]) {
		expect(new Set(programmes.map(({ kind }) => kind)).size).toBe(5);
		expect(new Set(programmes.flatMap(({ answer }) => answer ?? [])).size).toBe(4);
	}
});
