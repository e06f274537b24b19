import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';

// Symptom: metres for a unit load divided by the loads, not times them, left every test green. Cause: the figure in force is 1, and by 1 it
// is the same. So the rule is tried with another figure: four metres a load. Put in place for this file alone: the files after it in
// the same process get the modules as they are.
let line: typeof import('./build.ts');
beforeAll(async () => {
	vi.resetModules();
	vi.doMock(import('../../../sim/line/limits.ts'), async (real) => {
		const limits = await real();
		return { ...limits, LINE_LIMITS: Object.freeze({ ...limits.LINE_LIMITS, metresPerLoad: 4 }) as never };
	});
	line = await import('./build.ts');
});
afterAll(() => {
	vi.doUnmock('../../../sim/line/limits.ts');
	vi.resetModules();
});

/** A row of two with nothing at its end, one short cable and one of so many metres, whose second fixture puts on so many loads. */
function open(metres: number, loads: number) {
	const row = line.chain(2, {
		cables: (k) => ({ length: k === 2 ? metres : 1 }),
		receivers: (k) => ({ unitLoads: k === 2 ? loads : 0.125 }),
	});
	return line.at({ ...row, terminators: [] }, 'w1');
}

describe('an open end seems farther off by each load on the way', () => {
	// 66 m are borne: 1 m, the cable, and four metres for each load, of which the first fixture puts on an eighth
	test.each([
		[60, 1, []],
		[60, 1.1, []],
		[60, 1.2, ['no-terminator']],
		[64, 0.125, []],
		[64.1, 0.125, ['no-terminator']],
		[56, 2.1, []],
		[56, 2.2, ['no-terminator']],
	] as const)('%d m and %d loads', (metres, loads, causes) => {
		expect(line.names(open(metres, loads))).toEqual(causes);
	});

	test('and the more they are, the worse it is', () => {
		const rate = (loads: number): number => {
			const found = open(100, loads);
			return found.quality === 'marginal' ? found.rate : 0;
		};
		expect(rate(2)).toBeGreaterThan(rate(1));
		expect(rate(4)).toBeGreaterThan(rate(2));
	});

	test('once the line is ended, no load counts', () => {
		const row = line.chain(2, { cables: () => ({ length: 90 }), receivers: () => ({ unitLoads: 4 }) });
		expect(line.names(line.at(row, 'w1'))).toEqual([]);
		expect(line.cable('c1', null, null).length).toBe(5);
	});
});
