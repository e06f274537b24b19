import type { Plugin, Rolldown } from 'vite';

/**
 * Which scripts share a file: those of a folder that most pages need from the start, and those that every bench does. A page
 * fetches fewer files so, and a file that several pages share is fetched once. All else is split by what needs it. What fetches a
 * task goes with the bench: by itself it would go with the page of drills, and a lesson would get that too.
 */
const codeSplitting: Exclude<Rolldown.OutputOptions['codeSplitting'], boolean | undefined> = {
	// a group takes what is its own, and not what that needs of others
	includeDependenciesRecursively: false,
	groups: [
		{
			name: 'page',
			tags: ['$initial'],
			test: /\/node_modules\/(preact|@preact|@astrojs)\/|\/src\/(ui\/(?!Sign)|storage\/(?!pages\/))|\/src\/site\/updates\/underWay|\/src\/wording\/laterError|\/src\/features\/rig\/link(Version)?\.ts|\/shared\/error\/|\/content\/(locale\.ts|[\w-]+\/(locale|ui)\/)|preload-helper/,
		},
		{
			name: 'rig',
			tags: ['$initial'],
			test: /\/(sim\/(rig|fixture|line|light|event)|shared\/optics(?!\/row))\/|\/node_modules\/(xstate|culori)\//,
		},
		// what a rig is made of, which a plan needs without its machine
		{ name: 'gear', tags: ['$initial'], test: /\/shared\/(dmx|memo|power|profile|random|sheet(?!\/quick))\// },
		{
			name: 'words',
			tags: ['$initial'],
			test: /\/src\/wording\/(colour|fill|kinds|names|rigKinds)\.ts|\/content\/[\w-]+\/(rig\/|fixtures\/names)/,
		},
		{
			name: 'quiz',
			tags: ['$initial'],
			test: /\/src\/features\/papers\/(asking|Chart|index|pages)\.tsx?|\/content\/[\w-]+\/papers\/(names|screens)/,
		},
		{
			name: 'drills',
			tags: ['$initial'],
			test: /\/src\/features\/(drills|progress)\/(?!taskAtWork)|\/content\/[\w-]+\/drills\/(doing|progress)|\/sim\/drill\/types\.ts/,
		},
		// but what other pages offer of a rig, which comes with those
		{ name: 'plan', tags: ['$initial'], test: /\/src\/features\/rig-sheet\/(?!RigPractise|lazily)/ },
		{ name: 'planning', tags: ['$initial'], test: /\/shared\/plan\// },
		{ name: 'offers', test: /\/src\/features\/rig-sheet\/(RigPractise|lazily)/ },
		// what the desk takes besides, which a wide bench opens with: small, and shared with other tools
		{
			name: 'desk',
			test: /\/shared\/dmx\/(bands|placement)\.ts|\/src\/features\/bench\/NumberField\.tsx|\/content\/[\w-]+\/bench\/desk\.ts/,
		},
		// but what only the mark of a panel never seen takes
		{ name: 'way', test: /\/sim\/drill\/(way\/(?!stranger)|(check|hands|harm|wish)\.ts)/ },
		// by its name the service worker knows what is kept only once it was asked for (src/site/offline)
		{ name: 'pdf-reader', test: /\/node_modules\/pdfjs-dist\// },
		{ name: 'parts', test: /\/shared\/profile\/(bundled\/parts|chromaticity)\.ts/ },
		{
			name: 'bench',
			tags: ['$initial'],
			test: /\/src\/features\/(bench\/|rig\/|drills\/taskAtWork)|\/content\/[\w-]+\/(bench|reasons)\/|\/src\/wording\/(change|describe|display|event|reason)\.ts/,
		},
	],
};

/** Scripts for the browser: in few files, with no list of what to fetch ahead, and without frozen tables that nobody reads. */
export const splitCode = (): Plugin => ({
	name: 'prep-bay-split-code',
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
});
