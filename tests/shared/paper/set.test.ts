import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	FIRST_KIND_IDS,
	groundOf,
	type Item,
	KIND_IDS,
	KIND_TOPICS,
	kindsFor,
	LEVELS,
	MISTAKE_IDS,
	needsRig,
	type PaperRecipeInput,
	PLAIN_KIND_IDS,
	RIG_KIND_IDS,
	readRecipe,
	setPaper,
	TOP_SEED,
	TOPIC_IDS,
	topicsOf,
} from '../../../shared/paper/index.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { RIG_IDS } from '../../../shared/sheet/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { throughJson } from '../json.ts';
import { thrownBy } from '../thrown.ts';
import { oddProfile } from './grounds.ts';

const PLAIN = [...PLAIN_KIND_IDS];
const FIRST = PLAIN.filter((id) => FIRST_KIND_IDS.includes(id));
const base = { version: 1, title: 'Prep night', count: 12, kinds: PLAIN } as const satisfies PaperRecipeInput;

const seeds = fc.integer({ min: 0, max: TOP_SEED });
const recipes: fc.Arbitrary<PaperRecipeInput> = fc.record({
	version: fc.constantFrom(1 as const, 2 as const),
	title: fc.constant('Prep night'),
	count: fc.integer({ min: 1, max: 40 }),
	kinds: fc.subarray(PLAIN, { minLength: 1 }),
	levels: fc.subarray([...LEVELS], { minLength: 1 }),
	profiles: fc.subarray(BUNDLED.map(({ id }) => id)),
	rig: fc.constantFrom(null, ...RIG_IDS),
	own: fc.array(fc.integer({ min: 0, max: 50 }), { maxLength: 1 }).map((numbers) => numbers.map(oddProfile)),
	order: fc.constantFrom('mixed', 'by-topic', 'easy-first'),
});

/** A recipe that sets a paper on its fixtures, whatever it names; null where none of its kinds fits them. */
function fitting(recipe: PaperRecipeInput): PaperRecipeInput | null {
	const read = readRecipe(recipe);
	return kindsFor(groundOf(read)).some(({ id }) => read.kinds.includes(id)) ? recipe : null;
}

const placesOf = (items: readonly Item[]): string[] =>
	items.map(({ topic, kind, level }) => `${topic} ${kind} ${level}`).sort();

describe('a paper', () => {
	it('is the same by the same recipe and seed, and equivalent by another', () => {
		fc.assert(
			fc.property(recipes, seeds, seeds, (recipe, seed, other) => {
				fc.pre(fitting(recipe) !== null);
				const paper = setPaper(recipe, seed);
				const again = setPaper(throughJson(recipe) as PaperRecipeInput, seed);
				expect(again).toEqual(paper);
				expect(throughJson(paper)).toEqual(paper);
				const another = setPaper(recipe, other);
				expect(placesOf(another.items)).toEqual(placesOf(paper.items));
				if (seed !== other) expect(another.mark).not.toBe(paper.mark);
			}),
			{ numRuns: runs(60, 1000) },
		);
	});

	it('has as many questions as asked, each with an id of its own, of the kinds and levels asked', () => {
		fc.assert(
			fc.property(recipes, seeds, (recipe, seed) => {
				fc.pre(fitting(recipe) !== null);
				const { items, recipe: read } = setPaper(recipe, seed);
				expect(items.length).toBe(recipe.count);
				expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
				for (const { id, kind, topic, level } of items) {
					expect(id).toMatch(new RegExp(`^${kind}-[0-9a-f]{8}$`));
					expect(read.kinds).toContain(kind);
					expect(read.levels).toContain(level);
					expect(topic).toBe(KIND_TOPICS[kind]);
				}
			}),
			{ numRuns: runs(60, 1000) },
		);
	});

	it('is set anew the same after others have been: nothing hangs on what was kept', () => {
		const first = throughJson(setPaper(base, 1));
		for (let seed = 100; seed < 120; seed++) setPaper(base, seed);
		expect(setPaper(base, 1)).toEqual(first);
	});

	it('stays what it was: marks of two papers, pinned', () => {
		const first = { ...base, kinds: FIRST };
		expect([setPaper(first, 1).mark, setPaper({ ...first, count: 40, rig: 'mixed-panels' }, 7).mark]).toEqual(PINNED);
	});

	it('takes kinds in turn: none twice before each once, and every level alike', () => {
		const { items } = setPaper({ ...base, kinds: FIRST, count: FIRST.length * 3 }, 3);
		for (const kind of FIRST) {
			const levels = items.filter((item) => item.kind === kind).map(({ level }) => level);
			expect(levels.sort()).toEqual([...LEVELS].sort());
		}
	});

	it('covers every topic it can in a short one', () => {
		const { items } = setPaper({ ...base, count: 5 }, 3);
		expect(new Set(items.map(({ topic }) => topic)).size).toBe(5);
	});

	it('comes in the order asked', () => {
		const byTopic = setPaper({ ...base, count: 30, order: 'by-topic' }, 4).items.map(({ topic }) =>
			TOPIC_IDS.indexOf(topic),
		);
		expect(byTopic).toEqual([...byTopic].sort((a, b) => a - b));
		const easyFirst = setPaper({ ...base, count: 30, order: 'easy-first' }, 4).items.map(({ level }) =>
			LEVELS.indexOf(level),
		);
		expect(easyFirst).toEqual([...easyFirst].sort((a, b) => a - b));
	});

	it('asks on, under ids of their own, where the fixtures have little to ask about', () => {
		const { items } = setPaper({ ...base, profiles: ['cobble'], kinds: ['footprint'], levels: ['easy'], count: 20 }, 5);
		expect(new Set(items.map(({ id }) => id)).size).toBe(20);
	});
});

describe('a paper is refused', () => {
	it.each([
		['paper.needs-rig', { kinds: [...RIG_KIND_IDS] }],
		['paper.needs-rig', { kinds: [] }],
		['paper.empty', { kinds: ['dip-to-address'], profiles: ['tallow-6'] }],
		['paper.profile', { profiles: ['no-such'] }],
		['paper.rig', { rig: 'no-such' }],
		['paper.recipe', { count: 0 }],
		['paper.recipe', { count: 101 }],
		['paper.recipe', { title: ' ' }],
		['paper.recipe', { more: 1 }],
	])('%s', (code, more) => {
		const error = thrownBy(() => setPaper({ ...base, ...more } as PaperRecipeInput, 1));
		expect(error.code).toBe(code);
		expect(errorText(error)).toMatch(/^[A-Z].*\.$/);
	});

	it.each([-1, 0.5, TOP_SEED + 1, Number.NaN])('with seed %s', (seed) => {
		expect(thrownBy(() => setPaper(base, seed)).code).toBe('paper.seed');
	});
});

describe('what can be asked', () => {
	it('whether it takes a rig hangs on the recipe alone', () => {
		expect(needsRig({ version: 2, kinds: [], topics: [] })).toBe(true);
		expect(needsRig({ version: 2, kinds: [], topics: ['levels', 'addresses'] })).toBe(false);
		expect(needsRig({ version: 2, kinds: [], topics: ['care'] })).toBe(true);
		expect(needsRig({ version: 2, kinds: PLAIN, topics: [] })).toBe(false);
		expect(needsRig({ version: 2, kinds: [...PLAIN, 'frame-look'], topics: ['levels'] })).toBe(false);
	});

	it('kinds and topics of a ground', () => {
		const ground = groundOf(readRecipe(base));
		expect(kindsFor(ground).map(({ id }) => id)).toEqual(PLAIN);
		expect(topicsOf(ground)).toEqual([
			'levels',
			'bands',
			'modes',
			'addresses',
			'switches',
			'care',
			'power',
			'lines',
			'light',
		]);
		const wash = groundOf(readRecipe({ ...base, profiles: ['tallow-6'] }));
		expect(topicsOf(wash)).not.toContain('switches');
	});

	it('every id stays what it is', () => {
		expect([KIND_IDS, TOPIC_IDS, LEVELS, MISTAKE_IDS]).toMatchSnapshot();
	});
});

const PINNED = ['bc26226ac8f6c000', '9dc7a0b22dc8cd1c'];
