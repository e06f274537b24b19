import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PLAIN_KIND_IDS, readRecipe, setPaper } from '../../../../../shared/paper/index.ts';
import { bundledRig, RIG_IDS } from '../../../../../shared/sheet/index.ts';
import { settingOnce } from '../../../../../src/features/papers/engine.ts';
import {
	paperFragment,
	readHandedIn,
	readPaperLink,
	readResultLink,
	resultFragment,
} from '../../../../../src/features/papers/exchange/index.ts';
import { fromColumns, inColumns } from '../../../../../src/features/papers/exchange/pack.ts';
import { qrDrawing } from '../../../../../src/features/papers/exchange/qr.ts';
import { runs } from '../../../../runs.ts';
import { PLAIN, plainPaper, sat, seeds } from './class.ts';

const set = settingOnce(setPaper);
/** What stands before the fragment: a long enough address of a hall's own. */
const ADDRESS = 'https://papers.lantern-row-hall.example/papers/sit/';
const MOST = 2000;

describe('a paper as a link', () => {
	it('carries recipe and seed, and sets the same paper', async () => {
		await fc.assert(
			fc.asyncProperty(seeds, fc.integer({ min: 1, max: 100 }), async (seed, count) => {
				const recipe = readRecipe({ ...PLAIN, count });
				expect(await readPaperLink(await paperFragment({ recipe, seed }))).toEqual({ recipe, seed });
			}),
			{ numRuns: runs(40) },
		);
	});

	it('of 40 questions fits 2,000 characters and one QR code, on every bundled rig, by id and as a sheet of its own', async () => {
		const longest: Record<string, number> = {};
		for (const id of RIG_IDS) {
			for (const rig of [id, bundledRig(id)]) {
				const recipe = readRecipe({ ...PLAIN, title: 'W'.repeat(60), kinds: [...PLAIN_KIND_IDS], count: 40, rig });
				const link = ADDRESS + (await paperFragment({ recipe, seed: 0xffffffff }));
				longest[typeof rig === 'string' ? `${id}, by id` : `${id}, as a sheet of ${rig.fixtures.length}`] = link.length;
				expect(link.length, id).toBeLessThanOrEqual(MOST);
				expect(qrDrawing(link).size).toBeLessThanOrEqual(177 + 8);
				expect(await readPaperLink(link)).toEqual({ recipe, seed: 0xffffffff });
			}
		}
		console.log(`Characters of a link to a paper of 40: ${JSON.stringify(longest)}`);
	});
});

describe('a result as a link', () => {
	it('carries the result, whole', async () => {
		await fc.assert(
			fc.asyncProperty(seeds, seeds, fc.string({ maxLength: 80 }), async (seed, by, typed) => {
				const paper = plainPaper(seed);
				const name = typed.replace(/[\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu, ' ').trim();
				const result = sat(paper, by, name);
				const taken = await readResultLink(await resultFragment(result, paper), set);
				expect(taken).toEqual({ result, whole: true });
			}),
			{ numRuns: runs(40) },
		);
	});

	it('of 40 plain answers fits 2,000 characters and one QR code', async () => {
		const lengths: number[] = [];
		for (let seed = 0; seed < 30; seed++) {
			const paper = plainPaper(seed * 7919);
			const link = ADDRESS + (await resultFragment(sat(paper, seed, 'Wilhelmina of the Yard '.repeat(3)), paper));
			lengths.push(link.length);
			expect(qrDrawing(link).size).toBeLessThanOrEqual(177 + 8);
		}
		console.log(`Characters of a link to a result of 40: ${Math.min(...lengths)} to ${Math.max(...lengths)}`);
		expect(Math.max(...lengths)).toBeLessThanOrEqual(MOST);
	});

	it('keeps answers that fit no question of the paper, so that marking can say so', async () => {
		const paper = plainPaper(3);
		const [first, second] = paper.items;
		const result = {
			...sat(paper, 1),
			answers: {
				[first?.id ?? '']: { form: 'practical' as const, log: [{ type: 'nothing' }] },
				[second?.id ?? '']: { form: 'match' as const, pairs: { q: 'r' } },
				'footprint-00000000': { form: 'one' as const, chose: 'z' },
			},
		};
		expect(await readResultLink(await resultFragment(result, paper), set)).toEqual({ result, whole: true });
	});

	it('is found in a message, with others, in any order', async () => {
		const paper = plainPaper(9);
		const a = await resultFragment(sat(paper, 1), paper);
		const b = await resultFragment(sat(paper, 2), paper);
		const text = `Evening! Mine is ${ADDRESS}${a}.\nAnd Bo's:\n<${ADDRESS}${b}> (${ADDRESS}${await paperFragment(paper)})`;
		const handed = await readHandedIn(text, set);
		expect(handed.map(({ is }) => is)).toEqual(['result', 'result', 'paper']);
		expect(handed.map((each) => each.is === 'result' && each.whole)).toEqual([true, true, false]);
	});
});

describe('columns', () => {
	it('give back any JSON as it was', () => {
		const value = fc.jsonValue().filter((json) => !/"(#|\+)"/.test(JSON.stringify(json)));
		const like = fc.array(fc.record({ a: fc.integer(), b: fc.jsonValue(), c: fc.boolean() }), { maxLength: 20 });
		fc.assert(
			fc.property(
				fc.oneof(
					value,
					like.filter((json) => !/"(#|\+)"/.test(JSON.stringify(json))),
				),
				(json) => {
					const plain: unknown = JSON.parse(JSON.stringify(json));
					const laid = JSON.stringify(inColumns(plain));
					expect(fromColumns(JSON.parse(laid))).toEqual(plain);
				},
			),
			{ numRuns: runs(300) },
		);
	});
});

it('a paper that could not be set is tried again: a part may have been out of reach', async () => {
	let tries = 0;
	const trying = settingOnce(async (recipe, seed) => {
		if (tries++ === 0) throw new Error('not to be fetched');
		return setPaper(recipe, seed);
	});
	const { recipe } = plainPaper(1, 3);
	await expect(trying(recipe, 1)).rejects.toThrow('not to be fetched');
	expect((await trying(recipe, 1)).items).toHaveLength(3);
	await trying(recipe, 1);
	expect(tries).toBe(2);
});
