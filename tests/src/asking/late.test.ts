import { expect, test } from 'vitest';
import { miss, NotFetched, withAll } from '../../../src/asking/late.ts';

/** A value that is there once it was fetched. */
function lateValue(fetch: () => Promise<string>) {
	let value: string | null = null;
	const get = async () => {
		value = await fetch();
	};
	return () => {
		if (value === null) miss(get);
		return value ?? '';
	};
}

test('a thing is done again once what it asked for in vain is there, all of it fetched at once', async () => {
	let fetching = 0;
	let most = 0;
	const slow = async (what: string) => {
		most = Math.max(most, ++fetching);
		await new Promise((resolve) => setTimeout(resolve));
		fetching--;
		return what;
	};
	const [one, two] = [lateValue(() => slow('one')), lateValue(() => slow('two'))];
	const done: string[] = [];
	const act = () => {
		done.push(`${one()} ${two()}`);
		return done.at(-1);
	};
	expect(await withAll(act)).toBe('one two');
	expect(done).toEqual([' ', 'one two']);
	expect(most).toBe(2);
	expect(await withAll(act)).toBe('one two');
	expect(done).toHaveLength(3);
});

test('what breaks for want of it is done again too; what breaks with all at hand is told', async () => {
	const name = lateValue(async () => 'here');
	const act = async () => {
		if (name() === '') throw new Error('no name');
		return name();
	};
	expect(await withAll(act)).toBe('here');
	await expect(
		withAll(() => {
			throw new RangeError('broken');
		}),
	).rejects.toThrow(RangeError);
});

test('what cannot be fetched is told as that, and asked for again the next time', async () => {
	let isUp = false;
	const value = lateValue(async () => {
		if (!isUp) throw new TypeError('no network');
		return 'there';
	});
	await expect(withAll(value)).rejects.toThrow(NotFetched);
	isUp = true;
	expect(await withAll(value)).toBe('there');
});
