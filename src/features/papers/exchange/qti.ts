import { strToU8, zipSync } from 'fflate';
import { exportWords } from '#words/papers/index.ts';
import { InputError } from '../../../../shared/error/index.ts';
import type { Item, Paper } from '../../../../shared/paper/index.ts';
import { askedLines } from './asked.ts';
import { qtiItem } from './qtiItem.ts';
import { qtiManifest, qtiTest, README } from './qtiPackage.ts';
import { type QtiVersion, versioned } from './qtiVersion.ts';
import { xmlText } from './xml.ts';

/** A paper as files for a learning platform, and the questions that could not be in it. */
export interface QtiFiles {
	/** Text by path within the package. */
	readonly files: Readonly<Record<string, string>>;
	readonly leftOut: readonly Item[];
}

/** No earlier date fits a zip file, and the same paper gives the same file. */
const DATE = '1980-01-01T00:00:00';

/**
 * A paper as a QTI package (1EdTech Question and Test Interoperability), 2.2 or 3.0, its right answers in it: for whoever sets the
 * paper on a platform of their own. Questions done on the bench are left out and named in `readme.txt`.
 * @throws InputError `qti.empty` where every question is one of those
 */
export function qtiFiles(paper: Paper, version: QtiVersion): QtiFiles {
	const made = paper.items.map((item, i) => ({ item, root: qtiItem(item, `${exportWords.question} ${i + 1}`) }));
	const within = made.flatMap(({ item, root }) => (root ? [{ id: item.id, path: `items/${item.id}.xml`, root }] : []));
	const leftOut = made.filter(({ root }) => !root).map(({ item }) => item);
	if (within.length === 0) throw new InputError('qti.empty', 'items', { trouble: 'nothing-to-hand-on' });
	const texts = within.map(({ path, root }) => [path, xmlText(versioned(root, version))] as const);
	return {
		files: {
			'imsmanifest.xml': xmlText(qtiManifest(paper, within, version)),
			'test.xml': xmlText(versioned(qtiTest(paper, within), version)),
			...Object.fromEntries(texts),
			[README]: readme(leftOut),
		},
		leftOut,
	};
}

/** The same as one zip file. */
export function qtiZip(paper: Paper, version: QtiVersion): { zip: Uint8Array<ArrayBuffer>; leftOut: readonly Item[] } {
	const { files, leftOut } = qtiFiles(paper, version);
	const bytes = Object.fromEntries(Object.entries(files).map(([path, text]) => [path, strToU8(text)]));
	return { zip: Uint8Array.from(zipSync(bytes, { level: 9, mtime: DATE })), leftOut };
}

function readme(leftOut: readonly Item[]): string {
	const { readmeTitle, readmeLeftOut, readmeNone } = exportWords;
	const lines = leftOut.map((item) => `- ${askedLines(item).join(' ')}`);
	return `${[readmeTitle, '', ...(lines.length === 0 ? [readmeNone] : [readmeLeftOut, ...lines])].join('\n')}\n`;
}
