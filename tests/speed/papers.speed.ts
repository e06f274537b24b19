import { expect, test } from 'vitest';
import { analyse, markPaper, setPaper } from '../../shared/paper/index.ts';
import { settingOnce } from '../../src/features/papers/engine.ts';
import {
	classCsv,
	readHandedIn,
	resultFile,
	resultFragment,
	sortResults,
} from '../../src/features/papers/exchange/index.ts';
import { plainPaper, sat } from '../src/features/papers/exchange/class.ts';

/** The bar: so many results of 40 questions read, marked and analysed, ms. */
const BAR = { results: 500, ms: 1000 };

const paper = plainPaper(2026);

/** As a trainer meets them: all in one paste. Links and files by turns. */
async function handedIn(count: number, how: 'links' | 'files'): Promise<string> {
	const results = Array.from({ length: count }, (_, i) => sat(paper, i + 1));
	if (how === 'files') return results.map(resultFile).join('');
	return (await Promise.all(results.map((result) => resultFragment(result, paper)))).join('\n');
}

test('a class: read, marked, laid out and analysed', async () => {
	const rows = [];
	let worst = 0;
	for (const how of ['links', 'files'] as const) {
		for (const count of [50, 100, BAR.results, 1000, 5000]) {
			const text = await handedIn(count, how);
			let best = Number.POSITIVE_INFINITY;
			let row = {};
			for (let run = 0; run < (count > 1000 ? 1 : 2); run++) {
				const set = settingOnce(setPaper);
				const from = performance.now();
				const handed = await readHandedIn(text, set);
				const read = performance.now();
				const pile = handed.filter((each) => each.is === 'result');
				const { tables } = await sortResults(pile, { set, mark: markPaper });
				const marked = performance.now();
				const found = tables.map((table) => analyse(table.rows.map(({ mark }) => mark)));
				const done = performance.now();
				expect([pile.length, tables[0]?.rows.length, found.length]).toEqual([count, count, 1]);
				const csv = performance.now();
				if (tables[0]) classCsv(tables[0]);
				const written = performance.now();
				if (done - from >= best) continue;
				best = done - from;
				row = {
					'read ms': Math.round(read - from),
					'mark and lay out ms': Math.round(marked - read),
					'analyse ms': Math.round(done - marked),
					'all ms': Math.round(done - from),
					'ms each': ((done - from) / count).toFixed(2),
					'CSV ms': Math.round(written - csv),
				};
			}
			rows.push({ results: count, as: how, 'text kB': Math.round(text.length / 1000), ...row });
			if (count === BAR.results) worst = Math.max(worst, best);
		}
	}
	console.table(rows);
	expect(worst).toBeLessThan(BAR.ms);
});
