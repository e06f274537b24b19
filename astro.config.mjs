import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { splitCode } from './src/site/code-splitting.ts';
import { licences } from './src/site/licences/index.ts';
import { offline } from './src/site/offline/index.ts';
import { hostHeaders } from './src/site/server/index.ts';
import { stamp } from './src/site/stale/index.ts';
import { termLinks } from './src/wording/terms/index.ts';

/** What the policy calls a file whose text stands in the page itself. */
const hashOf = (file) => {
	const text = readFileSync(new URL(file, import.meta.url));
	return `sha256-${createHash('sha256').update(text).digest('base64')}`;
};

/** What ships leaves out what looks after invariants (`shared/error/require.ts`); a development server keeps it. */
const shipped = {
	name: 'prep-bay-shipped',
	config: (_, { command }) => ({ define: command === 'build' ? { SHIPPED: 'true' } : {} }),
};

export default defineConfig({
	output: 'static',
	trailingSlash: 'always',
	publicDir: './src/static',
	// its colours are style attributes of its own
	markdown: { syntaxHighlight: false },
	devToolbar: { enabled: false },
	// Safari 16.4 and its like of 2023: a crew's old phone
	vite: {
		build: {
			target: 'es2022',
			// Astro marks each lesson with a directive of its own, and the bundler would warn of each; how long it takes is no fault
			rolldownOptions: { checks: { moduleLevelDirective: false, bundlerTimings: false } },
		},
		plugins: [shipped, termLinks(), splitCode()],
		worker: {
			format: 'es',
			rolldownOptions: { checks: { bundlerTimings: false }, treeshake: { manualPureFunctions: ['Object.freeze'] } },
		},
	},
	security: {
		csp: {
			directives: [
				"default-src 'none'",
				"connect-src 'self'",
				"font-src 'self'",
				"img-src 'self' data:",
				"manifest-src 'self'",
				"worker-src 'self'",
				"base-uri 'none'",
				"form-action 'none'",
				// text is never taken for markup or script; whose address a worker may have, scriptAddresses.js says
				"require-trusted-types-for 'script'",
				'trusted-types default',
			],
			// the first sets the theme before anything is painted
			scriptDirective: {
				hashes: [hashOf('./src/site/theme/early.js'), hashOf('./src/site/policy/scriptAddresses.js')],
			},
			// attributes alone: a drawing places its parts by them
			styleDirective: {
				hashes: [hashOf('./src/ui/styles/layers.css')],
				resources: [{ resource: "'unsafe-inline'", kind: 'attribute' }],
			},
		},
	},
	// offline lists what the others have made, and the stamp counts that too: so they come last
	// only markup is for the JSX compiler: what it prints of other TypeScript is not always what it read
	integrations: [mdx(), preact({ include: ['src/**/*.tsx'] }), licences(), hostHeaders(), offline(), stamp()],
});
