import { describe, expect, it, test } from 'vitest';
import { trainerWords } from '#words/papers/index.ts';
import { InputError } from '../../../shared/error/index.ts';
import {
	type Item,
	KIND_TOPICS,
	type KindId,
	markPaper,
	type PaperLevel,
	type PaperRecipeInput,
	type PaperSources,
	readRecipe,
	setPaper,
	UNSEEN_KIND_IDS,
} from '../../../shared/paper/index.ts';
import { PLAIN_KINDS } from '../../../shared/paper/schedule.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { runs } from '../../runs.ts';
import { CHARTS, unseenGround } from './grounds.ts';
import { wrongWith } from './holds.ts';

const kinds = PLAIN_KINDS.filter(({ id }) => UNSEEN_KIND_IDS.includes(id));
const SOURCES: PaperSources = { kinds: [], practical: () => expect.unreachable(), charts: CHARTS };

const recipe = (more: Partial<PaperRecipeInput> = {}): PaperRecipeInput => ({
	version: 2,
	title: 'On charts',
	count: 26,
	kinds: kinds.map(({ id }) => id),
	unseen: CHARTS.list,
	...more,
});

const fixturesOf = (items: readonly Item[]): string[] => items.map(({ facts }) => String(facts['fixture'] ?? ''));

describe('kinds on a fixture that nobody has seen', () => {
	it.each(kinds)('$id: right by a second way, and by no other answer; every mistake wrong', (kind) => {
		const wrong: string[] = [];
		const count = runs(90, 10_000);
		let seed = 0;
		for (let i = 0; i < count; i++) {
			let ground = unseenGround(seed++);
			while (!kind.fits(ground)) ground = unseenGround(seed++);
			const level = kind.levels[i % kind.levels.length] as PaperLevel;
			const draft = kind.make(ground, makeRandom(seed).fork(kind.id), level);
			const item: Item = { id: `${kind.id}-00000000`, kind: kind.id, topic: KIND_TOPICS[kind.id], level, ...draft };
			wrong.push(...wrongWith(item, ground, { forms: kind.forms, whole: i % 10 === 0, found: new Set() }));
		}
		expect(wrong.slice(0, 3)).toEqual([]);
	});
});

describe('a quiz on them', () => {
	it('asks each question on a fixture of its own, none of the house, and another seed on others', () => {
		const { items } = setPaper(recipe(), 4, SOURCES);
		const others = setPaper(recipe(), 5, SOURCES).items;
		const known = BUNDLED.map(({ name }) => name);
		for (const name of fixturesOf(items)) expect(known).not.toContain(name);
		const ids = (each: readonly Item[]) => each.flatMap(({ bench }) => bench?.profiles.map(({ id }) => id) ?? []);
		expect(new Set(ids(items)).size).toBe(ids(items).length);
		expect(ids(items).length).toBeGreaterThan(15);
		expect(ids(others).filter((id) => ids(items).includes(id))).toEqual([]);
	});

	it('has fixtures of the house by turns where it names some, and on those alone what prints no chart', () => {
		const { items } = setPaper(recipe({ profiles: ['tallow-6'] }), 4, SOURCES);
		const seen = fixturesOf(items).filter((name) => name === 'Tallow 6').length;
		expect(seen).toBeGreaterThanOrEqual(10);
		expect(seen).toBeLessThanOrEqual(13);
		const plain: KindId[] = ['footprint', 'last-slot'];
		const none = setPaper(recipe({ kinds: plain, count: 8, profiles: ['tallow-6'] }), 4, SOURCES);
		expect(new Set(fixturesOf(none.items))).toEqual(new Set(['Tallow 6']));
	});

	it('is the same again, and marked the same, where the list of words is the one it names; else it is refused', () => {
		const paper = setPaper(recipe(), 9, SOURCES);
		expect(setPaper(recipe(), 9, { ...SOURCES }).mark).toBe(paper.mark);
		const [first] = paper.items;
		if (!first) throw new Error('it has questions');
		expect(markPaper(paper, {}, SOURCES).misfits).toEqual([]);
		for (const charts of [undefined, { ...CHARTS, list: 'en-0' }]) {
			const set = () =>
				setPaper(recipe(), 9, { kinds: [], practical: SOURCES.practical, ...(charts ? { charts } : {}) });
			expect(set).toThrow(InputError);
			expect(set).toThrow(/unseen/);
		}
	});

	test('what it is set as stays: a quiz is named by its recipe and seed', () => {
		const marks = kinds.map(({ id }) => [id, setPaper(recipe({ kinds: [id], count: 9 }), 7, SOURCES).mark]);
		expect(Object.fromEntries(marks)).toMatchInlineSnapshot(`
			{
			  "band-edge": "d24c8f2a66fedfa4",
			  "band-middle": "3870169951045624",
			  "band-of-percent": "88f98c2ec06c68f6",
			  "bands-in-order": "d371bc0f9cd03926",
			  "desk-slot": "59274a9e42085114",
			  "fader-passes": "cac70bf1c55a6d6b",
			  "function-values": "8d66a0aa991831e8",
			  "gap-values": "66a81415b326ca17",
			  "match-slots": "2e95eecd30b08fee",
			  "park-value": "08216b690abe595b",
			  "percent-in-band": "9e5433934c7f81b5",
			  "slot-does": "7f64bb73376c20f0",
			  "value-function": "883f65b100ce1ddb",
			}
		`);
	});

	test('a recipe without them reads as it did, key for key', () => {
		const { unseen: _, ...old } = recipe();
		expect(Object.keys(readRecipe(old))).not.toContain('unseen');
		expect(trainerWords.unseen.id).toBe(CHARTS.list);
	});
});
