import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

/** The repository's root, with a slash at the end. */
export const root: string = fileURLToPath(new URL('../../', import.meta.url));

/** Paths from the root, with forward slashes, of the files under a folder whose names end in one of `ends`. */
export function filesUnder(folder: string, ends: readonly string[]): string[] {
	try {
		return readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
			.filter((it) => it.isFile() && ends.some((end) => it.name.endsWith(end)))
			.map((it) => path.relative(root, path.join(it.parentPath, it.name)).split(path.sep).join('/'))
			.sort();
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
		throw error;
	}
}

/** The text of a file named by its path from the root. */
export const textOf = (file: string): string => readFileSync(path.join(root, file), 'utf8');
