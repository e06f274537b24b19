import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import fc from 'fast-check';
import { build } from 'vite';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { BUNDLED } from '../../../shared/profile/index.ts';
import * as whole from '../../../sim/light/index.ts';
import { leanColour } from '../../../src/slim/index.ts';
import { root } from '../../house/tree.ts';
import { runs } from '../../runs.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'prep-bay-slim-'));
afterAll(() => rmSync(folder, { recursive: true }));

let lean: typeof whole;

beforeAll(async () => {
	const entry = path.join(folder, 'entry.ts');
	writeFileSync(entry, `export * from '${path.join(root, 'sim/light/index.ts')}';`);
	await build({
		root,
		configFile: false,
		publicDir: false,
		logLevel: 'error',
		plugins: [leanColour()],
		build: { outDir: folder, emptyOutDir: false, lib: { entry, formats: ['es'], fileName: 'lean' } },
	});
	lean = await import(pathToFileURL(path.join(folder, 'lean.js')).href);
});

it('shows and names every light as the whole colour library does', () => {
	fc.assert(
		fc.property(
			fc.constantFrom(...BUNDLED),
			fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 8, maxLength: 8 }),
			(profile, levels) => {
				expect(lean.cellLight(profile, levels)).toEqual(whole.cellLight(profile, levels));
			},
		),
		{ numRuns: runs(500) },
	);
});

it('holds back the same colours', () => {
	fc.assert(
		fc.property(fc.array(fc.integer({ min: 0, max: 0xffffff }), { minLength: 2, maxLength: 30 }), (colours) => {
			const hex = colours.map((colour) => `#${colour.toString(16).padStart(6, '0')}`);
			let mine = lean.watchFlashes(hex[0] ?? '');
			let theirs = whole.watchFlashes(hex[0] ?? '');
			for (const [i, colour] of hex.entries()) {
				mine = lean.limitFlashes(mine, i * 90, colour);
				theirs = whole.limitFlashes(theirs, i * 90, colour);
			}
			expect(mine).toEqual(theirs);
		}),
		{ numRuns: runs(100) },
	);
});
