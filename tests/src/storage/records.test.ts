import { expect, test } from 'vitest';
import { DATABASE, mayHoldRecords } from '../../../src/storage/index.ts';

test('what is kept is looked for under the name it is kept by', async () => {
	expect(await mayHoldRecords(async () => [{ name: 'other' }, {}])).toBe(false);
	expect(await mayHoldRecords(async () => [{ name: 'other' }, { name: DATABASE.name }])).toBe(true);
});

test('a browser that cannot say is taken to have something', async () => {
	expect(await mayHoldRecords(undefined)).toBe(true);
	expect(await mayHoldRecords(() => Promise.reject(new DOMException('refused', 'SecurityError')))).toBe(true);
});
