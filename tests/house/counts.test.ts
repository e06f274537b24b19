import { expect, test } from 'vitest';
import { slowest } from './counts.ts';

test('the slowest test files of both runners, longest first', () => {
	const runs = [{ took: { 'a.test.ts': 1500, 'b.test.ts': 20 } }, { took: { 'c.spec.ts': 64_321, 'd.spec.ts': 900 } }];
	expect(slowest(runs, 3)).toEqual(['   64.3 s  c.spec.ts', '    1.5 s  a.test.ts', '    0.9 s  d.spec.ts']);
	expect(slowest([], 10)).toEqual([]);
});
