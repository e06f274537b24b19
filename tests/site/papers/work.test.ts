import { expect, test } from 'vitest';
import { papersWork as work } from '../../../src/papers/work.ts';

const recipe = { version: 1, title: 'Wednesday', count: 10 } as const;

test('sets a paper in words', async () => {
	const opened = await work.set({ recipe, seed: 1 });
	expect(opened.view.questions).toHaveLength(10);
	const keys = await work.keys(opened);
	console.log(
		opened.view.questions.map((q) => [q.kind, q.ask.form, q.text, q.chart]),
		keys,
	);
});
