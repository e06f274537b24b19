import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, type Plugin } from 'vite';
import { root } from '../../house/tree.ts';

/** A folder's door as the site has it: built, with what the plugin leaves out left out. */
export async function leanDoor<Door>(door: string, plugin: Plugin): Promise<Door> {
	const folder = leanFolder();
	try {
		return await leanDoorIn<Door>(folder, door, plugin);
	} finally {
		rmSync(folder, { recursive: true });
	}
}

export const leanFolder = (): string => mkdtempSync(path.join(tmpdir(), 'prep-bay-slim-'));

/** The same in a folder that stays: for what fetches parts of itself later. */
export async function leanDoorIn<Door>(folder: string, door: string, plugin: Plugin): Promise<Door> {
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
	return import(pathToFileURL(path.join(folder, 'lean.js')).href);
}
