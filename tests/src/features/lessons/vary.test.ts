import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { makeDrill, unseenTurn } from '../../../../sim/drill/index.ts';
import { goOf, seedOf, type TaskSet } from '../../../../src/features/drills/go.ts';
import { packTasks } from '../../../../src/features/drills/index.ts';
import { unseen } from '../../../../src/features/invented/index.ts';
import { casesOf, varySchema } from '../../../../src/features/lessons/vary.ts';

const name = fc.constantFrom('one', 'two', 'three', 'four');
const vary = fc.dictionary(name, fc.uniqueArray(fc.nat(99), { minLength: 2, maxLength: 6 }), {
	minKeys: 1,
	maxKeys: 3,
});

describe('the cases of a task', () => {
	it('are all different, no more than a page carries, and of two names each comes with more than one value', () => {
		fc.assert(
			fc.property(vary, (values) => {
				const names = Object.keys(values);
				const cases = casesOf(
					names.map((each) => `$${each}`),
					values,
				) as number[][];
				const all = Object.values(values).reduce((product, list) => product * list.length, 1);
				expect(cases).toHaveLength(Math.min(64, all));
				expect(new Set(cases.map((each) => each.join()))).toHaveProperty('size', cases.length);
				for (const [i, each] of names.entries()) {
					const met = new Set(cases.map((row) => row[i]));
					expect(met.size).toBeGreaterThan(1);
					for (const value of met) expect(values[each]).toContain(value);
				}
			}),
			{ numRuns: 200 },
		);
	});

	it('take a run of numbers as all of them, both ends included', () => {
		const { n } = v.parse(varySchema, { n: { from: 0.4, to: 0.7, by: 0.1 } });
		expect(n).toEqual([0.4, 0.5, 0.6, 0.7]);
		expect(() => v.parse(varySchema, { n: { from: 1, to: 2, by: 0 } })).toThrow();
	});

	it('refuse a row with fewer values than names', () => {
		expect(() => casesOf('$one $other', { 'one,other': [[1, 2], [3]] })).toThrow(RangeError);
	});

	it('take a value as it is, and write it into ids and words', () => {
		const task = {
			says: 'Set Wash {n} to {address}.',
			on: { 'wash-1': 'all', 'wash-$n': ['$n', '$deep', '$1', true] },
		};
		expect(casesOf(task, { n: [1, 2] })).toEqual([
			{ says: 'Set Wash 1 to {address}.', on: { 'wash-1': [1, '$deep', '$1', true] } },
			{ says: 'Set Wash 2 to {address}.', on: { 'wash-1': 'all', 'wash-2': [2, '$deep', '$1', true] } },
		]);
	});

	it('keep together what belongs together', () => {
		expect(casesOf('$a and $b', { 'a,b': [['x', 1], ['y', 2]] })).toEqual(['x and 1', 'y and 2']); // biome-ignore format: rows
	});

	it('are one where nothing differs', () => {
		expect(casesOf({ drill: 'address' }, {})).toEqual([{ drill: 'address' }]);
	});
});

describe('another go', () => {
	const task = makeDrill('address-keys', 7);

	it('is another case, and none twice running', () => {
		const set = packTasks(['a', 'b', 'c'].map((says) => ({ says, task })));
		let seed = seedOf(set);
		for (let i = 0; i < 60; i++) {
			const next = seedOf(set, seed);
			expect(goOf(set, next).says).not.toBe(goOf(set, seed).says);
			seed = next;
		}
		expect(seedOf(packTasks([{ says: 'a', task }]), 0)).toBe(0);
	});

	it('is on a panel of another law, where nobody has seen it', () => {
		const set: TaskSet = { drill: 'panel-unseen' };
		let seed = seedOf(set);
		for (let i = 0; i < 200; i++) {
			const next = seedOf(set, seed);
			expect(unseenTurn(next).law).not.toBe(unseenTurn(seed).law);
			seed = next;
		}
		expect(() => goOf(set, seed)).toThrow(RangeError);
		expect(goOf(set, seed, unseen).says).toMatch(/never met/);
	});
});
