import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { writeServiceWorker } from './write.ts';

/** Writes the service worker when everything else is built: put it last. */
export function offline(): AstroIntegration {
	return {
		name: 'prep-bay-offline',
		hooks: {
			'astro:build:done': async ({ dir, logger }) => {
				const { first, all } = await writeServiceWorker(fileURLToPath(dir));
				const kB = (bytes: number) => Math.round(bytes / 1000);
				logger.info(
					`${all.files} files, ${kB(all.bytes)} kB gzipped, are kept for use with no network; ${first.files}, ${kB(first.bytes)} kB, at once`,
				);
			},
		},
	};
}
