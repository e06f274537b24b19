import { describe, expect, it } from 'vitest';
import { type Answers, markPaper, setPaper } from '../../../../../shared/paper/index.ts';
import { settingOnce } from '../../../../../src/features/papers/engine.ts';
import { classCsv, type PaperResult, sortResults } from '../../../../../src/features/papers/exchange/index.ts';
import { plainPaper, rightAnswer, sat } from './class.ts';

const set = settingOnce(setPaper);
const paper = plainPaper(31, 10);
const other = plainPaper(32, 10);
const by = { set, mark: markPaper };

/** A result that claims what its answers come to. */
const honest = (result: PaperResult, of = paper): PaperResult => ({
	...result,
	claimed: markPaper(of, result.answers).score,
});
const whole = (...results: PaperResult[]) => results.map((result) => ({ result, whole: true }));

/** The same, sat an hour later: two at one time are two people's. */
const hourLater = (result: PaperResult): PaperResult => ({
	...result,
	started: (result.started ?? 0) + 3_600_000,
	ended: (result.ended ?? 0) + 3_600_000,
});

describe('a pile of results', () => {
	it('is sorted by paper, by name and by try; the same attempt counts once', async () => {
		const [a, b, c, d] = [
			sat(paper, 1, 'Bo'),
			sat(paper, 2, ' bo '),
			sat(paper, 3, 'Abe 10'),
			sat(paper, 4, 'Abe 9'),
		].map((each, at) => honest(at === 1 ? hourLater(each) : each)) as [
			PaperResult,
			PaperResult,
			PaperResult,
			PaperResult,
		];
		const e = honest(sat(other, 5, 'Bo'), other);
		const sorted = await sortResults(whole(b, a, b, c, d, e), by);
		expect(sorted.duplicates).toBe(1);
		expect(sorted.unset).toEqual([]);
		expect(sorted.tables.map((table) => table.paper.mark)).toEqual([paper.mark, other.mark]);
		expect(sorted.tables[0]?.rows.map(({ name, attemptNo }) => [name, attemptNo])).toEqual([
			['Abe 9', 1],
			['Abe 10', 1],
			['Bo', 1],
			[' bo ', 2],
		]);
		expect(sorted.tables[1]?.rows[0]).toMatchObject({ name: 'Bo', attemptNo: 1, flags: [] });
	});

	it('goes by the name that the trainer typed; those with none are never taken for one person', async () => {
		const [a, b, c] = [sat(paper, 1, ''), sat(paper, 2, ''), hourLater(sat(paper, 3, 'Cy'))].map((each) =>
			honest(each),
		) as [PaperResult, PaperResult, PaperResult];
		const names = [{ version: 1 as const, attempt: a.attempt, name: 'Cy' }];
		const { tables } = await sortResults(whole(c, b, a), { ...by, names });
		expect(tables[0]?.rows.map(({ name, attemptNo }) => [name, attemptNo])).toEqual([
			['', 1],
			['Cy', 1],
			['Cy', 2],
		]);
	});

	it('flags a score, a paper and answers that were changed, and marks by the answers', async () => {
		const answers: Answers = Object.fromEntries(paper.items.map((item) => [item.id, rightAnswer(item)]));
		const full = honest({ ...sat(paper, 1), answers });
		const less: Answers = Object.fromEntries(Object.entries(answers).slice(1));
		const first = paper.items[0]?.id ?? '';
		const results: [PaperResult, boolean, string[]][] = [
			[full, true, []],
			[{ ...full, claimed: 3, attempt: '1'.repeat(16) }, true, ['score-differs']],
			[{ ...full, answers: less, attempt: '2'.repeat(16) }, true, ['score-differs']],
			[{ ...full, paper: '0'.repeat(16), attempt: '3'.repeat(16) }, true, ['paper-altered']],
			[{ ...full, attempt: '4'.repeat(16) }, false, ['changed-after']],
			[
				{ ...full, answers: { ...less, [first]: { form: 'practical', log: [] } }, attempt: '5'.repeat(16) },
				true,
				['answer-form', 'score-differs'],
			],
			[
				{
					...full,
					answers: { ...answers, 'footprint-00000000': { form: 'number', value: 1 } },
					attempt: '6'.repeat(16),
				},
				true,
				['unknown-item'],
			],
		];
		const { tables } = await sortResults(
			results.map(([result, isWhole]) => ({ result, whole: isWhole })),
			by,
		);
		const rows = new Map(tables.flatMap((table) => table.rows.map((row) => [row.taken.result.attempt, row])));
		for (const [result, , codes] of results) {
			const row = rows.get(result.attempt);
			expect(row?.flags.map(({ code }) => code)).toEqual(codes);
			expect(row?.mark.score).toBe(
				'answers' in result && Object.keys(result.answers).length < 10 ? 9 : row?.mark.score,
			);
			for (const { sentence } of row?.flags ?? []) expect(sentence).toMatch(/^[A-Z].*\.$/s);
		}
	});

	it('tells by themselves the results whose paper cannot be set', async () => {
		const rig = { ...sat(paper, 9), recipe: { ...paper.recipe, kinds: ['on-the-bench' as const] } };
		const { tables, unset } = await sortResults(whole(rig, honest(sat(paper, 10))), by);
		expect(tables).toHaveLength(1);
		expect(unset.map(({ flag }) => flag.code)).toEqual(['not-set']);
	});
});

describe('the class table as CSV', () => {
	const NAMES = [
		'=1+1',
		'+44',
		'-3',
		'@sum',
		'\tx',
		' =cmd()',
		'Plain',
		'A "quoted", one',
		'two\r\nlines',
		"O'Bree",
		'',
	];

	/** Fields by line, read by RFC 4180, section 2 (read): quotes doubled inside quotes, CRLF between lines. */
	function readCsv(text: string): string[][] {
		const lines: string[][] = [[]];
		for (let at = 0; at < text.length; ) {
			const [field = ''] = text.slice(at).match(/^(?:"(?:[^"]|"")*"|[^",\r\n]*)/) ?? [];
			lines.at(-1)?.push(field.startsWith('"') ? field.slice(1, -1).replaceAll('""', '"') : field);
			at += field.length;
			if (text.startsWith('\r\n', at)) {
				at += 2;
				if (at < text.length) lines.push([]);
			} else {
				expect(text[at]).toBe(',');
				at++;
			}
		}
		return lines;
	}

	it('reads back by RFC 4180, a line an attempt, with no cell that a spreadsheet would run', async () => {
		const results = NAMES.map((name, i) => honest(sat(paper, 100 + i, name)));
		const { tables } = await sortResults(whole(...results), by);
		const [table] = tables;
		if (!table) throw new Error('no table');
		const text = classCsv(table);
		expect(text.startsWith('\ufeff')).toBe(true);
		const lines = readCsv(text.slice(1));
		expect(lines).toHaveLength(1 + NAMES.length);
		for (const line of lines) expect(line).toHaveLength(10 + paper.items.length);
		for (const field of lines.flat()) expect(field).not.toMatch(/^\s*[=+\-@\t\r]/);
		expect(
			lines
				.slice(1)
				.map(([name]) => name?.replace(/^'/, ''))
				.sort(),
		).toEqual([...NAMES].sort());
		for (const [i, row] of table.rows.entries()) {
			const cells = lines[i + 1] ?? [];
			expect(cells[2]).toBe(String(row.mark.score));
			expect(cells.slice(10).filter((cell) => cell === '1')).toHaveLength(row.mark.score);
		}
	});
});
