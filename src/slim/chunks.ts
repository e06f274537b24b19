import type { Plugin, Rolldown } from 'vite';
import { fetchedFrom, neededBy } from './needs.ts';

/** What fetches the tools in the bench's drawers, each as it is opened. */
const TOOLS = /\/src\/features\/bench\/Tools\.tsx$/;

/**
 * One file for what each page's islands need from the start, one for what several share, one for all the tools of a bench (they
 * are many and small, and alone would come to a third more), and one for each other thing fetched later.
 */
const codeSplitting: Exclude<Rolldown.OutputOptions['codeSplitting'], boolean | undefined> = {
	// a group takes what is its own, and not what that needs of others
	includeDependenciesRecursively: false,
	groups: [
		{
			tags: ['$initial'],
			name(id, modules) {
				const found = [...neededBy(id, modules)].sort();
				// what the bench shares with two and more: two files of it, what the finder needs too and the rest, are smaller than several
				if (found.length > 2 && found.includes('bench')) return found.includes('finder') ? 'shared' : 'shared-bench';
				// what keeps things may be needed later by any; pages' own small scripts share nothing with islands
				if (found.length > 0 && /\/src\/storage\/\w+\.ts$/.test(id)) return 'storage';
				// what belongs to no page may be needed later by another, which then need not fetch the file of the page that had it first
				const [, nobodys] = /\/(?:src|content\/en)\/(ui|wording|cautions|checks)\//.exec(id) ?? [];
				if (nobodys !== undefined && found.length > 0 && !found.includes('bench'))
					// the finder is to be light, and takes few of the parts that the others do
					return nobodys === 'ui' && !found.includes('finder') ? 'ui-more' : nobodys;
				return found.join('-') || null;
			},
		},
		{
			name(id, modules) {
				if (neededBy(id, modules).size > 0) return null;
				const from = [...fetchedFrom(id, modules)];
				return from.length > 0 && from.every((each) => TOOLS.test(each)) ? 'drawers' : null;
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
							rolldownOptions: {
								preserveEntrySignatures: 'allow-extension',
								output: { codeSplitting },
								treeshake: { manualPureFunctions: ['Object.freeze'] },
							},
						},
					}
				: null,
	};
}
