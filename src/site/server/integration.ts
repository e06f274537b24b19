import { writeFile } from 'node:fs/promises';
import type { AstroIntegration } from 'astro';
import { HEADERS_FILE, headersText } from './headers.ts';

/** Leaves what a host is to send with the site's files beside them, for whoever puts the site up. */
export function hostHeaders(): AstroIntegration {
	return {
		name: 'prep-bay-host-headers',
		hooks: {
			'astro:build:done': ({ dir }) => writeFile(new URL(HEADERS_FILE, dir), headersText()),
		},
	};
}
