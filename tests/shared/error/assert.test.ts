import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { build } from 'vite';
import { describe, expect, it } from 'vitest';
import { assert, CHECKED } from '../../../shared/error/index.ts';
import { root } from '../../house/tree.ts';

describe('an invariant', () => {
	it('that holds says nothing, and one that does not says what can never be', () => {
		expect(() => assert(true, 'a level of 256')).not.toThrow();
		expect(() => assert(false, 'a level of 256')).toThrow('This can never be: a level of 256.');
		expect(() => assert(false, 'a level past 255', 256)).toThrow('This can never be: a level past 255 (256).');
	});

	it('is looked after in tests', () => {
		expect(CHECKED).toBe(true);
	});

	it('is left out of a build that ships, condition, words and all, and stays in any other', async () => {
		const folder = mkdtempSync(path.join(tmpdir(), 'prep-bay-assert-'));
		try {
			const entry = path.join(folder, 'entry.ts');
			const error = path.join(root, 'shared/error/index.ts');
			writeFileSync(
				entry,
				`import { assert, CHECKED } from '${error}';
				export const take = (level) => {
					if (CHECKED) assert(level < 256, 'a level that never was', level);
					return level;
				};`,
			);
			const built = async (define: Record<string, string>): Promise<string> => {
				await build({
					root,
					configFile: false,
					publicDir: false,
					logLevel: 'error',
					define,
					build: { outDir: folder, emptyOutDir: false, lib: { entry, formats: ['es'], fileName: 'out' } },
				});
				return readFileSync(path.join(folder, 'out.js'), 'utf8');
			};
			const checking = /256|never was/;
			expect(await built({ SHIPPED: 'true' })).not.toMatch(checking);
			expect(await built({})).toMatch(checking);
		} finally {
			rmSync(folder, { recursive: true });
		}
	});
});
