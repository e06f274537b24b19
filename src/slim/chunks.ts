import path from 'node:path';
import type { Plugin, Rolldown } from 'vite';

interface Modules {
	getModuleInfo(id: string): { readonly isEntry: boolean; readonly importers: readonly string[] } | null;
}

/** What a module is needed by from the start: the islands and scripts that reach it by plain imports, by name. */
function neededBy(id: string, modules: Modules, seen: Set<string>, found: Set<string>): void {
	if (seen.has(id)) return;
	seen.add(id);
	const about = modules.getModuleInfo(id);
	if (about?.isEntry) found.add(path.basename(path.dirname(id)));
	for (const importer of about?.importers ?? []) neededBy(importer, modules, seen, found);
}

/** One file for what each page's islands need from the start, one for what several share, one for each thing fetched later. */
const codeSplitting: Exclude<Rolldown.OutputOptions['codeSplitting'], boolean | undefined> = {
	groups: [
		{
			tags: ['$initial'],
			name(id, modules) {
				const found = new Set<string>();
				neededBy(id, modules, new Set(), found);
				return [...found].sort().join('-') || null;
			},
		},
	],
};

/** Lean files for the browser: grouped, with no list of what to fetch ahead, and with frozen tables that nobody reads left out. */
export function leanChunks(): Plugin {
	return {
		name: 'prep-bay-lean-chunks',
		configEnvironment: (name) =>
			name === 'client'
				? {
						build: {
							modulePreload: false,
							rolldownOptions: { output: { codeSplitting }, treeshake: { manualPureFunctions: ['Object.freeze'] } },
						},
					}
				: null,
	};
}
