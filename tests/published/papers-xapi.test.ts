import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import xapiValidation from 'xapi-validation';
import { markPaper, setPaper } from '../../shared/paper/index.ts';
import { settingOnce } from '../../src/features/papers/engine.ts';
import { sortResults } from '../../src/features/papers/exchange/index.ts';
import { sha1, statementsOf, uuidOf, xapiFile } from '../../src/features/papers/exchange/xapi.ts';
import { runs } from '../runs.ts';
import { plainPaper, rightAnswer, sat } from '../src/features/papers/exchange/class.ts';

interface Statement {
	readonly id: string;
	readonly actor: { readonly name?: string; readonly account: { readonly homePage: string; readonly name: string } };
	readonly verb: { readonly id: string };
	readonly object: { readonly id: string; readonly definition: Definition };
	readonly result: {
		readonly success?: boolean;
		readonly completion?: boolean;
		readonly response?: string;
		readonly score: { readonly scaled: number };
	};
	readonly context: { readonly registration: string };
}
type Component = { readonly id: string };
interface Definition {
	readonly interactionType?: string;
	readonly correctResponsesPattern?: readonly string[];
	readonly choices?: readonly Component[];
	readonly source?: readonly Component[];
	readonly target?: readonly Component[];
}

// the package is CommonJS, and says what it hands out by `default`
const validate = ((xapiValidation as unknown as { default?: unknown }).default ?? xapiValidation) as (
	statement: unknown,
) => readonly unknown[];

const set = settingOnce(setPaper);
const paper = plainPaper(9182);

async function classOf(count: number, pass = 70) {
	const own = setPaper({ ...paper.recipe, pass }, paper.seed);
	const results = Array.from({ length: count }, (_, i) => sat(own, i, i === 0 ? '' : `Hand ${i}`));
	const full = {
		...sat(own, 999, 'All right'),
		answers: Object.fromEntries(own.items.map((it) => [it.id, rightAnswer(it)])),
	};
	const pile = [...results, full].map((result) => ({ result, whole: true }));
	const { tables } = await sortResults(pile, { set, mark: markPaper });
	const [table] = tables;
	if (!table) throw new Error('no table');
	return { table, statements: statementsOf(table) as unknown as readonly Statement[] };
}

/** Whether a response matches any of the patterns. IEEE 9274.1.1, section on interaction activities: the rules for each type (read). */
function fits(response: string, { interactionType, correctResponsesPattern = [] }: Definition): boolean {
	return correctResponsesPattern.some((pattern) => {
		if (interactionType === 'numeric') {
			const [low = '', high = low] = pattern.split('[:]');
			return Number(response) >= Number(low || -Infinity) && Number(response) <= Number(high || Infinity);
		}
		const [want, got] = [pattern, response].map((text) => text.split('[,]'));
		if (interactionType === 'sequencing') return String(want) === String(got);
		return String(want?.toSorted()) === String(got?.toSorted());
	});
}

describe('xAPI statements', () => {
	it('are found sound by xapi-validation 2.1.4, a published validator of xAPI 1.0.3, the base of IEEE 9274.1.1 (recalculated)', async () => {
		const { statements } = await classOf(6);
		expect(statements.length).toBeGreaterThan(6 * 30);
		for (const statement of statements) expect(validate(statement), JSON.stringify(statement)).toEqual([]);
		// and it does see what is wrong
		const [first] = statements;
		expect(validate({ ...first, verb: { id: 'answered' } }).length).toBeGreaterThan(0);
		expect(validate({ ...first, result: { score: { scaled: 1.5 } } }).length).toBeGreaterThan(0);
		expect(validate({ ...first, actor: { account: { name: 'x' } } }).length).toBeGreaterThan(0);
	});

	it('say of each answer what the rules for responses make of it: right where the mark says right (IEEE 9274.1.1, read)', async () => {
		const { table, statements } = await classOf(12);
		const answered = statements.filter(({ verb }) => verb.id.endsWith('/answered'));
		const types = new Set<string | undefined>();
		for (const { object, result } of answered) {
			types.add(object.definition.interactionType);
			expect(fits(result.response ?? '', object.definition), JSON.stringify([object.definition, result])).toBe(
				result.success,
			);
		}
		expect([...types].sort()).toEqual(['choice', 'matching', 'numeric', 'sequencing']);
		expect(answered).toHaveLength(
			table.rows.reduce((sum, { mark }) => sum + mark.items.filter(({ answered: was }) => was).length, 0),
		);
	});

	it('name only what is there: ids unique and with no space, responses among the choices (IEEE 9274.1.1, read)', async () => {
		const { statements } = await classOf(8);
		for (const { object, result } of statements) {
			const { choices, source, target, interactionType } = object.definition;
			for (const list of [choices, source, target]) {
				const ids = (list ?? []).map(({ id }) => id);
				expect(new Set(ids).size).toBe(ids.length);
				for (const id of ids) expect(id).toMatch(/^\S+$/);
			}
			const ids = new Set((choices ?? []).map(({ id }) => id));
			if (interactionType === 'choice' || interactionType === 'sequencing')
				for (const id of (result.response ?? '').split('[,]').filter(Boolean)) expect(ids).toContain(id);
		}
	});

	it('are one for each question left open too: scored 0, not completed, no response (the published verbs have none for that, read)', async () => {
		const { table, statements } = await classOf(12);
		const open = statements.filter(({ verb }) => verb.id === 'http://adlnet.gov/expapi/verbs/scored');
		expect(open.length).toBeGreaterThan(0);
		expect(open).toHaveLength(
			table.rows.reduce((sum, { mark }) => sum + mark.items.filter(({ answered: was }) => !was).length, 0),
		);
		for (const { result, object } of open) {
			expect(result).toEqual({ score: { scaled: 0, raw: 0, min: 0, max: 1 }, success: false, completion: false });
			expect(object.definition.correctResponsesPattern?.length).toBeGreaterThan(0);
		}
	});

	it('are one a question and one for the paper; every id once, and the same whenever they are written', async () => {
		const { table, statements } = await classOf(5);
		expect(new Set(statements.map(({ id }) => id)).size).toBe(statements.length);
		expect(JSON.parse(xapiFile(table))).toEqual(JSON.parse(JSON.stringify(statementsOf(table))));
		expect(statements).toHaveLength(table.rows.length * (table.paper.items.length + 1));
		const papers = statements.filter(({ verb }) => !/(answered|scored)$/.test(verb.id));
		expect(papers).toHaveLength(table.rows.length);
		expect(papers.map(({ verb }) => verb.id.replace(/.*\//, ''))).toEqual(
			table.rows.map(({ mark }) => (mark.passed ? 'passed' : 'failed')),
		);
		const none = await classOf(2, 0);
		expect(none.statements.filter(({ verb }) => verb.id.endsWith('/completed'))).toHaveLength(3);
	});

	it('tell a task on the bench as `other`, with no pattern that a response could be held to', async () => {
		const { table } = await classOf(1);
		const [row] = table.rows;
		const [item] = table.paper.items;
		const [mark] = row?.mark.items ?? [];
		if (!row || !item || !mark) throw new Error('no row');
		const bench = {
			...table.paper,
			items: [
				{
					...item,
					ask: { form: 'practical' as const, drill: { kind: 'leader-three', seed: 1 } },
					key: { form: 'practical' as const },
				},
			],
		};
		const done = {
			...row,
			taken: {
				...row.taken,
				result: { ...row.taken.result, answers: { [item.id]: { form: 'practical' as const, log: [] } } },
			},
			mark: { ...row.mark, items: [{ ...mark, answered: true, right: true, share: 1 }] },
		};
		const [statement] = statementsOf({ paper: bench, rows: [done] }) as unknown as readonly Statement[];
		expect(validate(statement)).toEqual([]);
		expect(statement?.object.definition.interactionType).toBe('other');
		expect(statement?.object.definition.correctResponsesPattern).toBeUndefined();
		expect(statement?.result.response).toBe('done');
	});

	it('make up no mail address, and no name that nobody typed', async () => {
		const { statements } = await classOf(3);
		expect(JSON.stringify(statements)).not.toMatch(/mbox|mailto/);
		const [unnamed] = statements.filter(({ actor }) => actor.name === undefined);
		expect(unnamed?.actor.account.name).toMatch(/^[0-9a-f]{16}$/);
	});
});

describe('ids', () => {
	it('are UUIDs of version 5: the worked example of RFC 9562, appendix A.4 (from memory)', () => {
		expect(uuidOf('www.example.com', '6ba7b810-9dad-11d1-80b4-00c04fd430c8')).toBe(
			'2ed6657d-e927-568b-95e1-2665a8aea6a2',
		);
	});

	it('are made by the SHA-1 of FIPS 180-4: the machine says the same of any message (recalculated)', () => {
		fc.assert(
			fc.property(fc.uint8Array({ maxLength: 300 }), (message) => {
				expect(Buffer.from(sha1(message)).toString('hex')).toBe(createHash('sha1').update(message).digest('hex'));
			}),
			{ numRuns: runs(200) },
		);
	});
});
