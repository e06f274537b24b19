import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, type Plugin } from 'vite';
import { root } from '../../house/tree.ts';

/** A folder's door as the site has it: built, with what the plugin leaves out left out. */
export async function leanDoor<Door>(door: string, plugin: Plugin): Promise<Door> {
	const folder = mkdtempSync(path.join(tmpdir(), 'prep-bay-slim-'));
	try {
		const entry = path.join(folder, 'entry.ts');
		writeFileSync(entry, `export * from '${path.join(root, door)}';`);
		await build({
			root,
			configFile: false,
			publicDir: false,
			logLevel: 'error',
			plugins: [plugin],
			// as a real build finds packages, and not as one under test does
			resolve: { conditions: ['module', 'browser', 'production'] },
			build: { outDir: folder, emptyOutDir: false, lib: { entry, formats: ['es'], fileName: 'lean' } },
		});
		return await import(pathToFileURL(path.join(folder, 'lean.js')).href);
	} finally {
		rmSync(folder, { recursive: true });
	}
}
