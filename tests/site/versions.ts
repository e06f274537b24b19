import {
	cpSync,
	existsSync,
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	renameSync,
	rmSync,
	writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { expect, type Page } from '@playwright/test';
import { writeServiceWorker } from '../../src/site/offline/index.ts';
import { root } from '../house/tree.ts';
import { built } from './pages.ts';

/** Where versions of the site stand while a run lasts. */
const versions = path.join(root, 'tests/.out/versions');

/**
 * Makes a folder that is the built site as version `name`: every page and every stylesheet says which version it is of, every
 * fingerprinted file has a name of its own, and the service worker is written anew by the site's own build step.
 * Remove it with `drop`.
 */
export async function makeVersion(name: string): Promise<string> {
	mkdirSync(versions, { recursive: true });
	const folder = mkdtempSync(path.join(versions, `making-${name}-`));
	cpSync(built, folder, { recursive: true });
	rmSync(path.join(folder, 'sw.js'));
	const assets = readdirSync(path.join(folder, '_astro'));
	const renamed = new Map(assets.map((file) => [file, file.replace(/(\.\w+)$/, `${name}$1`)]));
	for (const file of readdirSync(folder, { recursive: true }) as string[]) {
		if (!/\.(html|css|js)$/.test(file)) continue;
		let text = readFileSync(path.join(folder, file), 'utf8');
		for (const [from, to] of renamed) text = text.replaceAll(from, to);
		if (file.endsWith('.html')) text = text.replace('<html ', `<html data-version="${name}" `);
		if (file.endsWith('.css')) text += `:root{--version:${name}}`;
		writeFileSync(path.join(folder, file), text);
	}
	for (const [from, to] of renamed) renameSync(path.join(folder, '_astro', from), path.join(folder, '_astro', to));
	await writeServiceWorker(folder);
	return folder;
}

/**
 * Version `name` of the site, made once in a run for all its tests: they serve it and leave it as it is. The run before leaves none
 * (`forgetVersions`).
 */
export async function version(name: 'one' | 'two'): Promise<string> {
	const folder = path.join(versions, name);
	if (existsSync(folder)) return folder;
	const made = await makeVersion(name);
	try {
		renameSync(made, folder);
	} catch (error) {
		// another worker made it meanwhile
		drop(made);
		if (!existsSync(folder)) throw error;
	}
	return folder;
}

/** Forgets the versions of the run before: the site may be another by now. */
export default function forgetVersions(): void {
	rmSync(versions, { recursive: true, force: true });
}

export const drop = (folder: string): void => rmSync(folder, { recursive: true, force: true });

/** Which versions a page is made of: its markup's, then its stylesheet's. */
export function versionsOf(tab: Page): Promise<[string | undefined, string]> {
	return tab.evaluate(() => [
		document.documentElement.dataset['version'],
		getComputedStyle(document.documentElement).getPropertyValue('--version').trim(),
	]);
}

/** How much of the site is on the device, as the service worker says; null while none answers for the page. */
export function keptOf(tab: Page): Promise<{ kept: number; of: number } | null> {
	return tab.evaluate(async () => {
		const worker = navigator.serviceWorker.controller;
		if (worker?.state !== 'activated') return null;
		const { port1, port2 } = new MessageChannel();
		return new Promise<{ kept: number; of: number }>((resolve) => {
			port1.onmessage = ({ data }) => resolve(data);
			worker.postMessage({ type: 'what-is-kept' }, [port2]);
		});
	});
}

/** Waits until the service worker answers for the page, and the whole site is on the device. */
export async function untilKept(tab: Page): Promise<void> {
	await expect
		.poll(
			async () => {
				const state = await keptOf(tab);
				return state !== null && state.of > 0 && state.kept === state.of;
			},
			{ timeout: 60_000, intervals: [300] },
		)
		.toBe(true);
}
