import { describe, expect, it } from 'vitest';
import { keepMatches, keptMatches } from '../../../../src/features/rig-sheet/matches.ts';
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
