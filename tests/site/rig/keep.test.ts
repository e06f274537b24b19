import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ASIDE_KEY, findKept, forget, KEEP_KEY, keep, setAside } from '../../../src/rig/index.ts';
import { runs } from '../../runs.ts';
import { deeds, pair } from './sheets.ts';

function memory(start: Record<string, string> = {}) {
	const held = new Map(Object.entries(start));
	const store = () => ({
		getItem: (key: string) => held.get(key) ?? null,
		setItem: (key: string, value: string) => void held.set(key, value),
		removeItem: (key: string) => void held.delete(key),
	});
	return { held, store };
}
const refuses = () => {
	throw new DOMException('refused', 'SecurityError');
};

describe('a bench kept on the device', () => {
	it('is found again as it was', async () => {
		await fc.assert(
			fc.asyncProperty(deeds(), async (log) => {
				const { store } = memory();
				expect(keep(store, { sheet: pair, log })).toBe(true);
				expect(await findKept(store)).toEqual({ kept: { sheet: pair, log }, damaged: false });
			}),
			{ numRuns: runs(40) },
		);
	});

	it('is set aside, whole, where it is damaged in any way', async () => {
		const good = memory();
		keep(good.store, { sheet: pair, log: [] });
		const text = good.held.get(KEEP_KEY) ?? '';
		await fc.assert(
			fc.asyncProperty(
				fc.oneof(
					fc.string(),
					fc.nat(text.length - 1).map((length) => text.slice(0, length)),
					fc.nat(text.length - 1).map((at) => `${text.slice(0, at)}\u0000${text.slice(at + 1)}`),
					fc.constantFrom('null', '3', '[]', '{}', '{"version":2,"kept":[]}', '{"version":1,"kept":[{},[]]}'),
				),
				async (damaged) => {
					const { held, store } = memory({ [KEEP_KEY]: damaged });
					const found = await findKept(store);
					// a change inside a name can leave it readable
					if (found.kept) return;
					expect(found.damaged).toBe(true);
					expect(held.get(ASIDE_KEY)).toBe(damaged);
					expect(held.has(KEEP_KEY)).toBe(false);
					expect(await findKept(store)).toEqual({ kept: null, damaged: false });
				},
			),
			{ numRuns: runs(150) },
		);
	});

	it('is done without where the store refuses', async () => {
		expect(keep(refuses, { sheet: pair, log: [] })).toBe(false);
		expect(await findKept(refuses)).toEqual({ kept: null, damaged: false });
		expect(() => setAside(refuses)).not.toThrow();
		expect(() => forget(refuses, KEEP_KEY)).not.toThrow();
	});

	it('can be set aside though it could be read, and forgotten', () => {
		const { held, store } = memory({ [KEEP_KEY]: 'it' });
		setAside(store);
		expect([...held]).toEqual([[ASIDE_KEY, 'it']]);
		setAside(store);
		forget(store, ASIDE_KEY);
		expect(held.size).toBe(0);
	});
});
