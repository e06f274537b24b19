import { expect, test } from 'vitest';
import { type InventedRow, inventedLoop } from './inventedLoop.ts';

/** The finder's closed loop on rigs of fifty fixtures that nobody has seen, printed. */
test('the closed loop on fifty invented fixtures', async () => {
	const rows: InventedRow[] = [];
	for (let seed = 0; seed < 50; seed++) rows.push(await inventedLoop(seed));
	console.table(rows.map(({ missed: _, ...row }) => row));
	const all = (of: (row: InventedRow) => number): number => rows.reduce((sum, row) => sum + of(row), 0);
	console.table([
		{
			rigs: rows.length,
			complaints: all(({ complaints }) => complaints),
			faults: all(({ faults }) => faults),
			found: all(({ found }) => found),
		},
	]);
	expect(new Set(rows.map(({ law }) => law)).size).toBe(5);
	expect(rows.flatMap(({ missed }) => missed)).toEqual([]);
});
