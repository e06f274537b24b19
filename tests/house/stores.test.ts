import { describe, expect, it } from 'vitest';
import { filesUnder, textOf } from './tree.ts';

/** What a browser keeps things in, and what tells other tabs of it. */
const STORES =
	/\b(localStorage|sessionStorage|indexedDB|BroadcastChannel|StorageEvent)\b|EventListener\(\s*['"`]storage['"`]/;
/** What is kept is declared by its key in one place. */
const KEY = /['"`]prep-bay\.(?!under-way)/;

/** Sets the look before anything is painted, so it stands in the page itself and can import nothing. */
const EARLY = 'src/site/theme/early.js';
/** Runs outside of any page, written out as it stands: it too can import nothing. */
const SERVICE = 'src/site/offline/serviceWorker.ts';

/** A source without its comments: a sentence may name what the code may not. */
const bare = (text: string): string => text.replace(/\/\*[\s\S]*?\*\/|(?<![:'"`\w])\/\/[^\n]*/g, '');

function reaches(file: string, text: string): string[] {
	if (file.startsWith('src/storage/') || file === EARLY || file === SERVICE) return [];
	return bare(text)
		.split('\n')
		.flatMap((line) => (STORES.test(line) || KEY.test(line) ? [`${file}: ${line.trim()}`] : []));
}

describe('nothing but src/storage touches what is kept on the device', () => {
	const files = filesUnder('src', ['.ts', '.tsx', '.astro', '.js', '.mjs']);

	it('has sources to read, the two exceptions among them', () => {
		expect(files.length).toBeGreaterThan(300);
		expect(files).toEqual(expect.arrayContaining([EARLY, SERVICE]));
	});

	it('none of them', () => {
		expect(files.flatMap((file) => reaches(file, textOf(file)))).toEqual([]);
	});

	it.each([
		['const store = () => localStorage;', 1],
		["window['sessionStorage'].clear();", 1],
		['const open = indexedDB.open(name);', 1],
		['const wire = new BroadcastChannel(name);', 1],
		["addEventListener('storage', look);", 1],
		["store().getItem('prep-bay.progress');", 1],
		['/** Kept in localStorage. */ const it = DEVICE;', 0],
		["import { DEVICE } from '../storage/index.ts'; // not localStorage", 0],
	])('%s', (text, count) => {
		expect(reaches('src/features/x.ts', text)).toHaveLength(count);
	});
});
