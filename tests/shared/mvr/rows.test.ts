import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { packedFiles, writeGdtf } from '../../../shared/gdtf/index.ts';
import { MVR_CODES, type MvrCode, type MvrLeft, readMatrix, within } from '../../../shared/mvr/index.ts';
import { numberedCables, readPlan } from '../../../shared/plan/index.ts';
import { BUNDLED, type Profile } from '../../../shared/profile/index.ts';
import { mvrLeftText } from '../../../src/wording/index.ts';
import { made } from '../gdtf/made.ts';
import { archive, fixture, matrix, picked, read, scene } from './made.ts';

const [known] = BUNDLED as readonly [Profile];
const spec = '<GDTFSpec>known.gdtf</GDTFSpec>';
const mode = `<GDTFMode>${known.modes[0]?.name}</GDTFMode>`;
const files = { 'known.gdtf': writeGdtf(known).bytes };
const address = (text: string, at: number | null = 0): string =>
	`<Addresses><Address${at === null ? '' : ` break="${at}"`}>${text}</Address></Addresses>`;

/** Codes met so far in this file: each must be. */
const met = new Set<MvrCode>();

/** What one fixture of a bundled kind comes to, and what is lost, each of which can be said. */
function one(inside: string, more: Readonly<Record<string, Uint8Array>> = {}) {
	return all(fixture('a', `${spec}${mode}${inside}`), more);
}
function all(children: string, more: Readonly<Record<string, Uint8Array>> = {}, picks = picked) {
	const found = read(archive(scene(children), { ...files, ...more }), picks);
	told(found.left);
	expect(() => readPlan(JSON.parse(JSON.stringify(found.plan)))).not.toThrow();
	return { ...found, rows: found.plan.rows, codes: found.left.map(({ code }) => code) };
}
function told(left: readonly MvrLeft[]): void {
	for (const each of left) {
		met.add(each.code);
		expect(mvrLeftText(each)).toMatch(/^[A-Z“\d].*\.$/s);
	}
}

describe('a start address', () => {
	it.each([
		['1', 1, 1],
		['512', 1, 512],
		['513', 2, 1],
		['\n   640\n  ', 2, 128],
		['2.128', 2, 128],
		['32767488', 63999, 512],
	])('of %j is universe %i, %i', (text, universe, at) => {
		const { rows, codes } = one(matrix(0, 0, 0) + address(text));
		expect(rows).toMatchObject([{ universe, address: at, labelled: true }]);
		expect(codes).toEqual([]);
	});

	it.each(['0', '', ' ', ' 0 '])('of %j is none: it gets a free one', (text) => {
		const { rows, codes } = one(matrix(0, 0, 0) + address(text));
		expect(rows).toMatchObject([{ universe: 1, address: 1, labelled: false }]);
		expect(codes).toEqual(['not-patched']);
	});

	it.each(['-1', '1.0', '2.513', '0.1', 'x', '1e3', '32767489', '99999999999'])(
		'of %j is told, and not used',
		(text) => {
			const { rows, codes } = one(matrix(0, 0, 0) + address(text));
			expect(rows).toMatchObject([{ universe: 1, address: 1, labelled: false }]);
			expect(codes).toEqual(['address-bad']);
		},
	);

	it('counts breaks from 0, and is that of the first; 0 where none is given', () => {
		const two = `<Addresses><Address break="1">100</Address><Address break="0">7</Address></Addresses>`;
		const { rows, left } = one(matrix(0, 0, 0) + two);
		expect(rows).toMatchObject([{ address: 7 }]);
		expect(left).toMatchObject([{ code: 'other-break', facts: { break: 1, found: '100' } }]);
		expect(one(matrix(0, 0, 0) + address('9', null)).rows).toMatchObject([{ address: 9 }]);
	});

	it('of a multipatch is that of the fixture it goes with', () => {
		const lead = fixture('a', spec + mode + matrix(0, 0, 0) + address('41'), 'ABC');
		const other = fixture('b', `${spec}${mode}${matrix(0, 0, 0)}<MultiPatch>abc</MultiPatch>`);
		const { rows, codes } = all(lead + other);
		expect(rows).toMatchObject([{ address: 41 }, { address: 41 }]);
		expect(codes).toEqual(['multipatch']);
	});
});

describe('a place', () => {
	it('is in millimetres with Z up: x along the wall, z above the floor', () => {
		const { rows, codes } = one(matrix(2500, 0, 1200) + address('1'));
		expect(rows[0]?.place).toEqual({ x: 2.5, y: 1.2, throw: 3, overhead: false });
		expect(codes).toEqual([]);
	});

	it('over 2 m up is taken for overhead, and that is told', () => {
		const { rows, codes } = one(matrix(0, 0, 4000) + address('1'));
		expect(rows[0]?.place).toMatchObject({ y: 4, overhead: true });
		expect(codes).toEqual(['overhead']);
	});

	it.each([
		[matrix(250_000, 0, 0), 0, 0, 'moved'],
		[matrix(0, 0, 55_000), 0, 40, 'place-cut'],
		[matrix(0, 3000, 0), 0, 0, 'depth'],
		[matrix(-4000, 0, 0), 0, 0, 'moved'],
		['<Matrix>{0,1,0}{-1,0,0}{0,0,1}{0,0,0}</Matrix>', 0, 0, 'turned'],
	])('of %s is held within bounds, and told', (text, x, y, code) => {
		const { rows, codes } = one(text + address('1'));
		expect(rows[0]?.place).toMatchObject({ x, y });
		expect(codes).toContain(code);
	});

	it.each([
		['left', -250, [0, 3, 5]],
		['right', 250, [200, 3, 5]],
		['left of a rig that is left of 0 too', -450, [0, 3, 5]],
		['left, on a wall that would take it alone', -199, [0, 3, 5]],
	])('far off to the %s is cut alone, and named: the others stay as they are', (where, far, xs) => {
		const from = where.includes('too') ? -20 : 0;
		const inside = (x: number): string => spec + mode + matrix(1000 * x, 0, 0) + address('1');
		const { rows, left } = all(
			[fixture('stray', inside(far)), ...[3, 5].map((x) => fixture(`f${x}`, inside(x + from)))].join(''),
		);
		const shift = from === 0 ? 0 : -17;
		expect(rows.map(({ place }) => place.x)).toEqual([xs[0], ...xs.slice(1).map((x) => x + from - shift)]);
		expect(left.filter(({ code }) => code === 'place-cut').map(({ facts }) => facts)).toEqual([
			{ name: 'stray', of: 'along', found: far, metres: xs[0] },
		]);
		expect(left.filter(({ code }) => code === 'moved')).toHaveLength(from === 0 ? 0 : 1);
	});

	it('of a whole rig far off is kept fixture by fixture: all of it is moved', () => {
		const inside = (x: number): string => spec + mode + matrix(x, 0, 0) + address('1');
		const { rows, left } = all([400_000, 402_500, 405_000].map((x) => fixture(`f${x}`, inside(x))).join(''));
		expect(rows.map(({ place }) => place.x)).toEqual([0, 2.5, 5]);
		expect(left.find(({ code }) => code === 'moved')?.facts).toEqual({ metres: 400, to: 'left' });
	});

	it.each([
		['', 'no-place'],
		['<Matrix>{1,0,0}{0,1,0}{0,0,1}</Matrix>', 'unreadable'],
		['<Matrix>{1,0,0}{0,1,0}{0,0,1}{0,0,NaN}</Matrix>', 'unreadable'],
		['<Matrix>{1,0,0}{0,1,0}{0,0,1}{1,2}</Matrix>', 'unreadable'],
	])('of %j is made up and taken as overhead, and told', (text, code) => {
		const { rows, codes } = one(text + address('1'));
		expect(codes).toEqual([code]);
		expect(rows[0]?.place.overhead).toBe(true);
	});

	it('below the floor was measured down from where it hangs', () => {
		const { rows, codes } = one(matrix(0, 0, -1000) + address('1'));
		expect(rows[0]?.place).toMatchObject({ x: 0, overhead: true });
		expect(codes).toContain('place-cut');
	});

	it.each(['<Matrix>{1,0,0}{0,1,0}{0,0,1}{0,0,NaN}</Matrix>', '<Matrix>{1,0,0}{0,1,0}{0,0,1}{-1e308,0,0}</Matrix>'])(
		'in a group at %s is nowhere, and taken as overhead: what stands low in it may hang',
		(bad) => {
			const inside = fixture('a', spec + mode + matrix(-1e308, 0, 0) + address('1'));
			const { rows, codes } = all(`<GroupObject uuid="2">${bad}<ChildList>${inside}</ChildList></GroupObject>`);
			expect(codes).toContain('unreadable');
			for (const { place } of rows) {
				expect(place.overhead).toBe(true);
				expect(Number.isFinite(place.x)).toBe(true);
			}
		},
	);

	it('within groups and layers adds up, turned where they are', () => {
		const turned = '<Matrix>{0,1,0}{-1,0,0}{0,0,1}{1000,0,500}</Matrix>';
		const inside = fixture('a', spec + mode + matrix(0, -3000, 1000) + address('1'));
		const { rows, codes } = all(`<GroupObject uuid="2">${turned}<ChildList>${inside}</ChildList></GroupObject>`);
		expect(rows[0]?.place).toMatchObject({ x: 4, y: 1.5 });
		expect(codes).toEqual(['groups', 'turned']);
	});

	it('of a place within itself is as the axes say', () => {
		const quarter = readMatrix('{0,1,0}{-1,0,0}{0,0,1}{0,0,0}');
		const half = quarter && within(quarter, quarter);
		expect(half).toMatchObject({ u: [-1, 0, 0], v: [0, -1, 0] });
	});
});

describe('what is no fixture', () => {
	it('is counted and told, wherever it stands', () => {
		const found = all(
			`<Truss uuid="3"><ChildList>${fixture('a', `${spec}${mode}${matrix(0, 0, 0)}${address('1')}<Gobo/><FixtureID>7</FixtureID>`)}</ChildList></Truss><Support uuid="4"/><SceneObject uuid="5"><GDTFSpec>known.gdtf</GDTFSpec></SceneObject><Dragon/>`,
		);
		expect(found.rows).toHaveLength(1);
		expect(found.left).toMatchObject([
			{ code: 'object-unused', facts: { kind: 'Truss', count: 1 } },
			{ code: 'part-unused', facts: { part: 'Gobo', count: 1 } },
			{ code: 'object-unused', facts: { kind: 'Support', count: 1 } },
			{ code: 'object-unused', facts: { kind: 'SceneObject', count: 1 } },
			{ code: 'part-unused', facts: { part: 'Dragon', count: 1 } },
			{ code: 'part-unused', facts: { part: 'FixtureID', count: 1 } },
		]);
	});

	it('is told of layers, and of other files', () => {
		const inside = fixture('a', spec + mode + matrix(0, 0, 0) + address('1'));
		const two = `${inside}</ChildList></Layer><Layer name="b" uuid="9"><ChildList>`;
		expect(all(two, { 'chair.glb': new Uint8Array(3) }).codes).toEqual(['layers', 'files-unused']);
	});
});

describe('a name', () => {
	it('that is too long is cut, one that is missing is made, and an ID stands in for it', () => {
		const inside = spec + mode + matrix(0, 0, 0) + address('1');
		const found = all(
			fixture('x'.repeat(80), inside, 'a') +
				`<Fixture uuid="b">${inside}</Fixture><Fixture uuid="c">${inside}<FixtureID>12</FixtureID></Fixture><Fixture uuid="c" name="d">${inside}</Fixture>`,
		);
		expect(found.rows.map(({ name }) => name.slice(0, 61))).toEqual(['x'.repeat(60), expect.any(String), '12', 'd']);
		expect(found.codes).toEqual(['name-cut', 'name-made', 'uuid-twice']);
	});
});

describe('a kind of fixture', () => {
	it('whose file is what this house writes of a fixture of stock is that one', () => {
		const { kinds, rows, codes } = one(matrix(0, 0, 0) + address('1'));
		expect(kinds).toMatchObject([{ spec: 'known.gdtf', by: 'stock', profile: { id: known.id } }]);
		expect(rows).toMatchObject([{ profile: known.id, mode: known.modes[0]?.id }]);
		expect(codes).toEqual([]);
	});

	it('of another file is made of that file, once for the same content, with a stand-in panel', () => {
		const strange = packedFiles({ 'description.xml': strToU8(made()) });
		const inside = `<GDTFMode>One</GDTFMode>${matrix(0, 0, 0)}`;
		const found = all(
			fixture('a', `<GDTFSpec>one.gdtf</GDTFSpec>${inside}${address('1')}`) +
				fixture('b', `<GDTFSpec>TWO</GDTFSpec>${inside}${address('2')}`),
			{ 'one.gdtf': strange, 'two.gdtf': strange },
		);
		expect(found.plan.profiles).toHaveLength(1);
		expect(found.kinds.map(({ by }) => by)).toEqual(['file', 'file']);
		expect(found.codes).toEqual(['files-unused', 'stand-in', 'stand-in']);
		expect(found.kinds[0]?.asked.map(({ code }) => code)).toContain('panel');
	});

	it('that is missing, damaged or not named waits for a pick, and its fixtures are left out until then', () => {
		const inside = mode + matrix(0, 0, 0) + address('1');
		const children =
			fixture('a', `<GDTFSpec>missing.gdtf</GDTFSpec>${inside}`) +
			fixture('b', `<GDTFSpec>bad.gdtf</GDTFSpec>${inside}`) +
			fixture('c', inside);
		const bad = { 'bad.gdtf': strToU8('no archive') };
		const found = all(children, bad, { types: {}, modes: {} });
		expect(found.rows).toEqual([]);
		expect(found.codes.toSorted()).toEqual(
			['file-missing', 'file-refused', 'files-unused', 'fixture-left', 'fixture-left', 'fixture-left'].toSorted(),
		);
		const types = { 'missing.gdtf': known.id, 'bad.gdtf': known.id, '': known.id };
		expect(all(children, bad, { types, modes: {} }).rows).toHaveLength(3);
	});

	it('in a mode it does not have waits for a pick', () => {
		const children = fixture('a', `${spec}<GDTFMode>Nobody’s</GDTFMode>${matrix(0, 0, 0)}`);
		expect(all(children).codes).toEqual(['mode-left']);
		const mode = known.modes.at(-1)?.id ?? '';
		const found = all(children, {}, { types: {}, modes: { [`${known.id}/Nobody’s`]: mode } });
		expect(found.rows).toMatchObject([{ mode }]);
	});

	it('past the most that a plan carries is not read, and told', () => {
		const many = Array.from({ length: 41 }, (_, i) => fixture(`f${i}`, `<GDTFSpec>k${i}</GDTFSpec>${matrix(0, 0, 0)}`));
		const types = Object.fromEntries(many.map((_, i) => [`k${i}`, known.id]));
		const modes = { [`${known.id}/`]: known.modes[0]?.id ?? '' };
		const found = all(many.join(''), {}, { types, modes });
		expect(found.rows).toHaveLength(41);
		expect(found.codes.filter((code) => code === 'too-many-kinds')).toHaveLength(1);
	});
});

describe('connections', () => {
	const row = (name: string, n: number, links: string): string =>
		fixture(
			name,
			`${spec}${mode}${matrix(n * 1000, 0, 0)}${address(String(1 + 20 * n))}<Connections>${links}</Connections>`,
			name,
		);
	const link = (to: string, own = 'DMX out 1', other = 'DMX in 1'): string =>
		`<Connection own="${own}" other="Body.${other}" toObject="${to}"/>`;
	const fed = (found: ReturnType<typeof all>): string[] =>
		numberedCables(found.plan).map(({ from, to }) => {
			const of = (end: typeof to): string =>
				end.is === 'row' ? (found.rows.find(({ id }) => id === end.row)?.name ?? '') : end.is;
			return `${of(from)}>${of(to)}`;
		});

	it('are the cables of the plan, in their order and not the room’s', () => {
		const found = all(row('a', 0, '') + row('b', 1, link('c')) + row('c', 2, link('A')));
		expect(fed(found)).toEqual(['desk>b', 'b>c', 'c>a']);
		expect(found.codes).toEqual([]);
	});

	it('that only say what the room says anyway leave the line to the room', () => {
		const found = all(row('a', 0, link('b')) + row('b', 1, link('c')) + row('c', 2, ''));
		expect(fed(found)).toEqual(['desk>a', 'a>b', 'b>c']);
		expect(found.rows.every((each) => !('after' in each))).toBe(true);
	});

	it('may be told from the end they go into, and twice', () => {
		const back = link('b', 'DMX in 1', 'DMX out 1');
		expect(fed(all(row('a', 0, back) + row('b', 1, link('a'))))).toEqual(['desk>b', 'b>a']);
	});

	it.each([
		['link-power', link('b', 'Mains in 1', 'Mains in 1')],
		['link-unknown', link('b', 'Odd', 'Strange')],
		['link-nowhere', link('nobody')],
		['link-nowhere', link('')],
		['link-circle', link('a')],
		['link-branch', link('b') + link('c')],
	])('that no line here can have are told: %s', (code, links) => {
		const found = all(row('a', 0, links) + row('b', 1, '') + row('c', 2, ''));
		expect(found.codes).toEqual([code]);
	});

	it('to another universe are told', () => {
		const far = fixture('b', `${spec}${mode}${matrix(0, 0, 0)}${address('513')}`, 'b');
		expect(all(row('a', 0, link('b')) + far).codes).toEqual(['link-across']);
	});

	it('of fixtures that have no uuid go from the one that has them', () => {
		const nameless = (name: string, n: number, links = ''): string => row(name, n, links).replace(/ uuid="[^"]*"/, '');
		const found = all(nameless('a', 0) + row('b', 1, '') + nameless('c', 2, link('b')) + nameless('d', 3));
		expect(fed(found)).toEqual(['desk>a', 'a>c', 'c>b', 'b>d']);
		expect(found.rows.filter((each) => 'after' in each).map(({ name }) => name)).toEqual(['b']);
		expect(found.codes).toEqual([]);
	});

	it('of a fixture that is not patched stay, where it gets a start address in the same universe', () => {
		const loose = fixture('a', `${spec}${mode}${matrix(5000, 0, 0)}<Connections>${link('b')}</Connections>`, 'a');
		const found = all(loose + row('b', 1, '') + row('c', 2, ''));
		expect(found.codes).toEqual(['not-patched']);
		expect(fed(found)).toEqual(['desk>c', 'c>a', 'a>b']);
	});

	it('round in a ring lose the last', () => {
		const found = all(row('a', 0, link('b')) + row('b', 1, link('c')) + row('c', 2, link('a')));
		expect(fed(found)).toEqual(['desk>a', 'a>b', 'b>c']);
		expect(found.codes).toEqual(['link-circle']);
	});
});

it('every loss of reading is met here', () => {
	// of writing, and what takes more fixtures than these few
	const elsewhere: readonly MvrCode[] = ['not-written', 'place-changed', 'mode-doubled', 'too-many-own'];
	expect(MVR_CODES.filter((code) => !met.has(code) && !elsewhere.includes(code))).toEqual([]);
});
