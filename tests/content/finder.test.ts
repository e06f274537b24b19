import { describe, expect, it } from 'vitest';
import { checkParts, checks, mendTried, SPOTS } from '#words/checks/index.ts';
import { complaints } from '#words/complaints/index.ts';
import { faults, unknown } from '#words/faults/index.ts';
import { repairs } from '#words/repairs/index.ts';
import { FAULTS, REPAIR_IDS } from '../../sim/fault/index.ts';
import { CHECK_KINDS, COMPLAINT_KINDS } from '../../sim/finder/index.ts';

const all = { faults, unknown, repairs, checks, mendTried, checkParts, complaints };

/** Every text of a dictionary, wherever it sits, with where that is. */
function texts(words: unknown, path = ''): [string, string][] {
	if (typeof words === 'string') return [[path, words]];
	if (typeof words !== 'object' || words === null) return [];
	return Object.entries(words).flatMap(([key, each]) => (key === 'when' ? [] : texts(each, `${path}.${key}`)));
}

describe('the words of the finder', () => {
	it.each([
		['faults', faults, FAULTS.map(({ id }) => id)],
		['repairs', repairs, REPAIR_IDS],
		['checks, with those that try a mend', { ...checks, ...prefixed('mend-', repairs) }, CHECK_KINDS],
		['complaints', complaints, COMPLAINT_KINDS],
	])('%s: one for each id, and for nothing else', (_, words, ids) => {
		expect(Object.keys(words).sort()).toEqual([...ids].sort());
	});

	it('are templates whose braces and brackets close', () => {
		for (const [path, text] of texts(all)) {
			const bare = text.replaceAll(/\{\w+(?: as \w+|\?[^|{}]*\|[^{}]*)?\}/g, '').replaceAll(/\[[^[\]]*\]/g, '');
			expect(bare, path).not.toMatch(/[{}[\]]/);
		}
	});

	it('end every choice of wordings with one that always fits', () => {
		const choices = (words: unknown): unknown[] => {
			if (Array.isArray(words)) return [words.at(-1)];
			return typeof words === 'object' && words !== null ? Object.values(words).flatMap(choices) : [];
		};
		const last = choices(all);
		expect(last.length).toBeGreaterThan(20);
		for (const wording of last) expect(wording).not.toHaveProperty('when');
	});

	it('never send anybody into a fixture, nor to reset a supply', () => {
		for (const [path, text] of texts(all)) {
			expect(text, path).not.toMatch(
				/\bopen (?:up|it|the (?:fixture|housing|case|lid|back)|its (?:housing|case|back))\b/i,
			);
			expect(text, path).not.toMatch(/screw|solder|inside|take apart/i);
			// that one has blown is said, and whose work it is; no check and no repair has a hand at it
			if (/\bfuses?\b/i.test(text)) {
				expect(path).toMatch(/^\.faults\./);
				if (path.endsWith('.cause')) expect(text, path).toMatch(/competent repairer/);
			}
			if (/\breset\b/.test(text)) expect(text, path).toMatch(/(?:Do not|[Dd]on’t) reset/);
			if (/into (?:it|the lens)/.test(text)) expect(text, path).toMatch(/never into|without looking into/);
		}
	});

	it('are plain: no shouting, no asking nicely, one word for each thing', () => {
		for (const [path, text] of texts(all))
			expect(text, path).not.toMatch(/!|please|simply|just |utili|ensure|functionality/i);
	});

	it('put every picture to use', () => {
		const used = new Set([...Object.values(checks), ...Object.values(repairs)].map(({ spot }) => spot));
		expect([...used].sort()).toEqual([...SPOTS].sort());
	});
});

const prefixed = (prefix: string, words: object): object =>
	Object.fromEntries(Object.entries(words).map(([id, each]) => [`${prefix}${id}`, each]));
