import { describe, expect, it } from 'vitest';
import { DRILL_IDS, makeDrill, markDrill, shortestWay } from '../../../sim/drill/index.ts';
import { FRESH, markedAttempt, progressAfter } from '../../../src/drill/attempt.ts';
import { anySeed, drillLink, readAsked } from '../../../src/drill/link.ts';
import { NO_PROGRESS } from '../../../src/progress/result.ts';
import { drillStore, handsText } from '../../../src/rig/index.ts';

describe('the address of a drill', () => {
	it('is read back as it was written, for every kind', () => {
		for (const kind of DRILL_IDS)
			for (const seed of [0, 7, 2 ** 32 - 1, Number.MAX_SAFE_INTEGER])
				expect(readAsked(drillLink(kind, seed))).toEqual({ is: 'drill', kind, seed });
	});

	it('may leave the seed open', () => {
		expect(readAsked('#kind=defaults')).toEqual({ is: 'any', kind: 'defaults' });
		expect(readAsked('')).toEqual({ is: 'nothing' });
		expect(readAsked('#')).toEqual({ is: 'nothing' });
	});

	it.each([
		'#kind=juggling&seed=1',
		'#kind=address-keys&seed=-1',
		'#kind=address-keys&seed=1.5',
		'#kind=address-keys&seed=9007199254740992',
		'#kind=address-keys&seed=1e3',
		'#kind=address-keys&seed=',
		'#kind=address-keys&seed=1&more=2',
		'#seed=1&kind=address-keys',
		'#kind=constructor',
		'#rig=1.abc',
		'#%',
	])('%s is no drill', (fragment) => {
		expect(readAsked(fragment)).toEqual({ is: 'bad' });
	});

	it('a seed by chance is one that an address can hold, and another than before', () => {
		for (let n = 0; n < 50; n++) {
			const seed = anySeed();
			expect(readAsked(drillLink('defaults', seed))).toEqual({ is: 'drill', kind: 'defaults', seed });
			expect(anySeed(seed)).not.toBe(seed);
		}
	});
});

describe('a drill’s store', () => {
	it('takes what is in hand, and its log is marked', () => {
		const drill = makeDrill('address-dip', 3);
		const store = drillStore(drill);
		for (const event of shortestWay(drill)) {
			if (event.type === 'clock.wait') store.tick(event.ms);
			else expect(store.send(event)).toBe(true);
		}
		expect(store.rig.log.length).toBeGreaterThan(0);
		expect(markDrill(drill, store.rig.log).done).toBe(true);
	});

	it('refuses the rest with a sentence, so that no log is spoilt', () => {
		const drill = makeDrill('address-keys', 3);
		const store = drillStore(drill);
		expect(store.send({ type: 'mains.plug', fixture: 'wash-1', into: 'none' })).toBe(false);
		expect(store.said?.words).toBe('This drill is done by panels and power switches alone.');
		expect(store.slide({ type: 'desk.level', universe: 1, slot: 1, level: 3 })).toBe(false);
		expect(store.rig.log).toEqual([]);
		expect(markDrill(drill, store.rig.log).done).toBe(false);
	});

	it('every hand has its word', () => {
		for (const kind of DRILL_IDS) expect(handsText(makeDrill(kind, 1))).toMatch(/^[a-z ,]+$/);
	});
});

describe('an attempt', () => {
	const drill = makeDrill('loss-setting', 5);
	const wrong = markDrill(drill, []);
	const right = markDrill(drill, shortestWay(drill));

	it('done at the first marking with no hint lengthens the row', () => {
		expect(progressAfter(NO_PROGRESS, drill, right, FRESH, 1).get(drill.kind)).toMatchObject({ done: 1, streak: 1 });
	});

	it('wrong and then right is done, with no row', () => {
		const missed = progressAfter(NO_PROGRESS, drill, wrong, FRESH, 1);
		const after = markedAttempt(FRESH, wrong);
		expect(after).toEqual({ hints: 0, misses: 1, done: false });
		const done = progressAfter(missed, drill, right, after, 2);
		expect(done.get(drill.kind)).toMatchObject({ done: 1, streak: 0, best: { hints: 0 } });
	});

	it('with a hint is done, with the hint beside it and no row', () => {
		const record = progressAfter(NO_PROGRESS, drill, right, { ...FRESH, hints: 2 }, 1).get(drill.kind);
		expect(record).toMatchObject({ done: 1, streak: 0, best: { hints: 2 } });
	});

	it('done twice counts once', () => {
		const once = progressAfter(NO_PROGRESS, drill, right, FRESH, 1);
		const twice = progressAfter(once, drill, right, markedAttempt(FRESH, right), 2);
		expect(twice.get(drill.kind)).toEqual(once.get(drill.kind));
	});

	it('wrong after it was done takes nothing away', () => {
		const once = progressAfter(NO_PROGRESS, drill, right, FRESH, 1);
		expect(progressAfter(once, drill, wrong, markedAttempt(FRESH, right), 2)).toBe(once);
	});
});
