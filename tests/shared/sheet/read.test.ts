import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { InputError } from '../../../shared/error/index.ts';
import { BUNDLED, bundledProfile, type Profile } from '../../../shared/profile/index.ts';
import { portsOf, profileFor, readSheet, splitPort } from '../../../shared/sheet/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { at, changed, changes, throughJson, withPut } from '../json.ts';
import { thrownBy } from '../thrown.ts';
import { hall } from './hall.ts';

const tallow = bundledProfile('tallow-6') as Profile;
const own = withPut(tallow, { id: 'tallow-old', name: 'Old Tallow' }) as unknown as Profile;

type Case = [what: string, puts: Record<string, unknown>, code: string, path: string, sentence: string];

function refuses(cases: Case[]): void {
	test.each(cases)('%s', (_, puts, code, path, sentence) => {
		const error = thrownBy(() => readSheet(withPut(hall, puts)));
		expect({ code: error.code, path: error.path, sentence: errorText(error) }).toEqual({ code, path, sentence });
	});
}

describe('what stands on the sheet is read', () => {
	test('with what is left out filled in', () => {
		const bare = readSheet({
			version: 1,
			name: ' Bare ',
			fixtures: [{ id: 'one', name: ' One ', profile: 'tallow-6', place: { x: 0, y: 0, throw: 3 } }],
		});
		expect(bare).toEqual({
			version: 1,
			name: 'Bare',
			hall: { width: 16, height: 6 },
			fixtures: [
				{
					id: 'one',
					name: 'One',
					profile: 'tallow-6',
					place: { x: 0, y: 0, throw: 3, overhead: false },
					settings: {},
					on: true,
					plug: 'none',
					charge: 1,
					hidden: false,
				},
			],
			desk: null,
			splitters: [],
			cables: [],
			terminators: [],
			remote: null,
			profiles: [],
		});
	});

	test('with the parts of cables, desk, splitters and remote filled in', () => {
		const sheet = readSheet(hall);
		expect(sheet.cables[0]).toEqual({
			id: 'run',
			kind: 'data',
			length: 25,
			from: 'desk:a',
			to: 'split:in',
			common: 'sound',
			minus: 'sound',
			plus: 'sound',
			swapped: false,
		});
		expect(sheet.desk?.outputs.map(({ on }) => on)).toEqual([true, false]);
		expect(sheet.splitters[0]?.on).toBe(true);
		expect(sheet.remote).toEqual({ code: 1, battery: true });
		const plain = readSheet(withPut(hall, { 'desk.levels': undefined, 'desk.master': undefined }));
		expect([plain.desk?.levels, plain.desk?.master]).toEqual([[], 255]);
	});

	test('and comes back from JSON, and from being read again, as it was', () => {
		const sheet = readSheet({ ...hall, profiles: [own] });
		expect(readSheet(throughJson(sheet))).toEqual(sheet);
		expect(throughJson(sheet)).toEqual(sheet);
	});

	test('and is left as it was given', () => {
		const given = throughJson(hall);
		readSheet(given);
		expect(given).toEqual(throughJson(hall));
	});

	test('an empty stage too', () => {
		expect(readSheet({ version: 1, name: 'Empty', fixtures: [] }).fixtures).toEqual([]);
	});
});

describe('ids taken twice are refused at the second', () => {
	const taken = (id: string, what: string) => `'${id}' is taken: give each ${what} an id of its own.`;
	refuses([
		['two fixtures', { 'fixtures[3].id': 'bar-1' }, 'sheet.id', 'fixtures[3].id', taken('bar-1', 'device')],
		['a fixture called desk', { 'fixtures[1].id': 'desk' }, 'sheet.id', 'fixtures[1].id', taken('desk', 'device')],
		['a fixture called wall', { 'fixtures[1].id': 'wall' }, 'sheet.id', 'fixtures[1].id', taken('wall', 'device')],
		['a fixture called none', { 'fixtures[1].id': 'none' }, 'sheet.id', 'fixtures[1].id', taken('none', 'device')],
		[
			'a splitter called as a fixture',
			{ 'splitters[0].id': 'wash-1' },
			'sheet.id',
			'splitters[0].id',
			taken('wash-1', 'device'),
		],
		['a splitter called desk', { 'splitters[0].id': 'desk' }, 'sheet.id', 'splitters[0].id', taken('desk', 'device')],
		['two cables', { 'cables[2].id': 'run' }, 'sheet.id', 'cables[2].id', taken('run', 'cable')],
		['two desk outputs', { 'desk.outputs[1].id': 'a' }, 'sheet.id', 'desk.outputs[1].id', taken('a', 'output')],
		['two profiles', { profiles: [own, own] }, 'sheet.id', 'profiles[1].id', taken('tallow-old', 'profile')],
	]);
});

describe('sockets that are not there are refused', () => {
	const none = (port: string) =>
		`There’s no socket '${port}' on this rig. A fixture has in and out, a desk its outputs, a splitter in and numbers.`;
	refuses([
		['a device', { 'cables[0].to': 'wash-9:in' }, 'sheet.socket', 'cables[0].to', none('wash-9:in')],
		['a third socket', { 'cables[1].from': 'wash-2:thru' }, 'sheet.socket', 'cables[1].from', none('wash-2:thru')],
		['a desk output', { 'cables[0].from': 'desk:c' }, 'sheet.socket', 'cables[0].from', none('desk:c')],
		['a splitter output', { 'cables[1].from': 'split:5' }, 'sheet.socket', 'cables[1].from', none('split:5')],
		['any desk', { desk: null }, 'sheet.socket', 'cables[0].from', none('desk:a')],
		['a terminator', { 'terminators[1]': 'bar-3:out' }, 'sheet.socket', 'terminators[1]', none('bar-3:out')],
		[
			'a cable back into its own socket',
			{ 'cables[3].from': 'wash-2:in', 'cables[3].to': 'wash-2:in' },
			'sheet.socket',
			'cables[3].to',
			"Cable 'spare' has both ends in wash-2:in. Move one of them.",
		],
	]);

	test('a splitter of n outputs has in and 1 to n, a fixture in and out, a desk what it lists', () => {
		const ports = portsOf(readSheet(hall));
		expect(ports).toEqual([
			'desk:a',
			'desk:b',
			'split:in',
			'split:1',
			'split:2',
			'split:3',
			'split:4',
			...['wash-1', 'wash-2', 'bar-1', 'bar-2', 'stone'].flatMap((id) => [`${id}:in`, `${id}:out`]),
		]);
		for (const port of ports) {
			const { device, socket } = splitPort(port);
			expect(`${device}:${socket}`).toBe(port);
		}
	});
});

describe('what the parts say of each other is held to', () => {
	refuses([
		[
			'a profile nobody knows',
			{ 'fixtures[0].profile': 'tallow-7' },
			'sheet.reference',
			'fixtures[0].profile',
			"No fixture profile is called 'tallow-7'. Add it to the sheet's profiles, or choose a bundled one.",
		],
		[
			'a setting of another fixture',
			{ 'fixtures[2].settings.mode': 'long' },
			'sheet.settings',
			'fixtures[2].settings.mode',
			"'long' isn’t a mode of this fixture. Known: whole, whole-plus, halves, cells.",
		],
		[
			'a held colour of another fixture',
			{ 'fixtures[0].settings.held': 'gold' },
			'sheet.settings',
			'fixtures[0].settings.held',
			"'gold' isn’t a static colour of this fixture. Known: candle, white, amber, red, rose, violet, blue, sea, green, ultraviolet.",
		],
		[
			'switches on a fixture with keys',
			{ 'fixtures[0].switches': Array(10).fill(false) },
			'sheet.settings',
			'fixtures[0].switches',
			'Tallow 6 has no switches; set it by its settings.',
		],
		[
			'slides on a fixture with keys',
			{ 'fixtures[2].slides': [0] },
			'sheet.settings',
			'fixtures[2].slides',
			'Picket 8 has no switches; set it by its settings.',
		],
		[
			'settings on a fixture with switches',
			{ 'fixtures[4].settings': { address: 10 } },
			'sheet.settings',
			'fixtures[4].settings',
			'Cobble is set by its switches and slides alone; give those instead of settings.',
		],
		[
			'too few slides',
			{ 'fixtures[4].slides': [0, 0] },
			'sheet.settings',
			'fixtures[4].slides',
			'Cobble has 3 slides; the sheet gives 2.',
		],
		[
			'a slide past its last position',
			{ 'fixtures[4].slides': [2, 2, 2] },
			'sheet.settings',
			'fixtures[4].slides[2]',
			'That slide has positions 0 to 1, not 2.',
		],
		[
			'a mains plug in nothing',
			{ 'fixtures[3].plug': 'bar-9' },
			'sheet.mains',
			'fixtures[3].plug',
			"'bar-9' is no fixture of this rig. A mains plug is in 'wall', 'none' or a fixture with a link socket.",
		],
		[
			'a mains plug in a splitter',
			{ 'fixtures[3].plug': 'split' },
			'sheet.mains',
			'fixtures[3].plug',
			"'split' is no fixture of this rig. A mains plug is in 'wall', 'none' or a fixture with a link socket.",
		],
		[
			'a mains plug in a fixture with no link',
			{ 'fixtures[3].plug': 'wash-1' },
			'sheet.mains',
			'fixtures[3].plug',
			"'Wash 1, house left' has no mains link socket to feed another fixture from.",
		],
		[
			'a mains plug in itself',
			{ 'fixtures[2].plug': 'bar-1' },
			'sheet.mains',
			'fixtures[2].plug',
			"The mains links run in a circle through 'Bar 1'. One of them must be plugged into the wall.",
		],
		[
			'mains round and round',
			{ 'fixtures[2].plug': 'stone' },
			'sheet.mains',
			'fixtures[2].plug',
			"The mains links run in a circle through 'Bar 1'. One of them must be plugged into the wall.",
		],
		[
			'a patch to nothing',
			{ 'desk.patch[1].fixture': 'bar-9' },
			'sheet.reference',
			'desk.patch[1].fixture',
			"The desk is patched to 'bar-9', which is no fixture of this rig.",
		],
		[
			'a patch twice',
			{ 'desk.patch[1].fixture': 'wash-1' },
			'sheet.reference',
			'desk.patch[1].fixture',
			"The desk is patched to 'Wash 1, house left' twice. Keep one line for it.",
		],
		[
			'a patch in a mode the fixture does not have',
			{ 'desk.patch[1].mode': 'long' },
			'sheet.reference',
			'desk.patch[1].mode',
			"Picket 8 has no mode 'long'. Its modes: whole, whole-plus, halves, cells.",
		],
	]);

	test('the desk may think a fixture is in another mode than it is: that is a fault, not nonsense', () => {
		expect(readSheet(withPut(hall, { 'desk.patch[0].mode': 'short' })).desk?.patch[0]?.mode).toBe('short');
	});

	test('a fixture that draws its mains through a circle further on is told of the circle', () => {
		const puts = { 'fixtures[0].plug': 'bar-1', 'fixtures[2].plug': 'bar-2', 'fixtures[3].plug': 'bar-1' };
		const error = thrownBy(() => readSheet(withPut(hall, puts)));
		expect([error.code, error.path]).toEqual(['sheet.mains', 'fixtures[0].plug']);
	});
});

describe('profiles of the crew itself', () => {
	test('are used before the bundled ones', () => {
		const mine = withPut(tallow, { name: 'Mended Tallow' }) as unknown as Profile;
		const sheet = readSheet({ ...hall, profiles: [mine, own] });
		expect(profileFor(sheet, 'tallow-6').name).toBe('Mended Tallow');
		expect(profileFor(sheet, 'tallow-old').name).toBe('Old Tallow');
		expect(profileFor(sheet, 'cobble')).toBe(bundledProfile('cobble'));
		expect(profileFor(readSheet(hall), 'tallow-6')).toBe(tallow);
	});

	test('are held to their own rules, with their place in the sheet before the path', () => {
		const gap = withPut(own, { 'modes[1].slots[1].drives.bands[2].from': 60 });
		const error = thrownBy(() => readSheet({ ...hall, profiles: [tallow, gap] }));
		expect([error.code, error.path, errorText(error)]).toEqual([
			'profile.band',
			'profiles[1].modes[1].slots[1].drives.bands[2]',
			"Bands of 'function': 51 to 59 belong to no band: close the gap.",
		]);
		const shape = thrownBy(() => readSheet({ ...hall, profiles: [withPut(own, { cells: 0 })] }));
		expect([shape.code, shape.path]).toEqual(['sheet.shape', 'profiles[0].cells']);
	});
});

describe('shapes that are off are refused with the place', () => {
	const shape = (path: string, why: string) =>
		`The rig sheet doesn’t fit at ${path}: expected ${why}. Fix that place and open it again.`;
	refuses(
		(
			[
				[
					'a fixture with no place',
					{ 'fixtures[1].place': undefined },
					'fixtures[1].place',
					'a value named place, found nothing',
				],
				['a name of blanks', { name: '   ' }, 'name', 'a length of 1 or more, found 0'],
				[
					'a setting nobody knows',
					{ 'fixtures[0].settings.colour': 'red' },
					'fixtures[0].settings.colour',
					'no value of that name, found "colour"',
				],
				[
					'an address of 513',
					{ 'fixtures[0].settings.address': 513 },
					'fixtures[0].settings.address',
					'512 or less, found 513',
				],
				[
					'nine switches',
					{ 'fixtures[4].switches': Array(9).fill(true) },
					'fixtures[4].switches',
					'a length of 10, found 9',
				],
				['a charge over full', { 'fixtures[0].charge': 1.01 }, 'fixtures[0].charge', '1 or less, found 1.01'],
				[
					'a socket of no shape',
					{ 'cables[0].from': 'desk' },
					'cables[0].from',
					'a socket such as wash-1:in, wash-1:out or desk:a, found "desk"',
				],
				[
					'a wire of no state',
					{ 'cables[0].plus': 'short' },
					'cables[0].plus',
					'one of "sound", "open", found "short"',
				],
				['a desk with no output', { 'desk.outputs': [] }, 'desk.outputs', 'a length of 1 or more, found 0'],
				[
					'an output called out',
					{ 'desk.outputs[0].id': 'out' },
					'desk.outputs[0].id',
					'one small letter, found "out"',
				],
				[
					'universe 64000',
					{ 'desk.outputs[0].universe': 64000 },
					'desk.outputs[0].universe',
					'63999 or less, found 64000',
				],
				['a splitter of one', { 'splitters[0].outputs': 1 }, 'splitters[0].outputs', '2 or more, found 1'],
				['code 5', { 'remote.code': 5 }, 'remote.code', '4 or less, found 5'],
			] as const
		).map(([what, puts, path, why]): Case => [what, { ...puts }, 'sheet.shape', path, shape(path, why)]),
	);
});

test('a sheet is read, or refused with a place in it: whatever is done to a whole one', () => {
	let read = 0;
	let refused = 0;
	fc.assert(
		fc.property(fc.boolean(), changes, (withOwn, list) => {
			const input = changed(withOwn ? { ...hall, profiles: [own] } : hall, list);
			const before = JSON.stringify(input);
			try {
				const once = readSheet(input);
				expect(readSheet(throughJson(once))).toEqual(once);
				// every name in it leads somewhere
				for (const fixture of once.fixtures) expect(profileFor(once, fixture.profile).id).toBe(fixture.profile);
				read++;
			} catch (error) {
				if (!(error instanceof InputError)) throw error;
				expect(error.code).toMatch(
					/^(sheet\.(shape|id|socket|reference|settings|mains)|profile\.(band|slot|id|reference|panel|default))$/,
				);
				expect(errorText(error).length).toBeGreaterThan(20);
				const holder = error.path.replace(/(\.[^.[\]]+|\[\d+\]|^[^.[\]]+)$/, '');
				expect(holder === '' || at(input, holder) !== undefined, error.path).toBe(true);
				refused++;
			}
			expect(JSON.stringify(input)).toBe(before);
		}),
		{ numRuns: runs(800) },
	);
	expect(read).toBeGreaterThan(40);
	expect(refused).toBeGreaterThan(200);
});

test('any JSON at all is refused, never with another error', () => {
	fc.assert(
		fc.property(fc.jsonValue({ maxDepth: 6 }), (junk) => {
			expect(thrownBy(() => readSheet(junk)).code).toBe('sheet.shape');
		}),
		{ numRuns: runs(500) },
	);
});

test('a hundred of each bundled fixture stand on a sheet', () => {
	const fixtures = BUNDLED.flatMap((profile) =>
		Array.from({ length: 100 }, (_, i) => ({
			id: `${profile.id}-${i}`,
			name: `${profile.name} ${i}`,
			profile: profile.id,
			place: { x: i, y: 1, throw: 2 },
		})),
	);
	expect(readSheet({ version: 1, name: 'Many', fixtures }).fixtures).toHaveLength(400);
});
