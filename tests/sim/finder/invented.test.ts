import { expect, test } from 'vitest';
import { inventedLoop } from './inventedLoop.ts';

test('on rigs of fixtures that nobody has seen every fault is found, and its repair ends the complaint', async () => {
	for (const seed of [1, 2, 3, 4]) {
		const { faults, missed } = await inventedLoop(seed, 1);
		expect(missed).toEqual([]);
		expect(faults).toBeGreaterThan(0);
	}
});
