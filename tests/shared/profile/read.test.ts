import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { InputError } from '../../../shared/error/index.ts';
import { BUNDLED, bundledProfile, checkValue, type Profile, readProfile } from '../../../shared/profile/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { at, changed, changes, throughJson, withPut } from '../json.ts';
import { thrownBy } from '../thrown.ts';

const [tallow, picket, cobble, thimble] = BUNDLED as readonly [Profile, Profile, Profile, Profile];

type Case = [
	what: string,
	profile: Profile,
	puts: Record<string, unknown>,
	code: string,
	path: string,
	sentence: string,
];

/** Each refusal, as code, path and sentence. */
function refuses(cases: Case[]): void {
	test.each(cases)('%s', (_, profile, puts, code, path, sentence) => {
		const error = thrownBy(() => readProfile(withPut(profile, puts)));
		expect({ code: error.code, path: error.path, sentence: errorText(error) }).toEqual({ code, path, sentence });
	});
}

// the function slot of Tallow's middle mode: 0-13, 14-50, 51-117, 118-140, 141-172, 173-255
const bands = 'modes[1].slots[1].drives.bands';

describe('bands that do not cover 0 to 255 once each are refused where they fail', () => {
	refuses([
		[
			'a gap',
			tallow,
			{ [`${bands}[2].from`]: 55 },
			'profile.band',
			`${bands}[2]`,
			"Bands of 'function': 51 to 54 belong to no band: close the gap.",
		],
		[
			'a gap of one value',
			tallow,
			{ [`${bands}[1].to`]: 49 },
			'profile.band',
			`${bands}[2]`,
			"Bands of 'function': 50 belongs to no band: close the gap.",
		],
		[
			'an overlap',
			tallow,
			{ [`${bands}[3].from`]: 110 },
			'profile.band',
			`${bands}[3]`,
			"Bands of 'function': Bands 3 and 4 both hold 110 to 117: each value belongs to one band.",
		],
		[
			'past 255',
			tallow,
			{ [`${bands}[5].to`]: 256 },
			'profile.band',
			`${bands}[5]`,
			"Bands of 'function': Band 6 (173 to 256) runs past 255: values are 0 to 255.",
		],
		[
			'below 0',
			tallow,
			{ [`${bands}[0].from`]: -3 },
			'profile.band',
			`${bands}[0]`,
			"Bands of 'function': Band 1 (-3 to 13) starts below 0: values are 0 to 255.",
		],
		[
			'reversed',
			tallow,
			{ [`${bands}[1].from`]: 50, [`${bands}[1].to`]: 14 },
			'profile.band',
			`${bands}[1]`,
			"Bands of 'function': Band 2 (50 to 14) starts above its end: swap the two.",
		],
		[
			'the top left out',
			tallow,
			{ [`${bands}[5].to`]: 254 },
			'profile.band',
			`${bands}[5]`,
			"Bands of 'function': 255 belongs to no band: close the gap.",
		],
		[
			'a strobe that slows down across its band',
			cobble,
			{ 'modes[1].slots[0].drives.bands[4].effect.slow': 13 },
			'profile.band',
			'modes[1].slots[0].drives.bands[4].effect',
			"'strobe' strobes from 13 to 12 a second: the rate rises across a band.",
		],
	]);
});

describe('charts whose slots do not fit each other are refused', () => {
	refuses([
		[
			'two channels on one number',
			tallow,
			{ 'modes[0].slots[2].at': 2 },
			'profile.slot',
			'modes[0].slots[2].at',
			"Channel 2 is taken twice: by 'amber' and by 'red'. Give one of them another number.",
		],
		[
			'a number left out',
			tallow,
			{ 'modes[0].slots[5].at': 9 },
			'profile.slot',
			'modes[0]',
			'Channel 6 is left out, though the chart runs to 9. Name it, or close the gap.',
		],
		[
			'a chart that doesn’t start at 1',
			cobble,
			{ 'modes[0].slots[0].at': 4 },
			'profile.slot',
			'modes[0]',
			'Channel 1 is left out, though the chart runs to 4. Name it, or close the gap.',
		],
		[
			'a fine half on a taken number',
			tallow,
			{ 'modes[2].slots[0].fine': 3 },
			'profile.slot',
			'modes[2].slots[1].at',
			"Channel 3 is taken twice: by 'intensity' and by 'shutter'. Give one of them another number.",
		],
		[
			'a fine half on its own coarse half',
			picket,
			{ 'modes[3].slots[1].fine': 2 },
			'profile.slot',
			'modes[3].slots[1].fine',
			"Channel 2 is taken twice: by 'intensity' and by 'intensity'. Give one of them another number.",
		],
		[
			'a fine half on a channel of bands',
			tallow,
			{ 'modes[0].slots[5]': { ...tallow.modes[1]?.slots[1], at: 6, fine: 7 } },
			'profile.slot',
			'modes[0].slots[5].fine',
			"A channel of bands has no fine half; take 'function' down to one channel.",
		],
		[
			'a cell the fixture doesn’t have',
			picket,
			{ 'modes[2].slots[7].cells[3]': 9 },
			'profile.slot',
			'modes[2].slots[7].cells[3]',
			"The fixture has 8 cells; 'warm-white-5-8' asks for cell 9.",
		],
	]);
});

describe('names of what is not there are refused', () => {
	const emitters = 'Known: red, green, blue, white, amber, ultraviolet.';
	const held = 'Known: candle, white, amber, red, rose, violet, blue, sea, green, ultraviolet.';
	const programmes = 'Known: steps, drift, breathe, flashes, ear-step, ear-swell, ear-flash, ear-run.';
	refuses([
		[
			'an emitter, in a channel',
			tallow,
			{ 'modes[0].slots[0].drives.emitter': 'lime' },
			'profile.reference',
			'modes[0].slots[0].drives.emitter',
			`'lime' isn’t an emitter of this fixture. ${emitters}`,
		],
		[
			'an emitter, in a static colour',
			tallow,
			{ 'held[1].levels': { lime: 9 } },
			'profile.reference',
			'held[1].levels.lime',
			`'lime' isn’t an emitter of this fixture. ${emitters}`,
		],
		[
			'a static colour, in a programme',
			tallow,
			{ 'programmes[0].colours[2]': 'mauve' },
			'profile.reference',
			'programmes[0].colours[2]',
			`'mauve' isn’t a static colour of this fixture. ${held}`,
		],
		[
			'a static colour, in a band',
			tallow,
			{ 'modes[2].slots[8].drives.bands[3].effect.held': 'mauve' },
			'profile.reference',
			'modes[2].slots[8].drives.bands[3].effect.held',
			`'mauve' isn’t a static colour of this fixture. ${held}`,
		],
		[
			'a programme, in a band',
			tallow,
			{ [`${bands}[1].effect.programme`]: 'waltz' },
			'profile.reference',
			`${bands}[1].effect.programme`,
			`'waltz' isn’t a programme of this fixture. ${programmes}`,
		],
		[
			'a mode, on the panel',
			picket,
			{ 'panel.menu[1].options[2].value': 'quarters' },
			'profile.reference',
			'panel.menu[1].options[2].value',
			"'quarters' isn’t a mode of this fixture. Known: whole, whole-plus, halves, cells.",
		],
		[
			'a static colour, on the panel',
			tallow,
			{ 'panel.menu[2].items[0].options[1].value': 'mauve' },
			'profile.reference',
			'panel.menu[2].items[0].options[1].value',
			`'mauve' isn’t a static colour of this fixture. ${held}`,
		],
		[
			'a programme, on the panel',
			tallow,
			{ 'panel.menu[2].items[3].options[0].value': 'waltz' },
			'profile.reference',
			'panel.menu[2].items[3].options[0].value',
			`'waltz' isn’t a programme of this fixture. ${programmes}`,
		],
		[
			'a mode, on a slide',
			cobble,
			{ 'panel.slides[0].positions[1].sets.mode': 'nine' },
			'profile.reference',
			'panel.slides[0].positions[1].sets.mode',
			"'nine' isn’t a mode of this fixture. Known: three, five, seven.",
		],
		[
			'a programme, on the switches',
			cobble,
			{ 'panel.fields[0].choices[9].sets.programme': 'waltz' },
			'profile.reference',
			'panel.fields[0].choices[9].sets.programme',
			"'waltz' isn’t a programme of this fixture. Known: hop, slide, pant, snap, ear-step, ear-swell, ear-flash.",
		],
		[
			'a value the setting doesn’t take',
			tallow,
			{ 'panel.menu[1].items[2].options[0].value': 'blink' },
			'profile.reference',
			'panel.menu[1].items[2].options[0].value',
			'\'loss\' can’t be "blink". Give a value the setting takes.',
		],
		[
			'a number the setting doesn’t take',
			picket,
			{ 'panel.menu[0].most': 513 },
			'profile.reference',
			'panel.menu[0]',
			"'address' can’t be 513. Give a value the setting takes.",
		],
		[
			'a number for a setting of words',
			picket,
			{ 'panel.menu[0].setting': 'loss' },
			'profile.reference',
			'panel.menu[0]',
			"'loss' can’t be 1. Give a value the setting takes.",
		],
		[
			'a sound programme with no answer',
			tallow,
			{ 'programmes[5].answer': undefined },
			'profile.reference',
			'programmes[5].answer',
			"A sound programme names how it answers, and no other does; 'ear-swell' is a sound programme.",
		],
		[
			'an answer where no sound is heard',
			tallow,
			{ 'programmes[1].answer': 'flash' },
			'profile.reference',
			'programmes[1].answer',
			"A sound programme names how it answers, and no other does; 'drift' is a fade programme.",
		],
		[
			'the default mode',
			cobble,
			{ 'defaults.mode': 'nine' },
			'profile.default',
			'defaults.mode',
			"'nine' isn’t a mode of this fixture. Known: three, five, seven.",
		],
		[
			'the default static colour',
			tallow,
			{ 'defaults.held': 'mauve' },
			'profile.default',
			'defaults.held',
			`'mauve' isn’t a static colour of this fixture. ${held}`,
		],
		[
			'the default programme',
			tallow,
			{ 'defaults.programme': 'waltz' },
			'profile.default',
			'defaults.programme',
			`'waltz' isn’t a programme of this fixture. ${programmes}`,
		],
	]);
});

describe('ids used twice are refused at the second', () => {
	const twice = (id: string) => `Two of them are called '${id}'. Ids are used once.`;
	refuses([
		['emitters', tallow, { 'emitters[4].id': 'red' }, 'profile.id', 'emitters[4].id', twice('red')],
		['static colours', picket, { 'held[6].id': 'warm' }, 'profile.id', 'held[6].id', twice('warm')],
		['programmes', cobble, { 'programmes[3].id': 'hop' }, 'profile.id', 'programmes[3].id', twice('hop')],
		['modes', cobble, { 'modes[1].id': 'three' }, 'profile.id', 'modes[1].id', twice('three')],
		[
			'channels of a mode',
			picket,
			{ 'modes[0].slots[3].id': 'blue' },
			'profile.id',
			'modes[0].slots[3].id',
			twice('blue'),
		],
		['bands of a channel', tallow, { [`${bands}[5].id`]: 'fade' }, 'profile.id', `${bands}[5].id`, twice('fade')],
		['slides', cobble, { 'panel.slides[2].id': 'loss' }, 'profile.id', 'panel.slides[2].id', twice('loss')],
		['fields', cobble, { 'panel.fields[3].id': 'what' }, 'profile.id', 'panel.fields[3].id', twice('what')],
		[
			'menu items, in another menu',
			tallow,
			{ 'panel.menu[4].items[2].id': 'address' },
			'profile.id',
			'panel.menu[4].items[2].id',
			"Two menu items are called 'address'. Ids are used once.",
		],
		[
			'a menu and an item in it',
			tallow,
			{ 'panel.menu[0].items[0].id': 'source' },
			'profile.id',
			'panel.menu[0].items[0].id',
			"Two menu items are called 'source'. Ids are used once.",
		],
	]);
});

describe('panels that could not be worked are refused', () => {
	const four = (text: string) => `'${text}' doesn’t fit a display of 4 characters.`;
	refuses([
		[
			"a menu's label",
			tallow,
			{ 'panel.menu[0].label': 'SOURCE' },
			'profile.panel',
			'panel.menu[0].label',
			four('SOURCE'),
		],
		[
			"an item's label",
			tallow,
			{ 'panel.menu[1].items[0].label': 'START' },
			'profile.panel',
			'panel.menu[1].items[0].label',
			four('START'),
		],
		[
			"an option's label",
			tallow,
			{ 'panel.menu[1].items[1].options[2].label': 'SL 12' },
			'profile.panel',
			'panel.menu[1].items[1].options[2].label',
			four('SL 12'),
		],
		[
			"an action's question",
			tallow,
			{ 'panel.menu[4].items[6].ask': 'SURE?' },
			'profile.panel',
			'panel.menu[4].items[6].ask',
			four('SURE?'),
		],
		[
			'a number with its unit',
			tallow,
			{ 'panel.menu[2].items[1].unit': ' %' },
			'profile.panel',
			'panel.menu[2].items[1]',
			four('100 %'),
		],
		[
			'an option that fits only without the arrow of editing',
			picket,
			{ 'panel.menu[2].items[2].options[0].label': 'Keep last colour' },
			'profile.panel',
			'panel.menu[2].items[2].options[0].label',
			"'Keep last colour' doesn’t fit a display of 14 characters.",
		],
		[
			'a display too narrow for what is on it',
			picket,
			{ 'panel.columns': 12 },
			'profile.panel',
			'panel.menu[0].label',
			"'Start address' doesn’t fit a display of 12 characters.",
		],
		[
			'a key twice, and so one missing',
			tallow,
			{ 'panel.keys[3]': 'back' },
			'profile.panel',
			'panel.keys',
			"The panel lists its 'back' key twice. List each key once.",
		],
		[
			'a tree with no key that goes in',
			tallow,
			{ 'panel.keys': ['back', 'down', 'up'] },
			'profile.panel',
			'panel.keys',
			"The panel has no 'set' key, and its law needs one. With no law of its own, its four keys are back, down, up and set.",
		],
		[
			'a flat panel with no key that goes on',
			thimble,
			{ 'panel.keys': ['down', 'up'], 'panel.law.opens': 'up' },
			'profile.panel',
			'panel.keys',
			"The panel has no 'page' key, and its law needs one. With no law of its own, its four keys are back, down, up and set.",
		],
		[
			'a value that does nothing, on a panel without menus',
			thimble,
			{ 'panel.menu[1].idle': [{ at: 0, label: '3' }] },
			'profile.panel',
			'panel.menu[1].idle[0]',
			"'mode' can’t have a value that does nothing at place 0. On a tree’s list each has a place of its own; a flat panel has none.",
		],
		[
			'a law that no simulated panel plays',
			thimble,
			{ 'panel.law.stores': 'enter' },
			'profile.panel',
			'panel.law.stores',
			"No panel here with the law 'flat' works like that. Change its 'stores': a flat panel acts as it scrolls and stores by itself.",
		],
		[
			'a function of a flat panel that leaves the light open',
			thimble,
			{ 'panel.menu[3]': { kind: 'info', id: 'signal', label: 'F', title: 'Signal', shows: 'signal' } },
			'profile.panel',
			'panel.menu[3]',
			"'signal' doesn’t say who decides the light. On a flat panel each function says it, in 'work', and there are no menus.",
		],
		[
			'an item of a tree that decides the light',
			picket,
			{ 'panel.menu[0].work': 'line' },
			'profile.panel',
			'panel.menu[0]',
			"'address' says who decides the light, in 'work'. Only a flat panel’s functions do.",
		],
		[
			'a number from high to low',
			tallow,
			{ 'panel.menu[1].items[0].least': 512, 'panel.menu[1].items[0].most': 1 },
			'profile.panel',
			'panel.menu[1].items[0]',
			"'address' runs from 512 to 1: the first must be the smaller.",
		],
		[
			'an option twice, which Up would never get past',
			tallow,
			{ 'panel.menu[0].items[0].options[2].value': 'held' },
			'profile.panel',
			'panel.menu[0].items[0].options[2].value',
			'\'work\' lists "held" twice, so Up would never get past it. List it once.',
		],
		[
			'a default that no option shows',
			tallow,
			{ 'defaults.sleep': 45 },
			'profile.default',
			'defaults.sleep',
			"The panel's 'sleep' can’t show the default 45. It shows: 0, 10, 30, 60.",
		],
		[
			'a default outside its number',
			tallow,
			{ 'panel.menu[2].items[4].least': 51 },
			'profile.default',
			'defaults.speed',
			"The panel's 'speed' can’t show the default 50. It shows: 51 to 100.",
		],
		[
			'a field with too few choices',
			cobble,
			{ 'panel.fields[1].choices[7]': undefined },
			'profile.panel',
			'panel.fields[1].choices',
			"3 switches make 8 choices; 'speed' lists 7.",
		],
		[
			'a field with too many',
			cobble,
			{ 'panel.fields[3].choices[2]': { title: 'Perhaps', sets: {} } },
			'profile.panel',
			'panel.fields[3].choices',
			"1 switches make 2 choices; 'lead' lists 3.",
		],
		[
			'a switch in two fields',
			cobble,
			{ 'panel.fields[2].switches[0]': 7 },
			'profile.panel',
			'panel.fields[2].switches',
			"Switch 7 is used by 'speed' and by 'hearing'.",
		],
		[
			'a switch twice in one field',
			cobble,
			{ 'panel.fields[1].switches[2]': 5 },
			'profile.panel',
			'panel.fields[1].switches',
			"Switch 5 is used by 'speed' and by 'speed'.",
		],
	]);
});

describe('shapes that are off are refused with the place', () => {
	const shape = (path: string, why: string) =>
		`The profile doesn’t fit at ${path}: expected ${why}. Fix that place and read it again.`;
	const id = (found: string) =>
		`an id (a small letter, then small letters, digits and hyphens, at most 40 in all), found ${found}`;
	refuses(
		(
			[
				['a version from later', { version: 2 }, 'version', '1, found 2'],
				['no id', { id: undefined }, 'id', 'a value named id, found nothing'],
				['an id in capitals', { id: 'Tallow' }, 'id', id('"Tallow"')],
				['an id of 41', { id: 'a'.repeat(41) }, 'id', id(`"${'a'.repeat(24)}…"`)],
				['a key nobody knows', { colour: 'red' }, 'colour', 'no value of that name, found "colour"'],
				['a panel of no kind', { 'panel.kind': 'touch' }, 'panel.kind', 'one of "code", "text", "dip", found "touch"'],
				['an address of 0 as the default', { 'defaults.address': 0 }, 'defaults.address', '1 or more, found 0'],
				['a channel of 513', { 'modes[2].slots[4].at': 513 }, 'modes[2].slots[4].at', '512 or less, found 513'],
				['half a value', { [`${bands}[0].to`]: 13.5 }, `${bands}[0].to`, 'a whole number, found 13.5'],
				['a level of 256', { 'held[0].levels.white': 256 }, 'held[0].levels.white', '255 or less, found 256'],
				['no mode at all', { modes: [] }, 'modes', 'a length of 1 or more, found 0'],
				[
					'a chromaticity outside the triangle',
					{ 'emitters[0].xy': [0.7, 0.5] },
					'emitters[0].xy',
					'a chromaticity whose x and y come to 1 at most, found a list',
				],
				[
					'a fastest step longer than the slowest',
					{ 'programmes[0].fastest': 31 },
					'programmes[0]',
					'a slowest step no shorter than the fastest, found something of type object',
				],
				[
					'a beam wider than its field',
					{ 'optics.beam': 43 },
					'optics',
					'a beam angle no wider than the field angle, found something of type object',
				],
				[
					'a channel that drives no cell',
					{ 'modes[0].slots[0].cells': [] },
					'modes[0].slots[0].cells',
					'a length of 1 or more, found 0',
				],
			] as const
		).map(([what, puts, path, why]): Case => [what, tallow, { ...puts }, 'profile.shape', path, shape(path, why)]),
	);

	test.each([[null], [undefined], [7], ['tallow-6'], [[]], [true]])('%j is no profile', (junk) => {
		const error = thrownBy(() => readProfile(junk));
		expect([error.code, error.path]).toEqual(['profile.shape', Array.isArray(junk) ? 'version' : '']);
		expect(errorText(error)).toMatch(
			/^The profile doesn’t fit at (its top|version): .*\. Fix that place and read it again\.$/,
		);
	});
});

test('a profile is read, or refused with a place in it: whatever is done to a bundled one', () => {
	let read = 0;
	let refused = 0;
	fc.assert(
		fc.property(fc.constantFrom(...BUNDLED.map(({ id }) => id)), changes, (id, list) => {
			const input = changed(bundledProfile(id), list);
			const before = JSON.stringify(input);
			try {
				const once = readProfile(input);
				// what has been read is whole: it reads again as itself
				expect(readProfile(throughJson(once))).toEqual(once);
				read++;
			} catch (error) {
				if (!(error instanceof InputError)) throw error;
				expect(error.code).toMatch(/^profile\.(shape|band|slot|id|reference|panel|default)$/);
				expect(errorText(error).length).toBeGreaterThan(20);
				// the place is there, or it is a key that is missing from one that is
				const holder = error.path.replace(/(\.[^.[\]]+|\[\d+\]|^[^.[\]]+)$/, '');
				expect(holder === '' || at(input, holder) !== undefined, error.path).toBe(true);
				refused++;
			}
			expect(JSON.stringify(input)).toBe(before);
		}),
		{ numRuns: runs(600) },
	);
	// both happen often, so that neither half of the property is idle
	expect(read).toBeGreaterThan(10);
	expect(refused).toBeGreaterThan(200);
});

test('any JSON at all is refused, never with another error', () => {
	fc.assert(
		fc.property(fc.jsonValue({ maxDepth: 6 }), (junk) => {
			expect(thrownBy(() => readProfile(junk)).code).toBe('profile.shape');
		}),
		{ numRuns: runs(500) },
	);
});

test('a single value is held to the setting and to the fixture, under the code asked for', () => {
	expect(() => checkValue(tallow, 'mode', 'long', 'here')).not.toThrow();
	expect(() => checkValue(tallow, 'level', 0, 'here')).not.toThrow();
	const own = thrownBy(() => checkValue(tallow, 'mode', 'cells', 'here'));
	expect([own.code, own.path]).toEqual(['profile.reference', 'here']);
	const asked = thrownBy(() => checkValue(tallow, 'level', '100', 'there', 'sheet.settings'));
	expect([asked.code, asked.path, errorText(asked)]).toEqual([
		'sheet.settings',
		'there',
		'\'level\' can’t be "100". Give a value the setting takes.',
	]);
});

test('a bundled profile is found by its id', () => {
	for (const profile of BUNDLED) expect(bundledProfile(profile.id)).toBe(profile);
	expect(bundledProfile('nothing')).toBeUndefined();
});
