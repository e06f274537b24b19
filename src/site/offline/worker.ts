import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { generateSW } from 'workbox-build';

/** The service worker's name in the built site; it must stand at the top to answer for every page. */
const workerFile = 'sw.js';

const kept = ['html', 'js', 'css', 'woff2', 'svg', 'png', 'json', 'webmanifest', 'txt'];

/**
 * Writes the service worker of a built site into its folder.
 * @param folder the built site
 * @returns how many files it keeps, and their size in bytes, uncompressed
 * @throws Error where a file could not be listed or is over 5 MB
 */
export async function writeServiceWorker(folder: string): Promise<{ files: number; bytes: number }> {
	const { count, size, warnings } = await generateSW({
		swDest: path.join(folder, workerFile),
		globDirectory: folder,
		globPatterns: [`**/*.{${kept.join(',')}}`],
		globIgnores: [workerFile],
		maximumFileSizeToCacheInBytes: 5_000_000,
		mode: 'production',
		sourcemap: false,
		inlineWorkboxRuntime: true,
		// the pages already open are answered from the device as soon as everything is there
		clientsClaim: true,
		// a new version waits until it is told to take over, or no page is open
		skipWaiting: false,
		cleanupOutdatedCaches: true,
		directoryIndex: 'index.html',
		// what a link carries after the `?` is read by the page, not the host
		ignoreURLParametersMatching: [/.*/],
		navigateFallback: '/404.html',
		navigateFallbackDenylist: [/\.[a-z0-9]+$/],
		manifestTransforms: [
			async (entries) => ({
				manifest: await Promise.all(
					entries.map(async (entry) => ({ ...entry, integrity: await fingerprint(path.join(folder, entry.url)) })),
				),
				warnings: [],
			}),
		],
	});
	if (warnings.length > 0) throw new Error(`The service worker would not keep the whole site: ${warnings.join('; ')}`);
	return { files: count, bytes: size };
}

/** Without it a host that changes versions halfway through would leave files of two versions under one. */
async function fingerprint(file: string): Promise<string> {
	return `sha384-${createHash('sha384')
		.update(await readFile(file))
		.digest('base64')}`;
}
