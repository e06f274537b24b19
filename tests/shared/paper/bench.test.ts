import { describe, expect, it } from 'vitest';
import { type Item, PLAIN_KIND_IDS, type PlainKindId, setPaper } from '../../../shared/paper/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import { openRig, type Reason, why } from '../../../sim/rig/index.ts';
import { runs } from '../../runs.ts';
import { oddProfile } from './grounds.ts';

/** What the rig says of the fixture on an item's bench, after two seconds. */
function reasonsOf(bench: RigSheet): readonly Reason[] {
	const rig = openRig(bench);
	rig.wait(2000);
	const id = bench.fixtures[0]?.id ?? '';
	expect(rig.look(id).lamps.data).toBe('steady');
	return why(rig, id);
}

const itemsWith = (kind: PlainKindId, seed: number, more: object = {}): readonly Item[] =>
	setPaper({ version: 1, title: 'Bench', count: 12, kinds: [kind], ...more }, seed).items;

/** What the one number of a key is. */
const keyed = ({ key }: Item): number => (key.form === 'number' ? (key.within[0]?.from ?? -1) : -1);

/** The band that the rig reads at a slot of the item's chart. */
function bandRead(item: Item): unknown {
	const reasons = item.bench ? reasonsOf(item.bench) : [];
	return reasons.find(({ facts }) => 'band' in facts && facts['slot'] === item.facts['n'])?.facts['band'];
}
const reads = (item: Item, fact: string): unknown =>
	item.bench && reasonsOf(item.bench).find(({ id }) => id === 'address.reads')?.facts[fact];

const SEEDS = Array.from({ length: runs(2, 100) }, (_, seed) => seed);

describe('the bench of a question bears its answer out', () => {
	it('what a value does is what the rig reads it as', () => {
		for (const seed of SEEDS) {
			for (const item of itemsWith('value-function', seed)) {
				const { ask, key } = item;
				if (ask.form !== 'one' || key.form !== 'one') throw new Error('one of four');
				expect(bandRead(item)).toBe(ask.options.find(({ id }) => id === key.right)?.label.facts['name']);
			}
		}
	});

	it.each(['function-values', 'band-edge', 'band-middle'] as const)(
		'%s: the right value does what is asked',
		(kind) => {
			for (const seed of SEEDS)
				for (const item of itemsWith(kind, seed)) expect(bandRead(item)).toBe(item.facts['name']);
		},
	);

	it('last slot, footprint and the address of switches are what the rig reads', () => {
		for (const seed of SEEDS) {
			for (const item of itemsWith('last-slot', seed, { levels: ['easy', 'middle'] }))
				expect(reads(item, 'last')).toBe(keyed(item));
			for (const item of itemsWith('footprint', seed, { levels: ['easy'] }))
				expect(reads(item, 'footprint')).toBe(keyed(item));
			for (const item of itemsWith('dip-to-address', seed)) expect(reads(item, 'address')).toBe(keyed(item));
		}
	});

	it('a colour found on the desk lights alone', () => {
		for (const seed of SEEDS) {
			for (const item of itemsWith('desk-slot', seed, { rig: 'two-universes' })) {
				const found = item.bench && reasonsOf(item.bench).find(({ id }) => id === 'slots.colours');
				const slots = (found?.facts['slots'] ?? []) as number[];
				const values = (found?.facts['values'] ?? []) as number[];
				if (!slots.includes(keyed(item))) continue;
				expect(slots.filter((_, i) => values[i] === 255)).toEqual([keyed(item)]);
			}
		}
	});

	it.each(PLAIN_KIND_IDS)('%s: opens, with fixtures of nobody’s too', (kind) => {
		for (const seed of SEEDS) {
			for (const { bench } of itemsWith(kind, seed, { own: [oddProfile(seed)], profiles: ['tallow-6', 'cobble'] }))
				if (bench) expect(reasonsOf(bench).length).toBeGreaterThan(0);
		}
	});
});
