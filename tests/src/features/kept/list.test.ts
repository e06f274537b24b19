import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { asideLines, forget, keptLines, textOf } from '../../../../src/features/kept/list.ts';
import { runs } from '../../../runs.ts';
import { memory, refuses } from '../../storage/memory.ts';

const written: Readonly<Record<string, string>> = JSON.parse(
	readFileSync(new URL('../../storage/as-written.json', import.meta.url), 'utf8'),
);
/** Keys of ours, known and not, and of others. */
const anyKey = fc.oneof(
	fc.constantFrom(...Object.keys(written)),
	fc.nat(99).map((n) => `prep-bay.sitting.${n.toString(16).padStart(16, '0')}`),
	fc.nat(99).map((seed) => `prep-bay.unfinished.mains-row.${seed}`),
	fc.string().map((rest) => `prep-bay.${rest}`),
	fc.string().map((rest) => `prep-bay.finder.aside.${rest}`),
	fc.string().map((rest) => `elsewhere.${rest}`),
);

it('lists every key of the site once, and none of another', () => {
	fc.assert(
		fc.property(fc.uniqueArray(anyKey, { maxLength: 20 }), (keys) => {
			const { store } = memory(Object.fromEntries(keys.map((key) => [key, 'x'])));
			const listed = [...keptLines(store).flatMap((line) => line.keys), ...asideLines(store).map(({ key }) => key)];
			expect(listed.sort()).toEqual(keys.filter((key) => key.startsWith('prep-bay.')).sort());
		}),
		{ numRuns: runs(200) },
	);
});

it('hands out the text of one as it stands, of several as a list, and deletes what is named alone', () => {
	const sitting = 'prep-bay.sitting.0123456789abcdef';
	const { held, store } = memory({ ...written, 'prep-bay.sitting.00000000000000aa': '{"version":1}' });
	const [line] = keptLines(store).filter(({ id }) => id === 'sitting');
	expect(line?.keys).toHaveLength(2);
	expect(JSON.parse(textOf(store, line?.keys ?? []))).toEqual([{ version: 1 }, JSON.parse(written[sitting] ?? '')]);
	expect(textOf(store, [sitting])).toBe(written[sitting]);
	const before = held.size;
	expect(forget(store, line?.keys ?? [])).toBe(true);
	expect(held.size).toBe(before - 2);
});

it('lists nothing where nothing may be read, and says so when it is asked to delete', () => {
	expect([keptLines(refuses), asideLines(refuses)]).toEqual([[], []]);
	expect(forget(refuses, ['prep-bay.theme'])).toBe(false);
});
