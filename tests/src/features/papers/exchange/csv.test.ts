import fc from 'fast-check';
import { expect, test } from 'vitest';
import { markPaper, setPaper } from '../../../../../shared/paper/index.ts';
import { settingOnce } from '../../../../../src/features/papers/engine.ts';
import { classCsv, type PaperResult, sortResults } from '../../../../../src/features/papers/exchange/index.ts';
import { runs } from '../../../../runs.ts';
import { plainPaper, sat } from './class.ts';

// Symptom: the name `x;=cmd` made a live cell in a spreadsheet that splits at semicolons, as much of Europe's does.
// Cause: only a cell's first character was looked at, and only what the comma parts was quoted.

const paper = plainPaper(12, 12);
const counted = paper.items.find(({ ask }) => ask.form === 'number')?.id ?? '';
const by = { set: settingOnce(setPaper), mark: markPaper };

/**
 * A table as a spreadsheet reads it that splits at one character: a field that begins with a quote runs to its closing one, quotes
 * doubled inside, and takes whatever still stands before the next split; any other runs to the split. As lenient as they are.
 */
function readAt(split: string, text: string): string[][] {
	const lines: string[][] = [[]];
	let at = text.startsWith('\ufeff') ? 1 : 0;
	while (at < text.length) {
		let field = '';
		if (text[at] === '"') {
			for (at++; at < text.length; at++) {
				if (text[at] !== '"') field += text[at];
				else if (text[at + 1] === '"') field += text[at++];
				else break;
			}
			at++;
		}
		while (at < text.length && text[at] !== split && !/[\r\n]/.test(text[at] ?? '')) field += text[at++];
		lines.at(-1)?.push(field);
		if (text[at] === split) at++;
		else if (at < text.length) {
			at += text.startsWith('\r\n', at) ? 2 : 1;
			if (at < text.length) lines.push([]);
		}
	}
	return lines;
}

/** What a spreadsheet may run, in each of its widths (Unicode 17, from memory): the first thing in a cell, past blanks and quotes. */
const LIVE = /^[\s"]*[=+\-@\uff1d\uff0b\uff0d\uff20\u207c\u208c\ufe66\ufe62\ufe63\ufe6b\u2212]/u;
const isLive = (cell: string): boolean => LIVE.test(cell) && !/^-?\d+(\.\d+)?$/.test(cell);

async function csvOf(names: readonly string[], some: Partial<PaperResult> = {}): Promise<string> {
	const pile = names.map((name, at) => ({ result: { ...sat(paper, at + 1, name), ...some }, whole: true }));
	const [table] = (await sortResults(pile, by)).tables;
	return table ? classCsv(table) : '';
}

const hostile = fc
	.array(
		fc.constantFrom(
			...[
				'=',
				'+',
				'-',
				'@',
				'＝',
				'＋',
				'－',
				'＠',
				'﹦',
				'﹢',
				';',
				',',
				'\t',
				'\r',
				'\n',
				'"',
				"'",
				' ',
				'|',
				'\ufeff',
			],
			...['cmd', '1+1', "=cmd|' /C calc'!A0", 'x;=cmd', 'x";"=1', '\u00a0', 'Ash', "O'Bree", '−3'],
		),
		{ maxLength: 10 },
	)
	.map((parts) => parts.join('').slice(0, 80));

const CASES = [
	'x;=cmd',
	'x\t=cmd',
	'x,=cmd',
	'";=cmd',
	"';=cmd",
	'"=1',
	'" =1',
	"'=1",
	"''=1",
	'＝1',
	'a"\t"=1',
	';',
	'"',
	'=1;=2',
];

test('no name makes a live cell, wherever a spreadsheet splits: at commas, semicolons, tabs or bars', async () => {
	const check = async (names: readonly string[]) => {
		// one altered, so that there are sentences in its line too, and one of them says '; -3 came'
		const below = { [counted]: { form: 'number' as const, value: -3 } };
		for (const some of [{}, { claimed: 9, paper: '0'.repeat(16), answers: below }]) {
			const text = await csvOf(names, some);
			for (const split of [',', ';', '\t', '|'])
				for (const cell of readAt(split, text).flat())
					expect(isLive(cell), `${split} ${JSON.stringify(cell)}`).toBe(false);
		}
	};
	await check(CASES);
	await fc.assert(fc.asyncProperty(fc.array(hostile, { minLength: 1, maxLength: 6 }), check), { numRuns: runs(150) });
});

test('names read back as they were: less one apostrophe, where one was put before what would run', async () => {
	const check = async (names: readonly string[]) => {
		const [, ...lines] = readAt(',', await csvOf(names));
		const read = lines.map(([name = '']) => name.replace(/^'(?=['\s"]*[=+\-@\t\r＝＋－＠⁼₌﹦﹢﹣﹫−])/u, ''));
		const kept = await sortResults(
			names.map((name, at) => ({ result: sat(paper, at + 1, name), whole: true })),
			by,
		);
		expect(read.sort()).toEqual(kept.tables.flatMap(({ rows }) => rows.map(({ name }) => name)).sort());
		for (const line of lines) expect(line).toHaveLength(10 + paper.items.length);
	};
	await check(CASES);
	await fc.assert(fc.asyncProperty(fc.array(hostile, { minLength: 1, maxLength: 6 }), check), { numRuns: runs(150) });
});
