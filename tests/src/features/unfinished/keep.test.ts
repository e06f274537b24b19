import fc from 'fast-check';
import { expect, it } from 'vitest';
import { makeDrill } from '../../../../sim/drill/index.ts';
import { seedLeft, takeUp } from '../../../../src/features/unfinished/index.ts';
import {
	dropUnfinished,
	keepUnfinished,
	type Stores,
	unfinished,
} from '../../../../src/features/unfinished/unfinished.ts';
import { asidesIn } from '../../../../src/storage/index.ts';
import { runs } from '../../../runs.ts';
import { memory } from '../../storage/memory.ts';

const stores = () => {
	const [tab, device] = [memory(), memory()];
	return { tab, device, stores: { tab: tab.store, device: device.store } satisfies Stores };
};
const drill = makeDrill('address-keys', 7);
const fixture = drill.sheet.fixtures[0]?.id ?? '';
const log = [
	{ type: 'key.tap', fixture, key: 'down' },
	{ type: 'clock.wait', ms: 400 },
] as const;
const FRESH = { hints: 0, misses: 0, done: false };
const now = 1_700_000_000_000;

// an update or a reload in the middle of a drill threw away what was done, and the help that was used
it('finds a drill half done as it was, with the help that was used', () => {
	const { stores: both } = stores();
	keepUnfinished(both, drill, drill.sheet, { log, attempt: { hints: 2, misses: 1, done: false } }, now);
	const left = takeUp(drill, drill, FRESH, both);
	expect(left?.store?.rig.log).toEqual(log);
	expect(left?.attempt).toEqual({ hints: 2, misses: 1, done: false });
	expect(takeUp(makeDrill('address-keys', 8), { kind: drill.kind, seed: 8 }, FRESH, both)).toBeNull();
	dropUnfinished(both, drill);
	expect(takeUp(drill, drill, FRESH, both)).toBeNull();
});

it('finds it after a crash, on the device alone, and its own tab’s before another’s', () => {
	const { tab, device, stores: both } = stores();
	keepUnfinished(both, drill, drill.sheet, { log, attempt: FRESH }, now);
	tab.held.clear();
	expect(takeUp(drill, drill, FRESH, both)?.store?.rig.log).toEqual(log);
	keepUnfinished(
		{ tab: tab.store, device: memory().store },
		drill,
		drill.sheet,
		{ log: log.slice(0, 1), attempt: FRESH },
		now,
	);
	expect(device.held.size).toBe(1);
	expect(takeUp(drill, drill, FRESH, both)?.store?.rig.log).toEqual(log.slice(0, 1));
});

it('knows the seed that was left last under a name, in this tab before the device', () => {
	const { tab, stores: both } = stores();
	expect(seedLeft('lesson-bands', both)).toBeNull();
	const half = { log, attempt: FRESH };
	for (const [seed, at] of [
		[3, 20],
		[4_000_000_007, 30],
		[5, 10],
	] as const)
		keepUnfinished(both, { kind: 'lesson-bands', seed }, drill.sheet, half, now + at);
	keepUnfinished(both, { kind: 'lesson-bands-too', seed: 9 }, drill.sheet, half, now + 40);
	expect(seedLeft('lesson-bands', both)).toBe(4_000_000_007);
	dropUnfinished({ tab: tab.store, device: memory().store }, { kind: 'lesson-bands', seed: 4_000_000_007 });
	expect(seedLeft('lesson-bands', both)).toBe(3);
	tab.held.clear();
	expect(seedLeft('lesson-bands', both)).toBe(4_000_000_007);
});

it('takes up no log on another rig: a version that makes another of the same seed begins anew', () => {
	const { stores: both } = stores();
	keepUnfinished(both, drill, { ...drill.sheet, name: 'another' }, { log, attempt: FRESH }, now);
	expect(takeUp(drill, drill, FRESH, both)).toBeNull();
});

it('keeps help that an earlier version counted, and starts what it did not count', () => {
	const { stores: both } = stores();
	keepUnfinished(both, drill, drill.sheet, { log: [], attempt: { hints: 3, misses: 'many', gone: 1 } }, now);
	expect(takeUp(drill, drill, { ...FRESH, looks: 0 }, both)).toEqual({
		store: null,
		attempt: { hints: 3, misses: 0, done: false, looks: 0 },
	});
});

it('is none where what is kept is damaged, in whatever way', () => {
	fc.assert(
		fc.property(
			fc.oneof(
				fc.string(),
				fc.json(),
				fc.record({ version: fc.constant(1), sheet: fc.string(), log: fc.jsonValue() }).map((it) => JSON.stringify(it)),
			),
			(text) => {
				const { tab, stores: both } = stores();
				tab.held.set(`prep-bay.unfinished.${drill.kind}.${drill.seed}`, text);
				expect(takeUp(drill, drill, FRESH, both)).toBeNull();
			},
		),
		{ numRuns: runs(150) },
	);
	const { stores: both } = stores();
	keepUnfinished(both, drill, drill.sheet, { log: [{ type: 'cable.lift', cable: 'none' }], attempt: FRESH }, now);
	expect(takeUp(drill, drill, FRESH, both)).toBeNull();
	expect(unfinished(both, drill, drill.sheet)).toBeNull();
});

// the next keeping of the same task wrote over it
it('is set aside on the device where it is damaged, in this tab as well', () => {
	const key = `prep-bay.unfinished.${drill.kind}.${drill.seed}`;
	const { tab, device, stores: both } = stores();
	tab.held.set(key, '{"version":1,"lo');
	device.held.set(key, 'nonsense');
	expect(takeUp(drill, drill, FRESH, both)).toBeNull();
	keepUnfinished(both, drill, drill.sheet, { log, attempt: FRESH }, now);
	expect(
		asidesIn(device.store, 'unfinished')
			.map(({ text }) => text)
			.sort(),
	).toEqual(['nonsense', '{"version":1,"lo']);
});

it('of a newer version stays as it is until the task is kept anew, and is set aside then', () => {
	const key = `prep-bay.unfinished.${drill.kind}.${drill.seed}`;
	const { device, stores: both } = stores();
	device.held.set(key, '{"version":2}');
	expect(takeUp(drill, drill, FRESH, both)).toBeNull();
	expect(device.held.get(key)).toBe('{"version":2}');
	keepUnfinished(both, drill, drill.sheet, { log, attempt: FRESH }, now);
	expect(asidesIn(device.store, 'unfinished')).toMatchObject([{ text: '{"version":2}', why: 'newer' }]);
});

it('keeps the last dozen on a device', () => {
	const { device, stores: both } = stores();
	for (let seed = 0; seed < 20; seed++)
		keepUnfinished(both, { kind: drill.kind, seed }, drill.sheet, { log, attempt: FRESH }, now + seed);
	expect(device.held.size).toBe(12);
	expect(
		unfinished({ tab: memory().store, device: device.store }, { kind: drill.kind, seed: 8 }, drill.sheet),
	).not.toBeNull();
	expect(
		unfinished({ tab: memory().store, device: device.store }, { kind: drill.kind, seed: 7 }, drill.sheet),
	).toBeNull();
});
