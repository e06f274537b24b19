import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PageText, stillOpen } from '../../../../shared/stock/index.ts';
import { runs } from '../../../runs.ts';

/** A page of lines, with a doubt on each of some of them, lines from 1. */
const page = (lines: readonly string[], doubted: readonly number[]): PageText => ({
	text: lines.join('\n'),
	doubts: doubted.map((line) => ({
		code: 'which-row',
		place: { line, column: 1, length: 1 },
		facts: { text: `${line}` },
	})),
});
/** Which doubt is open at which line. */
const open = (read: PageText, now: readonly string[]): string[] =>
	stillOpen(read, now.join('\n')).map(({ facts, place }) => `${(facts as { text: string }).text} at ${place.line}`);

describe('doubts of a text that a person goes on with', () => {
	test('on lines that say the same stay each at its own', () => {
		const read = page(['a', 'X', 'b', 'X', 'c'], [2, 4]);
		expect(open(read, ['A', 'X', 'b', 'X', 'C'])).toEqual(['2 at 2', '4 at 4']);
		expect(open(read, ['A', 'X', 'new', 'b', 'X', 'C'])).toEqual(['2 at 2', '4 at 5']);
		expect(open(read, ['A', 'put right', 'b', 'X', 'C'])).toEqual(['4 at 4']);
	});

	test('stay where it cannot be told which of two lines was in doubt', () => {
		expect(open(page(['a', 'X', 'X'], [3]), ['A', 'X'])).toEqual(['3 at 2']);
		expect(open(page(['X', 'b', 'X', 'b', 'X'], [3]), ['X'])).toEqual(['3 at 1']);
	});

	test('follow a line that is moved past others, and are settled where it is gone', () => {
		const read = page(['a', 'b', 'c', 'd'], [1]);
		expect(open(read, ['b', 'c', 'd', 'a'])).toEqual(['1 at 4']);
		expect(open(read, ['b', 'c', 'd'])).toEqual([]);
	});

	test('stay at every line that was left as it was, whatever was changed, put in or taken out around it', () => {
		const edit = fc.constantFrom('left', 'left', 'left', 'changed', 'gone', 'line put before');
		const lines = fc.array(fc.record({ text: fc.constantFrom('X', 'Y', ''), isDoubted: fc.boolean(), edit }), {
			maxLength: 12,
		});
		fc.assert(
			fc.property(lines, (all) => {
				const now: string[] = [];
				const due: string[] = [];
				for (const [i, { text, isDoubted, edit: what }] of all.entries()) {
					if (what === 'gone') continue;
					if (what !== 'left') now.push(`new ${i}`);
					if (what === 'changed') continue;
					now.push(text);
					if (isDoubted) due.push(`${i + 1} at ${now.length}`);
				}
				const doubted = all.flatMap(({ isDoubted }, i) => (isDoubted ? [i + 1] : []));
				const read = page(
					all.map(({ text }) => text),
					doubted,
				);
				const found = open(read, now);
				expect(found).toEqual(expect.arrayContaining(due));
				// none is doubled as long as no line is taken out or changed
				if (all.every(({ edit: what }) => what === 'left' || what === 'line put before')) expect(found).toEqual(due);
			}),
			{ numRuns: runs(500) },
		);
	});
});
