import { describe, expect, it } from 'vitest';
import { keepColumns, keepMatches, keptColumns, keptMatches } from '../../../../src/features/rig-sheet/matches.ts';
import { asidesIn, type BrowserStore, KEPT } from '../../../../src/storage/index.ts';
import { memory } from '../../storage/memory.ts';

const { key } = KEPT.matches;
const picks = { types: { 'a.gdtf': 'picket-8', '': 'tallow-6' }, modes: { 'picket-8/Odd': 'full' } };
const kept = { types: { 'a.gdtf': 'picket-8' }, modes: picks.modes };

describe('what was picked for files', () => {
	it('is kept, but for fixtures that name no kind', () => {
		const { store } = memory();
		keepMatches(store, picks, 5);
		expect(keptMatches(store)).toEqual(kept);
		expect(asidesIn(store)).toEqual([]);
	});

	it.each(['{"version":1,"types', 'nothing', '[]'])(
		'goes in the place of %j only once that is set aside',
		(damaged) => {
			const { store } = memory({ [key]: damaged });
			keepMatches(store, picks, 5);
			expect(keptMatches(store)).toEqual(kept);
			expect(asidesIn(store)).toMatchObject([{ of: 'matches', why: 'damaged', at: 5, text: damaged }]);
		},
	);

	it('is not kept where what is damaged there cannot be set aside', () => {
		const { held, store } = memory({ [key]: 'nothing' });
		const full: BrowserStore = () => ({
			...store(),
			setItem(at, text) {
				if (at !== key) throw new DOMException('full', 'QuotaExceededError');
				held.set(at, text);
			},
		});
		keepMatches(full, picks, 5);
		expect(held.get(key)).toBe('nothing');
	});

	it('leaves those of a newer version', () => {
		const newer = JSON.stringify({ version: KEPT.matches.version + 1 });
		const { held, store } = memory({ [key]: newer });
		keepMatches(store, picks, 5);
		expect(held.get(key)).toBe(newer);
	});
});

describe('what a list’s columns hold', () => {
	const odd = ['Was', 'Lampe', 'Nr.', ''];
	const fields = ['name', 'type', null, 'address'] as const;

	it('is known again by the headings, however they are written, beside what was picked for files', () => {
		const { store } = memory();
		keepMatches(store, picks, 5);
		keepColumns(store, odd, fields, 6);
		expect(keptColumns(store, ['was', ' LAMPE', 'nr', ''])).toEqual(fields);
		expect(keptMatches(store)).toEqual(kept);
		keepMatches(store, picks, 7);
		expect(keptColumns(store, odd)).toEqual(fields);
		expect(keptColumns(store, odd.slice(0, 3))).toBeNull();
		expect(keptColumns(store, ['', '', '', ''])).toBeNull();
		expect(keptColumns(store, ['__proto__'])).toBeNull();
	});

	it('is bounded: the latest lists stay, and headings beyond all measure are not kept', () => {
		const { held, store } = memory();
		for (let i = 0; i < 60; i++) keepColumns(store, [`list ${i}`], ['type'], i);
		expect(keptColumns(store, ['list 9'])).toBeNull();
		expect(keptColumns(store, ['list 10'])).toEqual(['type']);
		keepColumns(store, ['x'.repeat(401)], ['type'], 61);
		expect(held.get(key)?.length).toBeLessThan(2000);
	});

	it('goes in the place of what is damaged only once that is set aside, and never twice for one field', () => {
		const { store } = memory({ [key]: '{"version":1,"col' });
		expect(keptColumns(store, odd)).toBeNull();
		keepColumns(store, odd, fields, 5);
		expect(keptColumns(store, odd)).toEqual(fields);
		expect(asidesIn(store)).toMatchObject([{ of: 'matches', why: 'damaged' }]);
		const twice = memory({ [key]: JSON.stringify({ version: 1, columns: { 'a\tb\tc': 'type,type,gone', d: 5 } }) });
		expect(keptColumns(twice.store, ['a', 'b', 'c'])).toEqual(['type', null, null]);
		expect(keptColumns(twice.store, ['d'])).toBeNull();
	});
});
