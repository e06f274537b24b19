import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keyLetters } from '../../../../src/features/papers/print/Head.tsx';
import { papersWork as work } from '../../../../src/features/papers/routes.ts';
import { runs } from '../../../runs.ts';

// Symptom: the printed key of 'put them in order' had no letters, so it could not be laid beside the sheet. Cause: letters were
// looked up in the order they stand, which is no order's answer, and so left out.

test('the key of a printed question names what is right by the letters printed with it', async () => {
	const forms = new Set<string>();
	await fc.assert(
		fc.asyncProperty(fc.nat(0xffffffff), async (seed) => {
			const ref = await work.set({ recipe: { version: 1, title: 'Friday', count: 30 }, seed });
			const { items } = await work.paper(ref);
			const keys = await work.keys(ref);
			for (const [at, { ask }] of ref.view.questions.entries()) {
				const letters = keyLetters(ask, keys[at]?.rightIds ?? []);
				const key = items[at]?.key;
				const printed = ask.form === 'match' ? ask.right : 'options' in ask ? ask.options : [];
				// the letters read back as who lays the key beside the sheet does
				const read = letters.map((letter) => printed['ABCDEFGHIJKLMNOPQRSTUVWXYZ'.indexOf(letter)]?.id);
				if (key?.form === 'order') expect(read).toEqual(key.right);
				else if (key?.form === 'match' && ask.form === 'match')
					expect(read).toEqual(ask.left.map(({ id }) => key.right[id]));
				else if (key?.form === 'several') expect(new Set(read)).toEqual(new Set(key.right));
				else if (key?.form === 'one') expect(read).toEqual([key.right]);
				else expect(letters).toEqual([]);
				forms.add(ask.form);
			}
		}),
		{ numRuns: runs(4) },
	);
	expect(forms.size).toBe(7);
});
