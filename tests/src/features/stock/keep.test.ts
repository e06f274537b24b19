import { describe, expect, it } from 'vitest';
import { gdtfNames } from '#words/gdtf/index.ts';
import { readArchive, readFixtureType, toProfile } from '../../../../shared/gdtf/index.ts';
import { BUNDLED, isStandIn } from '../../../../shared/profile/index.ts';
import { readSheet } from '../../../../shared/sheet/index.ts';
import {
	blankEntry,
	blankPanel,
	type ChartEntry,
	entryFromFile,
	type PanelEntry,
	type StockEntry,
} from '../../../../shared/stock/index.ts';
import { openRig } from '../../../../sim/rig/index.ts';
import { routes as gdtf } from '../../../../src/features/gdtf/routes.ts';
import { readLink } from '../../../../src/features/rig/index.ts';
import { addFile, addLink, changeStock, linkOf, openStock } from '../../../../src/features/stock/keep.ts';
import { benchAddress } from '../../../../src/features/stock/onBench.ts';
import { readStock } from '../../../../src/features/stock/reading.ts';
import { added, merged, type StockList, stockText } from '../../../../src/features/stock/stock.ts';
import { deflateText, KEPT, toBase64url } from '../../../../src/storage/index.ts';
import { thrownBy } from '../../../shared/thrown.ts';
import { memory } from '../../storage/memory.ts';

const entry = (id: string, changed: number, part: Partial<ChartEntry> = {}): ChartEntry => ({
	...blankEntry(id, `Fixture ${id}`, changed),
	chart: '1 Dimmer\n2 Red',
	...part,
});
const stock = (...entries: StockEntry[]): StockList => new Map(entries.map((each) => [each.id, each]));

describe('stock', () => {
	it('comes back from text, file and link as it was', async () => {
		const ours = stock(entry('own-a', 1), entry('own-b', 2, { beam: 20, feed: 'battery', wattHours: 90 }));
		expect(readStock(stockText(ours))).toEqual({ kept: ours, damaged: {} });
		const fromFile = memory({});
		expect(await addFile(fromFile.store, stockText(ours))).toMatchObject({ is: 'added', count: 2 });
		const fromLink = memory({});
		expect(await addLink(fromLink.store, await linkOf(ours))).toMatchObject({ is: 'added', count: 2 });
		for (const { store } of [fromFile, fromLink]) expect((await openStock(store)).kept).toEqual(ours);
	});

	it('that the first version kept, sent or saved opens: all of it was made from charts', async () => {
		const { kind: _, panel: __, ...old } = entry('own-a', 1, { beam: 20 });
		const text = JSON.stringify({ version: 1, kept: { 'own-a': old } });
		const opened = stock(entry('own-a', 1, { beam: 20 }));
		expect(readStock(text)).toEqual({ kept: opened, damaged: {} });
		expect((await openStock(memory({ [KEPT.stock.key]: text }).store)).kept).toEqual(opened);
		const link = `#stock=${toBase64url(await deflateText(text))}`;
		expect(await addLink(memory({}).store, link)).toMatchObject({ is: 'added', count: 1 });
	});

	it('that the second version kept opens: nobody had written down a panel', async () => {
		const { panel: _, ...old } = entry('own-a', 1, { beam: 20 });
		const text = JSON.stringify({ version: 2, kept: { 'own-a': old } });
		const opened = stock(entry('own-a', 1, { beam: 20 }));
		expect(readStock(text)).toEqual({ kept: opened, damaged: {} });
		const link = `#stock=${toBase64url(await deflateText(text))}`;
		const { store } = memory({});
		expect(await addLink(store, link)).toMatchObject({ is: 'added', count: 1 });
		expect((await openStock(store)).kept).toEqual(opened);
	});

	it('with a panel of its own comes back from text, file, link and bench with that panel', async () => {
		const panel = {
			...blankPanel('knob'),
			keys: [
				{ key: 'left', name: 'TURN L' },
				{ key: 'right', name: 'TURN R' },
				{ key: 'set', name: 'PUSH' },
			],
			menu: 'Address 1-512\nLight comes from: DMX, Static',
			answers: { acts: 'scrolling', rests: 'address' },
		} satisfies PanelEntry;
		const ours = stock(entry('own-a', 1, { panel }));
		expect(readStock(stockText(ours))).toEqual({ kept: ours, damaged: {} });
		const { store } = memory({});
		expect(await addLink(store, await linkOf(ours))).toMatchObject({ is: 'added', count: 1 });
		const [own] = [...(await openStock(store)).kept.values()] as [StockEntry];
		expect(own.panel).toEqual(panel);
		const address = (await benchAddress(own)) ?? '';
		const { sheet } = await readLink(address.slice(address.indexOf('#')));
		const [carried] = readSheet(JSON.parse(JSON.stringify(sheet))).profiles ?? [];
		expect(carried && isStandIn(carried.panel)).toBe(false);
		expect(carried?.panel).toMatchObject({ keys: ['left', 'right', 'set'], printed: { set: 'PUSH' } });
	});

	it('with a panel that is none sets that fixture aside, and it alone', () => {
		const good = entry('own-a', 1);
		for (const panel of [
			{},
			{ ...blankPanel('keys'), way: 'wheel' },
			{ ...blankPanel('keys'), answers: { acts: 'x' } },
		]) {
			const text = JSON.stringify({
				version: 3,
				kept: { 'own-a': good, 'own-b': { ...entry('own-b', 1), panel } },
			});
			const { kept, damaged } = readStock(text);
			expect([[...kept.keys()], Object.keys(damaged)]).toEqual([['own-a'], ['own-b']]);
		}
	});

	it('holds a fixture from a GDTF file as it was read, through text, file, link and the bench', async () => {
		for (const profile of BUNDLED) {
			const { bytes } = gdtf.write({ profile });
			const read = toProfile(readFixtureType(readArchive(bytes).description), gdtfNames);
			const ours = stock(entryFromFile('own-f', read, 3));
			expect(readStock(stockText(ours))).toEqual({ kept: ours, damaged: {} });
			const { store } = memory({});
			expect(await addLink(store, await linkOf(ours))).toMatchObject({ is: 'added', count: 1 });
			const [own] = [...(await openStock(store)).kept.values()] as [StockEntry];
			const address = (await benchAddress(own)) ?? '';
			const { sheet } = await readLink(address.slice(address.indexOf('#')));
			const [carried] = readSheet(JSON.parse(JSON.stringify(sheet))).profiles ?? [];
			expect(carried && isStandIn(carried.panel)).toBe(true);
			expect(carried?.modes).toEqual(read.profile.modes);
			const rig = openRig(sheet);
			rig.wait(2000);
			expect(rig.look(sheet.fixtures[0]?.id ?? '').light.whole.words).not.toBe('');
		}
	});

	it('with a profile that does not fit itself sets that fixture aside, and it alone', () => {
		const { bytes } = gdtf.write({ profile: BUNDLED[0] as (typeof BUNDLED)[number] });
		const good = entryFromFile('own-f', toProfile(readFixtureType(readArchive(bytes).description), gdtfNames), 3);
		const bad = {
			...good,
			id: 'own-g',
			profile: { ...good.profile, defaults: { ...good.profile.defaults, mode: 'no' } },
		};
		const { kept, damaged } = readStock(stockText(new Map([good, bad].map((each) => [each.id, each]))));
		expect([[...kept.keys()], Object.keys(damaged)]).toEqual([['own-f'], ['own-g']]);
	});

	it('from elsewhere never writes over one’s own: the same is passed over, another of the same id gets its own', () => {
		const own = stock(entry('own-a', 1));
		expect(added(own, stock(entry('own-a', 9)))).toEqual({ stock: own, count: 0 });
		const both = added(own, stock(entry('own-a', 9, { chart: '1 Green' })), () => 'own-new');
		expect(both.count).toBe(1);
		expect([...both.stock.values()].map((each) => [each.id, each.kind === 'chart' && each.chart])).toEqual([
			['own-a', '1 Dimmer\n2 Red'],
			['own-new', '1 Green'],
		]);
	});

	it('in two versions keeps what was changed last', () => {
		const one = stock(entry('own-a', 5, { name: 'New' }), entry('own-b', 1));
		const other = stock(entry('own-a', 4, { name: 'Old' }), entry('own-c', 1));
		expect([...merged(one, other).values()].map(({ name }) => name)).toEqual(['New', 'Fixture own-b', 'Fixture own-c']);
	});

	it('that is damaged in part loses nothing else, and sets the damaged part aside', async () => {
		const text = JSON.stringify({ version: 2, kept: { 'own-a': entry('own-a', 1), 'own-b': { id: 'own-b' } } });
		const { store } = memory({ [KEPT.stock.key]: text });
		const found = await openStock(store);
		expect(found.damaged).toBe(1);
		expect([...found.kept.keys()]).toEqual(['own-a']);
		expect((await openStock(store)).damaged).toBe(null);
	});

	it('that cannot be read, or is from a newer version, says so and changes nothing', async () => {
		expect(thrownBy(() => readStock('nonsense')).code).toBe('stock.damaged');
		expect(thrownBy(() => readStock('{"version":9,"kept":{}}')).code).toBe('stock.newer');
		const { store } = memory({});
		await changeStock(store, () => stock(entry('own-a', 1)));
		for (const text of ['', '[]', '{"version":1}'])
			expect(await addFile(store, text)).toMatchObject({ is: 'refused', because: { code: 'stock.damaged' } });
		expect(await addFile(store, '{"version":9,"kept":{}}')).toMatchObject({
			is: 'refused',
			because: { code: 'stock.newer' },
		});
		expect(await addLink(store, '#stock=!!')).toMatchObject({ is: 'refused', because: { code: 'stock.damaged' } });
		expect((await openStock(store)).kept.size).toBe(1);
	});

	it('goes onto a bench, lit, carried by the sheet', async () => {
		const address = (await benchAddress(entry('own-a', 1))) ?? '';
		const { sheet } = await readLink(address.slice(address.indexOf('#')));
		expect(readSheet(JSON.parse(JSON.stringify(sheet))).profiles).toHaveLength(1);
		const rig = openRig(sheet);
		rig.wait(2000);
		const id = sheet.fixtures[0]?.id ?? '';
		expect(rig.look(id).light.whole.words).toContain('red');
		expect(await benchAddress(entry('own-a', 1, { chart: '1 Red 9-0 off' }))).toBe(null);
	});
});
