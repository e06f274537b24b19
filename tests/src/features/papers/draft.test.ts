import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readRecipe } from '../../../../shared/paper/index.ts';
import { bundledRig } from '../../../../shared/sheet/index.ts';
import {
	changed,
	draftOf,
	FIRST_DRAFT,
	keepDraft,
	keptDraft,
	type PaperDraft,
	readDraft,
} from '../../../../src/features/papers/trainer/draft.ts';
import { asidesIn, KEPT } from '../../../../src/storage/index.ts';
import { runs } from '../../../runs.ts';
import { memory, refuses } from '../../storage/memory.ts';

const sheet = bundledRig('four-in-line');
const pasted = { sheet, name: sheet.name, fixtures: sheet.fixtures.length };

const box = fc.oneof(fc.string({ maxLength: 6 }), fc.nat(700).map(String));
const draft: fc.Arbitrary<PaperDraft> = fc.record({
	version: fc.constantFrom(1 as const, 2 as const),
	title: fc.string({ maxLength: 80 }),
	about: fc.constantFrom('fixtures' as const, 'rig' as const, 'own' as const),
	unseen: fc.constantFrom('', 'en-1'),
	profiles: fc.constantFrom([], ['tallow-6'], ['cobble', 'picket-8']),
	rig: fc.constantFrom('', 'one-wash'),
	pasted: fc.constantFrom(null, pasted),
	topics: fc.constantFrom([], ['levels' as const], ['bands' as const, 'modes' as const]),
	kinds: fc.constantFrom([], ['band-edge' as const]),
	count: box,
	levels: fc.constantFrom([], ['hard' as const], ['easy' as const, 'middle' as const]),
	minutes: box,
	pass: box,
	order: fc.constantFrom('mixed' as const, 'by-topic' as const, 'easy-first' as const),
	feedback: fc.constantFrom('each' as const, 'end' as const),
	own: fc.constant([]),
	seed: fc.nat(1000),
});

test('whatever stands in the boxes is a recipe that the schema takes, or says which box is wrong', () => {
	fc.assert(
		fc.property(draft, (boxes) => {
			const read = readDraft(boxes);
			if (read.recipe) {
				const recipe = readRecipe(read.recipe);
				// taken up again, it asks for the same paper
				expect(readDraft(draftOf(recipe, boxes.seed)).recipe).toEqual(recipe);
			} else {
				expect(Object.keys(read.wrong).length).toBeGreaterThan(0);
				for (const sentence of Object.values(read.wrong)) expect(sentence).toMatch(/^[A-Z].*\.$/);
			}
		}),
		{ numRuns: runs(200) },
	);
	expect(readDraft(FIRST_DRAFT).wrong).toBeNull();
});

test('the boxes come back as they were left; of a damaged one that box alone begins afresh', () => {
	fc.assert(
		fc.property(draft, (boxes) => {
			const { store } = memory();
			keepDraft(store, boxes);
			expect(keptDraft(store)).toEqual(JSON.parse(JSON.stringify(boxes)));
		}),
		{ numRuns: runs(60) },
	);
	const text = JSON.stringify({ ...FIRST_DRAFT, count: 12, title: 'Ours', topics: 'bands', order: 'odd' });
	const { store } = memory({ [KEPT.draft.key]: text });
	const kept = keptDraft(store);
	expect(kept).toEqual({ ...FIRST_DRAFT, title: 'Ours' });
	// all of it was written over with the next change
	expect(asidesIn(store, 'draft')).toMatchObject([{ text }]);
	expect(keptDraft(memory().store)).toEqual(FIRST_DRAFT);
	for (const damaged of ['', '{', 'null', '[]', '"x"']) {
		const device = memory({ [KEPT.draft.key]: damaged });
		expect(keptDraft(device.store)).toEqual(FIRST_DRAFT);
		keepDraft(device.store, FIRST_DRAFT);
		expect(asidesIn(device.store, 'draft')).toMatchObject([{ text: damaged, why: 'damaged' }]);
	}
	expect(keptDraft(refuses)).toEqual(FIRST_DRAFT);
	expect(() => keepDraft(refuses, FIRST_DRAFT)).not.toThrow();
});

// symptom: a quiz put together in an older Prep Bay showed other questions than had been given out; cause: boxes kept before there were
// versions were read as those of the newest
test('boxes kept before there were versions go on setting what they set; the first change takes them to the newest', () => {
	const { version: _, ...before } = { ...FIRST_DRAFT, title: 'Ours' };
	const kept = keptDraft(memory({ [KEPT.draft.key]: JSON.stringify(before) }).store);
	expect(kept).toEqual({ ...before, version: 1 });
	expect(readDraft(kept).recipe?.version).toBe(1);
	expect(changed(kept, { seed: 2 })).toEqual({ ...FIRST_DRAFT, title: 'Ours', seed: 2 });
	expect(readDraft(changed(kept, { count: '5' })).recipe).toMatchObject({ version: FIRST_DRAFT.version, count: 5 });
	// and none of that is damaged
	const device = memory({ [KEPT.draft.key]: JSON.stringify(before) });
	keptDraft(device.store);
	expect(asidesIn(device.store, 'draft')).toEqual([]);
});
