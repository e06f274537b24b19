import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { writeServiceWorker } from './worker.ts';

/** Writes the service worker when everything else is built: put it last. */
export function offline(): AstroIntegration {
	return {
		name: 'prep-bay-offline',
		hooks: {
			'astro:build:done': async ({ dir, logger }) => {
				const { files, bytes } = await writeServiceWorker(fileURLToPath(dir));
				logger.info(`${files} files, ${Math.round(bytes / 1000)} kB, are kept for use with no network`);
			},
		},
	};
}
