import { gzipSync } from 'node:zlib';
import type { BrowserContext, Page, Response } from '@playwright/test';

/**
 * What files weigh on the way, in kB of 1000 bytes: `sent` as the server sent them, in the best encoding that the browser asks
 * for; `gzip` as a host would send them that knows no better.
 */
interface Weight {
	readonly sent: number;
	readonly gzip: number;
}

export async function weightOf(response: Response): Promise<Weight> {
	const { 'content-length': length } = response.headers();
	const body = await response.body();
	return { sent: Number(length ?? body.length) / 1000, gzip: gzipSync(body, { level: 9 }).length / 1000 };
}

/** Adds them up. */
export const sumOf = (weights: Iterable<Weight>): Weight =>
	[...weights].reduce((sum, { sent, gzip }) => ({ sent: sum.sent + sent, gzip: sum.gzip + gzip }), {
		sent: 0,
		gzip: 0,
	});

/** The same in words. */
export const told = ({ sent, gzip }: Weight): string => `${sent.toFixed(1)} kB (gzip ${gzip.toFixed(1)})`;

/** Weighs the scripts that a tab or a whole context fetches from here on, its workers' among them, each file once. */
export function weighScripts(of: Page | BrowserContext): () => Promise<Weight> {
	const scripts = new Map<string, Promise<Weight>>();
	(of as BrowserContext).on('response', (response) => {
		const { pathname } = new URL(response.url());
		if (pathname.endsWith('.js') && !scripts.has(pathname)) scripts.set(pathname, weightOf(response));
	});
	return async () => sumOf(await Promise.all(scripts.values()));
}
