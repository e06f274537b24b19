import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readRecipe } from '../../../../shared/paper/index.ts';
import { bundledRig } from '../../../../shared/sheet/index.ts';
import { type Draft, draftOf, FIRST_DRAFT, readDraft } from '../../../../src/features/papers/trainer/draft.ts';
import { keepDraft, keptDraft } from '../../../../src/features/papers/trainer/keepDraft.ts';
import { runs } from '../../../runs.ts';

const sheet = bundledRig('four-in-line');
const pasted = { sheet, name: sheet.name, fixtures: sheet.fixtures.length };

const box = fc.oneof(fc.string({ maxLength: 6 }), fc.nat(700).map(String));
const draft: fc.Arbitrary<Draft> = fc.record({
	title: fc.string({ maxLength: 80 }),
	about: fc.constantFrom('fixtures' as const, 'rig' as const, 'own' as const),
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

const memory = (text: string | null) => {
	let held = text;
	return () => ({
		getItem: () => held,
		setItem: (_: string, next: string) => {
			held = next;
		},
	});
};

test('the boxes come back as they were left; of a damaged one that box alone begins afresh', () => {
	fc.assert(
		fc.property(draft, (boxes) => {
			const store = memory(null);
			keepDraft(store, boxes);
			expect(keptDraft(store)).toEqual(JSON.parse(JSON.stringify(boxes)));
		}),
		{ numRuns: runs(60) },
	);
	const kept = keptDraft(
		memory(JSON.stringify({ ...FIRST_DRAFT, count: 12, title: 'Ours', topics: 'bands', order: 'odd' })),
	);
	expect(kept).toEqual({ ...FIRST_DRAFT, title: 'Ours' });
	for (const text of [null, '', '{', 'null', '[]', '"x"']) expect(keptDraft(memory(text))).toEqual(FIRST_DRAFT);
	const refused = () => {
		throw new Error('refused');
	};
	expect(keptDraft(refused)).toEqual(FIRST_DRAFT);
	expect(() => keepDraft(refused, FIRST_DRAFT)).not.toThrow();
});
