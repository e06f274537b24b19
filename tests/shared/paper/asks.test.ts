import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asksFor, type PlainKindId, setPaper } from '../../../shared/paper/index.ts';
import { runs } from '../../runs.ts';

// Symptom: the box under 'what percent is it?' asked for 'a whole number from 0 to 999', under an address 0 to 9999.
// Cause: what may be stored was said for what may be answered.

/**
 * What each kind asks for: values 0 to 255, slots and start addresses 1 to 512 (ANSI E1.11, from memory), percent 0 to 100, 16 bits
 * 0 to 65535. Of `footprint` by how many fixtures it names.
 */
const ASKED: Partial<Record<PlainKindId, readonly [number, number]>> = {
	'percent-of-value': [0, 100],
	'value-of-percent': [0, 255],
	'hex-of-value': [0, 255],
	'value-of-hex': [0, 255],
	'band-edge': [0, 255],
	'band-middle': [0, 255],
	'value-of-pair': [0, 65535],
	'desk-slot': [1, 512],
	'last-slot': [1, 512],
	'next-free': [1, 512],
	'nth-address': [1, 512],
	'dip-to-address': [1, 512],
	'how-many-fit': [0, 512],
	'percent-in-band': [0, 100],
	'park-value': [0, 255],
	'hours-left': [0, 999],
	'fit-on-circuit': [0, 512],
	'row-amps': [0, 999],
	'splitter-after': [0, 512],
	'lux-at-throw': [0, 100_000],
	'pool-at-throw': [0, 9999],
	'row-spacing': [0, 9999],
};
const KINDS = [...Object.keys(ASKED), 'footprint'] as PlainKindId[];

test('a number question says the range of what it counts: it holds what is right, and does not move with it', () => {
	const seen = new Set<string>();
	fc.assert(
		fc.property(fc.nat(0xffffffff), (seed) => {
			const { items } = setPaper({ version: 1, title: 'x', count: 60, kinds: KINDS }, seed);
			for (const item of items) {
				const { ask, key, kind, facts } = item;
				if (ask.form !== 'number' || key.form !== 'number') continue;
				const { least, most } = asksFor(item);
				const fixtures = Number(facts['count']) + Number(facts['more']);
				expect([least, most], kind).toEqual(ASKED[kind as PlainKindId] ?? [1, 512 * fixtures]);
				for (const { from, to } of key.within) {
					expect(from).toBeGreaterThanOrEqual(least);
					expect(to).toBeLessThanOrEqual(most);
				}
				// and whatever it lets through may be stored and marked
				expect(least).toBeGreaterThanOrEqual(ask.least);
				expect(most).toBeLessThanOrEqual(ask.most);
				seen.add(kind);
			}
		}),
		{ numRuns: runs(40) },
	);
	expect([...seen].sort()).toEqual([...KINDS].sort());
});
