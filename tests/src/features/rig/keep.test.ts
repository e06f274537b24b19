import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	asideCount,
	asideIdOf,
	asideList,
	asideNameOf,
	asideText,
	isKept,
	keep,
	putAside,
	readText,
	setKeptAside,
	takePlace,
	textKept,
} from '../../../../src/features/rig/index.ts';
import { dropText, KEPT } from '../../../../src/storage/index.ts';
import { runs } from '../../../runs.ts';
import { memory, refuses } from '../../storage/memory.ts';
import { deeds, pair } from './sheets.ts';

const KEY = KEPT.bench.key;
const now = 1_700_000_000_000;
const bench = (name: string) => ({ sheet: { ...pair, name }, log: [] });
const nameIn = (text: string | null): string =>
	(JSON.parse(text ?? 'null') as { kept: [{ name: string }] }).kept[0].name;

describe('a bench kept on the device', () => {
	it('is found again as it was', async () => {
		await fc.assert(
			fc.asyncProperty(deeds(), async (log) => {
				const { store } = memory();
				expect(keep(store, { sheet: pair, log }, takePlace(), { now })).toBe('kept');
				expect(await readText(textKept(store) ?? '')).toEqual({ is: 'bench', kept: { sheet: pair, log } });
			}),
			{ numRuns: runs(40) },
		);
	});

	it('is told to be damaged in any way, and set aside whole', async () => {
		const good = memory();
		keep(good.store, { sheet: pair, log: [] }, takePlace(), { now });
		const text = good.held.get(KEY) ?? '';
		await fc.assert(
			fc.asyncProperty(
				fc.oneof(
					fc.string(),
					fc.nat(text.length - 1).map((length) => text.slice(0, length)),
					fc.nat(text.length - 1).map((at) => `${text.slice(0, at)}\u0000${text.slice(at + 1)}`),
					fc.constantFrom('null', '3', '[]', '{}', '{"version":"2","kept":[]}', '{"version":1,"kept":[{},[]]}'),
				),
				async (damaged) => {
					const { held, store } = memory({ [KEY]: damaged });
					const found = await readText(damaged);
					// a change inside a name can leave it readable
					if (found.is === 'bench') return;
					expect(found.is).toBe('damaged');
					setKeptAside(store, damaged, now);
					expect(held.has(KEY)).toBe(false);
					const [aside] = asideList(store);
					expect(aside).toMatchObject({ why: 'damaged', at: now });
					expect(asideText(store, aside?.id ?? '')).toBe(damaged);
				},
			),
			{ numRuns: runs(150) },
		);
	});

	it('is done without where the store refuses', () => {
		expect(keep(refuses, bench('x'), takePlace(), { now })).toBe('refused');
		expect(isKept(refuses)).toBe(false);
		expect(putAside(refuses, '{}', 'tab', now)).toBeNull();
		expect([asideCount(refuses), asideList(refuses), asideText(refuses, 'x')]).toEqual([0, [], null]);
		expect(() => setKeptAside(refuses, 'x', now)).not.toThrow();
	});

	// a bench of a newer version was set aside as damaged, and the next one set aside took its place for good
	it('of a newer version is told as such, and stays whole when another is kept', async () => {
		const newer = '{"version":2,"kept":{"benches":[]},"more":true}';
		expect(await readText(newer)).toEqual({ is: 'newer' });
		const { store } = memory({ [KEY]: newer });
		expect(keep(store, bench('mine'), takePlace(), { now })).toBe('aside');
		expect(asideList(store)).toMatchObject([{ isNewer: true, about: null }]);
		expect(asideText(store, asideIdOf(asideNameOf(newer)))).toBe(newer);
	});

	// a bench left running for months of its own time could not be read again, and was called damaged
	it('is no damage where its clock ran for months', async () => {
		const log = [{ type: 'clock.wait' as const, ms: 9_000_000_000 }];
		const kept = (text: string) => JSON.stringify({ version: 1, kept: [pair, JSON.parse(text)] });
		expect((await readText(kept(JSON.stringify(log)))).is).toBe('bench');
		const { store } = memory();
		keep(store, { sheet: pair, log }, takePlace(), { now });
		expect((await readText(textKept(store) ?? '')).is).toBe('bench');
	});
});

describe('two tabs', () => {
	// two tabs wrote under one key without a look at what stood there: who left last threw the other's work away
	it('never lose a bench, in whatever order they keep theirs', () => {
		fc.assert(
			fc.property(fc.array(fc.nat(2), { minLength: 1, maxLength: 20 }), (turns) => {
				const { store } = memory();
				const tabs = ['one', 'two', 'three'].map((name) => ({ name, place: takePlace(), last: '' }));
				turns.forEach((which, turn) => {
					const tab = tabs[which];
					if (!tab) return;
					tab.last = `${tab.name} ${turn}`;
					expect(keep(store, bench(tab.last), tab.place, { now: now + turn })).toMatch(/kept|aside/);
				});
				const kept = [textKept(store), ...asideList(store).map(({ id }) => asideText(store, id))].map(nameIn);
				const wanted = tabs.map(({ last }) => last).filter((last) => last !== '');
				// each tab's latest, and each once
				expect(kept.sort()).toEqual(wanted.sort());
			}),
			{ numRuns: runs(100) },
		);
	});

	it('going on from the same bench both have theirs kept', () => {
		const { store } = memory();
		keep(store, bench('before'), takePlace(), { now });
		const [one, two] = [takePlace(textKept(store)), takePlace(textKept(store))];
		expect(keep(store, bench('one'), one, { now })).toBe('kept');
		expect(keep(store, bench('two'), two, { now })).toBe('aside');
		expect(nameIn(textKept(store))).toBe('two');
		expect(asideList(store).map(({ about }) => about?.name)).toEqual(['one']);
	});

	it('with no room for both leave what stands there as it is', () => {
		const { store } = memory();
		keep(store, bench('one'), takePlace(), { now });
		const text = textKept(store) ?? '';
		const full = memory({ [KEY]: text }, text.length + KEY.length + 20);
		expect(keep(full.store, bench('two'), takePlace(), { now })).toBe('full');
		expect([...full.held]).toEqual([[KEY, text]]);
		// room for one more, not for three copies: it is moved
		const tight = memory({ [KEY]: text }, 2.4 * text.length + 300);
		expect(keep(tight.store, bench('two'), takePlace(), { now })).toBe('aside');
		expect(asideList(tight.store)).toHaveLength(1);
	});
});

describe('benches set aside', () => {
	it('are several, the latest first, and those of earlier versions are among them', () => {
		const old = { version: 1, kept: [pair, []] };
		const { store } = memory({
			'prep-bay.bench.damaged': '{"version":1,"ke',
			'prep-bay.bench.before-link': JSON.stringify(old),
			'prep-bay.progress': '{}',
		});
		for (const [i, name] of ['a', 'b', 'c'].entries())
			putAside(store, JSON.stringify({ version: 1, kept: [{ ...pair, name }, []] }), 'link', now + i);
		expect(asideCount(store)).toBe(5);
		expect(asideList(store).map(({ about, at }) => [about?.name, at])).toEqual([
			['c', now + 2],
			['b', now + 1],
			['a', now],
			[undefined, null],
			['Lantern Row Hall', null],
		]);
		expect(asideText(store, 'prep-bay.bench.before-link')).toBe(JSON.stringify(old));
		dropText(store, 'prep-bay.bench.before-link');
		expect(asideCount(store)).toBe(4);
	});

	it('of others, from links and never touched, are eight at most; one’s own stay', () => {
		const { store } = memory();
		for (let i = 0; i < 30; i++) {
			const theirs = i % 2 === 0 ? { theirs: true } : {};
			putAside(
				store,
				JSON.stringify({ version: 1, kept: [{ ...pair, name: `${i}` }, []], ...theirs }),
				'link',
				now + i,
			);
		}
		const list = asideList(store);
		expect(list.filter(({ isTheirs }) => isTheirs).map(({ about }) => about?.name)).toEqual(
			[28, 26, 24, 22, 20, 18, 16, 14].map(String),
		);
		expect(list.filter(({ isTheirs }) => !isTheirs)).toHaveLength(15);
	});

	it('are listed whatever stands there', () => {
		fc.assert(
			fc.property(fc.oneof(fc.string(), fc.json()), fc.oneof(fc.string(), fc.json()), (whole, text) => {
				const { store } = memory({ 'prep-bay.bench.aside.x': whole });
				putAside(store, text, 'tab', now);
				expect(asideList(store)).toHaveLength(2);
				expect(asideText(store, asideIdOf(asideNameOf(text)))).toBe(text);
			}),
			{ numRuns: runs(150) },
		);
	});
});
