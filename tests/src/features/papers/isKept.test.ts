import { expect, test } from 'vitest';
import { DATABASE } from '../../../../src/features/papers/exchange/shelf.ts';
import { isAnythingKept, KEPT_IN } from '../../../../src/features/papers/trainer/isKept.ts';

test('what is kept is looked for under the name it is kept by', async () => {
	expect(KEPT_IN).toBe(DATABASE);
	expect(await isAnythingKept(async () => [{ name: 'other' }, {}])).toBe(false);
	expect(await isAnythingKept(async () => [{ name: 'other' }, { name: DATABASE }])).toBe(true);
});

test('a browser that cannot say is taken to have something', async () => {
	expect(await isAnythingKept(undefined)).toBe(true);
	expect(await isAnythingKept(() => Promise.reject(new DOMException('refused', 'SecurityError')))).toBe(true);
});
