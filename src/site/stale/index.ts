/**
 * Whether the build still is what the tree would make: each build leaves a digest of what it was made from, and `npm start` builds only
 * where that, or the build itself, is no longer as it was. Build-time code: no page loads it.
 */

import { rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { digestInputs, measureBuild, STAMP_FILE, type Stamp } from './stamp.ts';

/** Stamps a build with what it was made from. Put it last of all. */
export function stamp(): AstroIntegration {
	let root: URL;
	let out: URL;
	let inputs = '';
	return {
		name: 'prep-bay-stamp',
		hooks: {
			'astro:config:done': ({ config }) => {
				root = config.root;
				out = config.outDir;
			},
			// before anything is read: what changes while it is built is not in it
			'astro:build:start': () => {
				// a build that breaks off is none
				rmSync(new URL(STAMP_FILE, out), { force: true });
				inputs = digestInputs(fileURLToPath(root));
			},
			'astro:build:done': ({ dir }) => {
				const stamp: Stamp = { inputs, ...measureBuild(fileURLToPath(dir)) };
				writeFileSync(new URL(STAMP_FILE, dir), `${JSON.stringify(stamp)}\n`);
			},
		},
	};
}
