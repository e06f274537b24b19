import { describe, expect, it } from 'vitest';
import { lastFew, oncePer, onceUnder } from '../../../shared/memo/index.ts';

describe('what is worked out once', () => {
	it('for each object, nothing included', () => {
		let times = 0;
		const sizeOf = oncePer((of: { readonly size: number }) => {
			times++;
			return of.size > 0 ? of.size : undefined;
		});
		const [one, none] = [{ size: 1 }, { size: 0 }];
		expect([one, none, one, none, { size: 1 }].map(sizeOf)).toEqual([1, undefined, 1, undefined, 1]);
		expect(times).toBe(3);
	});

	it('under an object and a key', () => {
		const made: string[] = [];
		const under = onceUnder<object, string, string | null>();
		const make = (what: string, gives: string | null) => () => {
			made.push(what);
			return gives;
		};
		const [here, there] = [{}, {}];
		expect(under(here, 'a', make('here a', null))).toBeNull();
		expect(under(here, 'a', make('again', 'x'))).toBeNull();
		expect(under(here, 'b', make('here b', 'b'))).toBe('b');
		expect(under(there, 'a', make('there a', 'a'))).toBe('a');
		expect(made).toEqual(['here a', 'here b', 'there a']);
	});

	it('for the last few names: what was asked for longest ago goes first', () => {
		const made: string[] = [];
		const few = lastFew<string>(2);
		const ask = (name: string) =>
			few(name, () => {
				made.push(name);
				return name.toUpperCase();
			});
		expect(['a', 'b', 'a', 'c', 'a', 'b'].map(ask)).toEqual(['A', 'B', 'A', 'C', 'A', 'B']);
		expect(made).toEqual(['a', 'b', 'c', 'b']);
	});
});
