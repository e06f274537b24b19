import { describe, expect, it } from 'vitest';
import { weightReasons } from '#words/faults/index.ts';
import { BUNDLED, type KeyedPanel } from '../../../../shared/profile/index.ts';
import { FAULTS } from '../../../../sim/fault/index.ts';
import { foldedTables, referencePages } from '../../../../src/features/reference/index.ts';
import { itemTitle, modeName } from '../../../../src/wording/index.ts';

const pages = referencePages();
const sections = pages.flatMap((page) => page.sections);
const tables = sections.flatMap((section) => section.tables);
const tableOf = (section: string, n = 0) => {
	const found = sections.find(({ id }) => id === section)?.tables[n];
	if (!found) throw new Error(`no table ${n} in ${section}`);
	return found;
};
/** A cell by the words of its row and column. */
const cell = (section: string, row: string, column: string, n = 0) => {
	const { head, rows } = tableOf(section, n);
	return rows.find(([first]) => first === row)?.[head.indexOf(column)];
};

describe('the reference', () => {
	it('keeps its addresses and places: links lead to them', () => {
		expect(pages.map(({ id, sections: list }) => `${id}: ${list.map(({ id: place }) => place).join(' ')}`)).toEqual([
			'addresses: back-to-back how-many-fit switch-weights switches-plain-sum switches-from-zero',
			'levels: percent-to-level level-to-percent',
			'line: pins limits timing start-codes network',
			'fixtures: tallow-6 picket-8 cobble thimble-4',
			'faults: power panel remote line desk fixture light how-common',
			'elsewhere: on-a-panel on-a-label on-a-sheet',
			'cautions: where',
		]);
	});

	it('has tables whose rows are as long as their heads, with captions told apart and no hole left unfilled', () => {
		for (const { head, rows, caption } of tables) {
			expect(rows.length, caption).toBeGreaterThan(1);
			for (const row of rows) expect(row, caption).toHaveLength(head.length);
			for (const text of [caption, ...head, ...rows.flat()]) expect(text).not.toMatch(/[{}[\]]|undefined|NaN|Infinity/);
			for (const [first] of rows) expect(first, caption).not.toBe('');
		}
		expect(new Set(tables.map(({ caption }) => caption)).size).toBe(tables.length);
	});

	it('folds a table without losing a row', () => {
		for (const table of tables) {
			const parts = foldedTables(table);
			expect(parts).toHaveLength(table.fold ?? 1);
			expect(parts.flatMap(({ rows }) => rows)).toEqual(table.rows);
			expect(new Set(parts.map(({ caption }) => caption)).size).toBe(parts.length);
		}
	});
});

describe('faults', () => {
	it('are all there, each with a place to link to, what it does and what puts it right', () => {
		const faultTables = sections.flatMap((section) => section.tables).filter(({ ids }) => ids);
		const ids = faultTables.flatMap(({ ids: list = [] }) => list);
		expect(new Set(ids).size).toBe(ids.length);
		for (const { id } of FAULTS) expect(ids).toContain(`fault-${id}`);
		for (const { ids: list, rows } of faultTables) {
			expect(list).toHaveLength(rows.length);
			for (const [, does, repair] of rows) {
				expect(does).toMatch(/^[A-Z].*[.]$/);
				expect(repair).toMatch(/^[A-Z].*[.]$/);
			}
		}
	});
});

describe('how common each fault is taken to be', () => {
	const { rows } = tableOf('how-common');

	it('stands there for every fault of the catalogue and no other, with a reason and where that comes from', () => {
		expect(Object.keys(weightReasons).sort()).toEqual(FAULTS.map(({ id }) => id).sort());
		expect(rows).toHaveLength(FAULTS.length);
		for (const [name, , why, from] of rows) {
			expect(why, name).toMatch(/^[A-Z].{15,}[.]$/);
			expect(from, name).toMatch(/no source$/);
		}
	});

	it('is the weight that the finder starts from, commonest first', () => {
		expect(rows.map(([, weight]) => Number(weight))).toEqual(FAULTS.map(({ weight }) => weight).sort((a, b) => b - a));
		expect(cell('how-common', 'Patched in another mode', 'Weight')).toBe('6');
	});
});

describe('faults of a line', () => {
	it('stand once for each kind of socket, however many fixtures could have them', () => {
		const ids = sections.flatMap((section) => section.tables).flatMap(({ ids: list = [] }) => list);
		// a fixture’s two, the desk’s, and a splitter’s
		expect(ids.filter((id) => id.startsWith('fault-cable-out'))).toHaveLength(4);
	});
});

describe('addresses', () => {
	it('go on by the footprint', () => {
		const { head, rows } = tableOf('back-to-back');
		for (const [at, title] of head.entries()) {
			if (at === 0) continue;
			const footprint = Number(title.split(' ')[0]);
			for (const [n, row] of rows.entries()) {
				const start = 1 + n * footprint;
				expect(row[at]).toBe(start + footprint - 1 > 512 ? '–' : `${start}`);
			}
		}
		const footprints = BUNDLED.flatMap(({ modes }) => modes.map(({ slots }) => slots.length));
		expect(footprints.length).toBeGreaterThan(5);
	});

	it('by switches have each address once, where its switches say', () => {
		for (const [id, past] of [
			['switches-plain-sum', 0],
			['switches-from-zero', 1],
		] as const) {
			const { head, rows } = tableOf(id);
			const sum = (text: string | undefined) =>
				text === 'none' ? 0 : (text ?? '').split(' ').reduce((all, n) => all + 2 ** (Number(n) - 1), 0);
			for (const [first, ...cells] of rows)
				for (const [i, address] of cells.entries()) {
					const count = sum(first) + sum(head[i + 1]) + past;
					// symptom: the table gave 1 for all nine down; cause: one maker's custom, and others read that otherwise
					expect(address).toBe(count === 0 ? '–' : `${count}`);
				}
			expect(new Set(rows.flatMap(([, ...cells]) => cells)).size).toBe(512);
		}
		// read in tables of the trade: 10 is 2 and 4, 24 is 4 and 5, 233 is 1 4 6 7 8
		expect(cell('switch-weights', '10', 'Up, plain sum', 1)).toBe('2 4');
		expect(cell('switch-weights', '24', 'Up, plain sum', 1)).toBe('4 5');
		expect(cell('switch-weights', '233', 'Up, plain sum', 1)).toBe('1 4 6 7 8');
		expect(cell('switch-weights', '512', 'Up, plain sum', 1)).toBe('can’t be set');
	});
});

describe('levels', () => {
	it('are all there, each in its hex place', () => {
		expect(cell('level-to-percent', '8_', '_0')).toBe('128 50\u00a0%');
		expect(cell('level-to-percent', 'F_', '_F')).toBe('255 100\u00a0%');
		expect(tableOf('level-to-percent').rows.flatMap(([, ...cells]) => cells)).toHaveLength(256);
		expect(cell('percent-to-level', '50 %', 'Type')).toBe('128');
		expect(cell('percent-to-level', '50 %', 'Shown so')).toBe('127 to 128');
	});
});

describe('the line', () => {
	it('has the figures of the standards', () => {
		expect(cell('pins', '2', 'Wire')).toBe('Data minus');
		expect(cell('pins', '3', 'Wire')).toBe('Data plus');
		expect(cell('start-codes', '204', 'Hex')).toBe('CC');
		expect(cell('network', '256', 'Address')).toBe('239.255.1.0');
		expect(cell('timing', '512', 'One packet takes', 1)).toBe('22,676 µs');
		expect(cell('timing', '512', 'Packets a second', 1)).toBe('44.1');
		expect(cell('limits', 'Unit loads', 'Limit')).toBe('32');
	});
});

describe.each(BUNDLED.map((profile) => [profile.name, profile] as const))('%s', (_, profile) => {
	const section = sections.find(({ id }) => id === profile.id);

	it('has every slot and every band of every mode', () => {
		for (const mode of profile.modes) {
			const chart = section?.tables.find(({ caption }) => caption.includes(`“${modeName(profile, mode.id)}”`));
			const count = mode.slots.reduce(
				(sum, { drives }) => sum + (drives.kind === 'bands' ? drives.bands.length : 1),
				0,
			);
			expect(chart?.rows).toHaveLength(count);
		}
	});

	it('has a way to everything that can be set at its panel', () => {
		const { panel } = profile;
		if (panel.kind === 'dip') {
			expect(section?.tables.some(({ caption }) => caption.includes('slides'))).toBe(true);
			return;
		}
		const leaves = (panel as KeyedPanel).menu.flatMap((item) => (item.kind === 'menu' ? item.items : [item]));
		const ways = section?.tables.find(({ caption }) => caption.includes('ways through'));
		expect(ways?.rows.map(([what]) => what)).toEqual(leaves.map(itemTitle));
	});
});
