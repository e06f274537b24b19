import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { deleteDB, openDB } from 'idb';
import { describe, expect, it } from 'vitest';
import { markPaper, setPaper } from '../../../../../shared/paper/index.ts';
import { settingOnce } from '../../../../../src/features/papers/engine.ts';
import {
	openPaperStore,
	type PaperResult,
	readHandedIn,
	sortResults,
} from '../../../../../src/features/papers/exchange/index.ts';
import { showClass } from '../../../../../src/features/papers/trainer/learn.ts';
import { DATABASE } from '../../../../../src/storage/index.ts';
import { runs } from '../../../../runs.ts';
import { plainPaper, sat } from './class.ts';

// Symptom: a person whose first result did not fit and whose second did was in no figure and no list, and neither was the second of
// two people of one name. Cause: only what was the first of its name and fitted was counted, and the rest was a number with no names.

const paper = plainPaper(31, 10);
const by = { set: settingOnce(setPaper), mark: markPaper };
const MINUTE = 60_000;

interface Sat {
	readonly name: string;
	/** Minutes on some day. */
	readonly from: number;
	readonly to: number;
	readonly altered?: boolean;
}

const result = ({ name, from, to, altered = false }: Sat, at: number): PaperResult => {
	const made = { ...sat(paper, at + 1, name), started: from * MINUTE, ended: to * MINUTE };
	return { ...made, claimed: markPaper(paper, made.answers).score + (altered ? 1 : 0) };
};

async function classOf(all: readonly Sat[], counts: Parameters<typeof sortResults>[1]['counts'] = []) {
	const pile = all.map((each, at) => ({ result: result(each, at), whole: true }));
	const [table] = (await sortResults(pile, { ...by, counts })).tables;
	if (!table) throw new Error('no table');
	return showClass(table);
}
const rest: Sat[] = [
	{ name: 'Ash', from: 0, to: 20 },
	{ name: 'Bo', from: 1, to: 21 },
];

describe('who is counted', () => {
	it('is a person whose first result does not fit, by the second that does; both are shown', async () => {
		const { learn, rows } = await classOf([
			...rest,
			{ name: 'Cy', from: 0, to: 20, altered: true },
			{ name: 'Cy', from: 30, to: 50 },
		]);
		expect(learn?.people).toBe(3);
		expect(learn?.persons.map(({ name }) => name)).toContain('Cy (try 2)');
		expect(rows.filter(({ name }) => name === 'Cy').map(({ counts, standing }) => [counts, standing])).toEqual([
			[false, 'Something in it doesn’t fit. Its notes in the table say what.'],
			[true, 'Counted in place of an earlier try that doesn’t fit.'],
		]);
	});

	it('are both of two people of one name who sat it at one time, told apart', async () => {
		const { learn, rows } = await classOf([...rest, { name: 'Cy', from: 0, to: 20 }, { name: 'cy', from: 5, to: 19 }]);
		expect(learn?.people).toBe(4);
		expect(learn?.persons.map(({ name }) => name)).toEqual(['Ash', 'Bo', 'cy (1 of 2)', 'Cy (2 of 2)']);
		expect(rows.filter(({ standing }) => standing.startsWith('One of 2 people of this name'))).toHaveLength(2);
		expect(rows.map(({ tryNo }) => tryNo)).toEqual([1, 1, 1, 1]);
	});

	it('is not the second of one name where it may be the same person, and the trainer is asked', async () => {
		const all = [...rest, { name: 'Cy', from: 0, to: 20 }, { name: 'Cy', from: 30, to: 50 }];
		const before = await classOf(all);
		expect(before.learn?.people).toBe(3);
		const out = before.rows.filter(({ counts }) => !counts);
		expect(out.map(({ label }) => label)).toEqual(['Cy (try 2)']);
		expect(out[0]?.standing).toMatch(/somebody else of the same name\? Then count it too\.$/);
		const after = await classOf(all, [{ version: 1, attempt: out[0]?.attempt ?? '', counts: true }]);
		expect(after.learn?.people).toBe(4);
	});

	it('is not a copy, with another number, of what was begun at the same moment', async () => {
		const { learn, rows } = await classOf([...rest, { name: 'Cy', from: 3, to: 20 }, { name: 'Cy', from: 3, to: 20 }]);
		expect(learn?.people).toBe(3);
		expect(rows.find(({ counts }) => !counts)?.standing).toMatch(/may be a copy/);
	});

	const some = fc.array(
		fc.record({
			name: fc.constantFrom('Ash', 'ash', 'Bo', 'Cy', ''),
			from: fc.integer({ min: 0, max: 90 }),
			to: fc.integer({ min: 91, max: 200 }),
			altered: fc.boolean(),
		}),
		{ minLength: 1, maxLength: 8 },
	);

	it('or not, everybody is in one list or the other, with a reason; and who has one result that fits is counted', async () => {
		await fc.assert(
			fc.asyncProperty(some, async (all) => {
				const { learn, rows } = await classOf(all);
				expect(rows).toHaveLength(all.length);
				const out = rows.filter(({ counts }) => !counts);
				expect(learn?.people ?? 0).toBe(rows.length - out.length);
				expect(learn?.persons.map(({ attempt }) => attempt) ?? []).toEqual(
					rows.filter(({ counts }) => counts).map(({ attempt }) => attempt),
				);
				for (const { standing } of out) expect(standing).toMatch(/^[A-Z].*[.]$/);
				for (const name of new Set(all.map((each) => each.name.toLowerCase())))
					if (all.some((each) => each.name.toLowerCase() === name && !each.altered))
						expect(rows.some((row) => row.name.toLowerCase() === name && row.counts)).toBe(true);
				// and no two that are counted read alike, but those with no name
				const labels = rows.filter(({ name, counts }) => name !== '' && counts).map(({ label }) => label.toLowerCase());
				expect(new Set(labels).size).toBe(labels.length);
			}),
			{ numRuns: runs(120) },
		);
	});

	it('hangs on no name: with everybody called otherwise, the figures of questions stay as they are', async () => {
		const all: Sat[] = Array.from({ length: 9 }, (_, at) => ({ name: `Hand ${at}`, from: at, to: 20 + at }));
		const told = async (names: readonly string[]) => {
			const { learn } = await classOf(all.map((each, at) => ({ ...each, name: names[at] ?? '' })));
			return learn?.items.map(({ says, share, finding }) => [says, share, finding]);
		};
		const before = await told(all.map(({ name }) => name));
		await fc.assert(
			fc.asyncProperty(fc.shuffledSubarray([...'abcdefghi'], { minLength: 9 }), async (names) => {
				expect(await told(names)).toEqual(before);
			}),
			{ numRuns: runs(20) },
		);
	});
});

describe('what the trainer said of who counts', () => {
	const said = { version: 1 as const, attempt: '00000000000000aa', counts: true };

	it('is kept, goes with the file, and goes when the result goes', async () => {
		await deleteDB(DATABASE.name);
		const store = await openPaperStore();
		await store.putCount(said.attempt, true);
		store.close();
		const again = await openPaperStore();
		expect((await again.held()).counts).toEqual([said]);
		await again.putCount(said.attempt, false);
		expect((await again.held()).counts).toEqual([{ ...said, counts: false }]);
		await again.removeResult(said.attempt);
		expect((await again.held()).counts).toEqual([]);
		again.close();
	});

	it('has a place in a database from before it had one, and what was kept there stays', async () => {
		await deleteDB(DATABASE.name);
		const old = await openDB(DATABASE.name, 1, {
			upgrade(base) {
				for (const table of ['papers', 'results', 'names', 'aside']) base.createObjectStore(table);
			},
		});
		const mine = result({ name: 'Cy', from: 0, to: 20 }, 1);
		await old.put('results', { version: 1, result: mine, whole: true, kept: 5 }, mine.attempt);
		await old.put('names', { version: 1, attempt: mine.attempt, name: 'Cyd' }, mine.attempt);
		old.close();
		const store = await openPaperStore();
		expect(store.keeps()).toBe(true);
		await store.putCount(mine.attempt, false);
		expect(await store.held()).toMatchObject({
			results: [{ result: mine, kept: 5 }],
			names: [{ name: 'Cyd' }],
			counts: [{ attempt: mine.attempt, counts: false }],
		});
		store.close();
	});

	it('is missed by nobody in a file from before: nothing of it is refused', async () => {
		const file = JSON.stringify({ prepBay: 'papers', version: 1, papers: [], results: [], names: [] });
		expect(await readHandedIn(file, setPaper, 'old.json')).toMatchObject([
			{ is: 'store', refused: [], held: { counts: [] } },
		]);
	});
});
