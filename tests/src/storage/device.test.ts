import { expect, test } from 'vitest';
import { plainName } from '../../../src/storage/index.ts';

test.each([
	['Row wash 12', 'row-wash-12'],
	[' Été: “Café” / nº 2 ', 'ete-cafe-no-2'],
	['..\\..\\x', 'x'],
	['照明', '照明'],
	['***', ''],
	['a'.repeat(200), 'a'.repeat(60)],
])('%s is named %s in a file’s name', (text, name) => {
	expect(plainName(text)).toBe(name);
});
