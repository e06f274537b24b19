import { deflateRawSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { markPaper, setPaper } from '../../../../../shared/paper/index.ts';
import { makeRandom, type Random } from '../../../../../shared/random/index.ts';
import { settingOnce } from '../../../../../src/features/papers/engine.ts';
import { checkOf, type Migration, migrated } from '../../../../../src/features/papers/exchange/bounds.ts';
import {
	type HandedIn,
	paperFile,
	paperFragment,
	readHandedIn,
	resultFile,
	resultFragment,
	sortResults,
	storeFile,
} from '../../../../../src/features/papers/exchange/index.ts';
import { runs } from '../../../../runs.ts';
import { saidBy } from '../../../../shared/thrown.ts';
import { plainPaper, sat } from './class.ts';

const set = settingOnce(setPaper);
const paper = plainPaper(4711);
const { mark, score } = (() => {
	const result = sat(paper, 12, 'Pim of the yard');
	return { mark: result, score: markPaper(paper, result.answers).score };
})();
const result = { ...mark, claimed: score };
const file = resultFile(result);
const link = await resultFragment(result, paper);

const SCRIPT = '<img src=x onerror="globalThis.hacked=1"><script>globalThis.hacked=1</script>';
const NASTY: readonly unknown[] = [
	SCRIPT,
	'javascript:globalThis.hacked=1',
	1e308,
	-1,
	2 ** 53,
	0.5,
	null,
	true,
	[],
	{},
	'x'.repeat(100_000),
	Array.from({ length: 30_000 }, () => 1),
	JSON.parse('{"__proto__":{"hacked":1},"constructor":{"prototype":{"hacked":1}}}'),
	'\u202egnp.exe',
	'\u0000\ud800',
];

const deep = (depth: number): string => '['.repeat(depth) + ']'.repeat(depth);

/** One change to a list of bytes or characters. */
const ways: Record<string, (chance: Random) => string> = {
	'link, bits turned over'(chance) {
		const { head, bytes, check } = parts();
		for (let i = chance.int(1, 5); i > 0; i--) {
			const bit = chance.int(0, bytes.length * 8 - 1);
			bytes[bit >> 3] = (bytes[bit >> 3] ?? 0) ^ (1 << (bit & 7));
		}
		return `${head}${bytes.toString('base64url')}.${check}`;
	},
	'link, cut short': (chance) => link.slice(0, chance.int(0, link.length - 1)),
	'link, a letter changed'(chance) {
		const at = chance.int(0, link.length - 1);
		return link.slice(0, at) + chance.pick([...'aZ0-_.%<#= ']) + link.slice(at + 1);
	},
	'link, another version': (chance) => link.replace('=1.', `=${chance.pick([0, 2, 99, 999_999])}.`),
	'link, a field changed, its check worked out again'(chance) {
		const fields = JSON.parse(inflateRawSync(parts().bytes).toString()) as unknown[];
		fields[chance.int(0, fields.length)] = chance.pick(NASTY);
		return packed(JSON.stringify(fields));
	},
	'link, an answer changed, its check worked out again'(chance) {
		const fields = JSON.parse(inflateRawSync(parts().bytes).toString()) as unknown[];
		const answers = fields[8] as unknown[];
		answers[chance.int(0, answers.length)] = chance.pick(NASTY);
		return packed(JSON.stringify(fields));
	},
	'link, nested deep': (chance) => packed(deep(chance.int(30, 200_000))),
	'link, a number too large': () =>
		packed(
			inflateRawSync(parts().bytes)
				.toString()
				.replace(/\d{13}/, '1e999'),
		),
	'file, bits turned over'(chance) {
		const bytes = Buffer.from(file);
		for (let i = chance.int(1, 5); i > 0; i--) {
			const bit = chance.int(0, bytes.length * 8 - 1);
			bytes[bit >> 3] = (bytes[bit >> 3] ?? 0) ^ (1 << (bit & 7));
		}
		return bytes.toString();
	},
	'file, cut short': (chance) => file.slice(0, chance.int(0, file.length - 1)),
	'file, another version': (chance) =>
		file.replace(/"version":\s*1/, `"version": ${chance.pick([0, 2, -1, '"1"', 'null', 1e99])}`),
	'file, a field changed'(chance) {
		const whole = JSON.parse(file) as Record<string, Record<string, unknown>>;
		const inside = chance.chance(0.8) ? (whole['result'] ?? {}) : whole;
		inside[chance.pick(Object.keys(inside))] = chance.pick(NASTY);
		return JSON.stringify(whole);
	},
	'file, an answer changed'(chance) {
		const whole = JSON.parse(file) as { result: { answers: Record<string, Record<string, unknown>> } };
		const answer = whole.result.answers[chance.pick(Object.keys(whole.result.answers))] ?? {};
		answer[chance.pick([...Object.keys(answer), 'extra', 'toString'])] = chance.pick(NASTY);
		return JSON.stringify(whole);
	},
	'file, a field taken away'(chance) {
		const whole = JSON.parse(file) as Record<string, Record<string, unknown>>;
		const inside = chance.chance(0.8) ? (whole['result'] ?? {}) : whole;
		delete inside[chance.pick(Object.keys(inside))];
		return JSON.stringify(whole);
	},
	'file, a key that reaches for what all things share'(chance) {
		const key = chance.pick(['__proto__', 'constructor', 'prototype']);
		const into = chance.pick(['answers', 'recipe', 'result']);
		return file.replace(`"${into}": {`, `"${into}": {"${key}": {"hacked": 1, "form": "one"},`);
	},
	'file, nested deep': (chance) => file.replace('"answers": {', `"answers": {"a": ${deep(chance.int(30, 200_000))},`),
	'file, a number too large': (chance) => file.replace(/\d{13}/, chance.pick(['1e999', '-1e999', '9'.repeat(400)])),
	'file, run together with a broken one'(chance) {
		return file.slice(0, chance.int(1, file.length - 1)) + file;
	},
	'script as a name': () => resultFile({ ...result, name: SCRIPT.slice(0, 80) }),
};

function parts(): { head: string; bytes: Buffer; check: string } {
	const [head = '', payload = '', check = ''] = link.split('.');
	return { head: `${head}.`, bytes: Buffer.from(payload, 'base64url'), check };
}

const packed = (text: string): string => `#result=1.${deflateRawSync(text).toString('base64url')}.${checkOf(text)}`;

/** The same, or told apart: refused with a sentence, or flagged with one. Nothing else may come of it. */
async function judge(way: string, handed: readonly HandedIn[]): Promise<string> {
	const outcomes = [];
	for (const each of handed) {
		if (each.is === 'refused') {
			expect(each.sentence).toMatch(/^[A-Z].{15,600}[.!?]$/s);
			expect(each.sentence).not.toMatch(/undefined|NaN|\[object|Expected|Invalid/);
			expect(each.from).toMatch(/^The text/);
			outcomes.push('refused');
		} else if (each.is === 'result') {
			const { tables, unset } = await sortResults([each], { set, mark: markPaper });
			const flags = [
				...tables.flatMap(({ rows }) => rows.flatMap((row) => row.flags)),
				...unset.map(({ flag }) => flag),
			];
			if (JSON.stringify(each.result) === JSON.stringify(result)) outcomes.push('same');
			else if (flags.length > 0) outcomes.push('flagged');
			else outcomes.push(forged(way, each.result));
		} else throw new Error(`read as ${each.is}`);
	}
	return outcomes.join(', ');
}

/**
 * Where the check was worked out again, what is left is another result such as any learner might hand in: another name or time, or
 * another answer that is as wrong as the first. Nothing tells it from one, and it is marked by what it says.
 */
function forged(way: string, read: typeof result): string {
	expect(way).toMatch(/check worked out again|as a name/);
	const own = { name: '', started: 0, ended: 0, attempt: '', answers: {} };
	expect({ ...read, ...own }).toEqual({ ...result, ...own });
	expect(markPaper(paper, read.answers).score).toBe(read.claimed);
	expect(read.name.length).toBeLessThanOrEqual(80);
	return 'another, marked as it stands';
}

it('1,000 altered results: each a clear sentence, flagged, or the same result; nothing is run and nothing else is thrown', async () => {
	const chance = makeRandom(20_26);
	const count = runs(1000);
	const table: Record<string, Record<string, number>> = {};
	const names = Object.keys(ways);
	for (let i = 0; i < count; i++) {
		const way = names[i % names.length] ?? '';
		const outcome = await judge(way, await readHandedIn(ways[way]?.(chance) ?? '', set));
		expect(outcome, way).not.toBe('');
		const row = table[way] ?? {};
		table[way] = row;
		row[outcome] = (row[outcome] ?? 0) + 1;
	}
	console.table(table);
	expect(Reflect.get(globalThis, 'hacked')).toBeUndefined();
	expect(Reflect.get({}, 'hacked')).toBeUndefined();
});

it('a broken file before a whole one does not take it along', async () => {
	const handed = await readHandedIn(file.slice(0, 300) + file, set);
	expect(handed.map(({ is }) => is)).toEqual(['refused', 'result']);
});

it('says in a sentence of its own what else it may be', async () => {
	const codes = async (text: string): Promise<string[]> =>
		(await readHandedIn(text, set)).map((each) => (each.is === 'refused' ? each.code : each.is));
	expect(await codes('')).toEqual(['handed.empty']);
	expect(await codes('Nice weather for it')).toEqual(['handed.nothing']);
	expect(await codes('{"version":1,"fixtures":[]}')).toEqual(['handed.unknown']);
	expect(await codes('see https://a.example/bench/#rig=1.abc')).toEqual(['handed.rig']);
	expect(await codes(link.replace('=1.', '=2.'))).toEqual(['handed.version']);
	expect(await codes(file.replace('"version": 1', '"version": 2'))).toEqual(['handed.version']);
	expect(await codes(`#result=1.${'a'.repeat(1_000_001)}`)).toEqual(['handed.long']);
	expect(await codes(packed(deep(100)))).toEqual(['handed.deep']);
	expect(await codes('{"prepBay":"'.repeat(200_000))).toHaveLength(52);
	expect(await codes(`${file}${file}\n${link}`)).toEqual(['result', 'result', 'result']);
});

describe('records of other versions', () => {
	const steps: readonly Migration[] = [
		(old) => ({ ...old, name: `${old['name']} 2` }),
		({ name, ...rest }) => ({ ...rest, called: name }),
	];

	it('are brought up step by step from whichever they are', () => {
		expect(migrated({ version: 1, name: 'a' }, steps)).toEqual({ version: 3, called: 'a 2' });
		expect(migrated({ version: 2, name: 'a' }, steps)).toEqual({ version: 3, called: 'a' });
		expect(migrated({ version: 3, called: 'a' }, steps)).toEqual({ version: 3, called: 'a' });
	});

	it('of a newer one are refused, and of none are left to the schema', () => {
		expect(saidBy(() => migrated({ version: 4 }, steps))).toMatch(/another version of Prep Bay/);
		for (const odd of [
			null,
			7,
			'x',
			[],
			{},
			{ version: '1' },
			{ version: 0 },
			{ version: 1.5 },
			{ version: Number.NaN },
		])
			expect(migrated(odd, steps)).toBe(odd);
	});
});

it('300 altered papers and stores: each a clear sentence, or the same; what can be read of a store is', async () => {
	const chance = makeRandom(11);
	const slip = { recipe: paper.recipe, seed: paper.seed };
	const held = {
		papers: [{ version: 1 as const, ...slip, mark: paper.mark, kept: 1 }],
		results: [{ version: 1 as const, result, whole: true, kept: 1 }],
		names: [{ version: 1 as const, attempt: result.attempt, name: 'Pim' }],
		counts: [],
	};
	const texts = [await paperFragment(slip), paperFile(slip), storeFile(held)];
	const seen: Record<string, number> = {};
	for (let i = 0; i < runs(300); i++) {
		const bytes = Buffer.from(texts[i % 3] ?? '');
		for (let turn = chance.int(1, 3); turn > 0; turn--) {
			const bit = chance.int(0, bytes.length * 8 - 1);
			bytes[bit >> 3] = (bytes[bit >> 3] ?? 0) ^ (1 << (bit & 7));
		}
		const text = chance.chance(0.2) ? bytes.toString().slice(0, chance.int(0, bytes.length)) : bytes.toString();
		for (const each of await readHandedIn(text, set)) {
			const outcome = each.is === 'store' && each.refused.length > 0 ? 'store in part' : each.is;
			seen[outcome] = (seen[outcome] ?? 0) + 1;
			if (each.is === 'paper') expect({ recipe: each.recipe, seed: each.seed }).toEqual(slip);
			for (const { sentence } of each.is === 'store' ? each.refused : each.is === 'refused' ? [each] : [])
				expect(sentence).toMatch(/^[A-Z](?!.*(undefined|Expected|Invalid)).{15,600}[.!?]$/s);
		}
	}
	console.log(`Altered papers and stores: ${JSON.stringify(seen)}`);
});

it('any text and any JSON at all is sorted, and never throws', async () => {
	const framed = fc.json().map((json) => `{"prepBay":"result","version":1,"result":${json},"check":"00000000"}`);
	const stored = fc
		.json()
		.map((json) => `{"prepBay":"papers","version":1,"papers":[${json}],"results":[${json}],"names":[${json}]}`);
	const linked = fc.json().map(packed);
	const junk = fc.oneof(fc.string(), fc.string({ unit: 'binary' }), fc.json(), framed, stored, linked);
	await fc.assert(
		fc.asyncProperty(fc.array(junk, { minLength: 1, maxLength: 3 }), async (texts) => {
			const handed = await readHandedIn(texts.join('\n'), set);
			expect(handed.length).toBeGreaterThan(0);
			for (const each of handed) expect(['refused', 'store']).toContain(each.is);
		}),
		{ numRuns: runs(300) },
	);
});
