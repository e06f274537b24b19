import path from 'node:path';
import ts from 'typescript';
import { filesUnder, textOf } from '../house/tree.ts';

const FOLDERS = ['shared', 'sim', 'content', 'src', 'tests'] as const;

/** Who imports each file of the tree: straight, and through others too. */
export interface Graph {
	straight(file: string): readonly string[];
	reaching(file: string): ReadonlySet<string>;
}

export function importGraph(): Graph {
	const files = FOLDERS.flatMap((folder) => filesUnder(folder, ['.ts', '.tsx']));
	const known = new Set(files);
	const importers = new Map<string, string[]>();
	for (const file of files) {
		for (const { fileName } of ts.preProcessFile(textOf(file), true, true).importedFiles) {
			if (!fileName.startsWith('.')) continue;
			const to = path.posix.join(path.posix.dirname(file), fileName.replace(/\?.*$/, ''));
			if (known.has(to)) importers.set(to, [...(importers.get(to) ?? []), file]);
		}
	}
	const straight = (file: string): readonly string[] => importers.get(file) ?? [];
	return {
		straight,
		reaching(file) {
			const reached = new Set([file]);
			// grows as it is walked
			for (const at of reached) for (const importer of straight(at)) reached.add(importer);
			return reached;
		},
	};
}
