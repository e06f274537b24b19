import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';

/** All that a build is made from; of the packages, the lock file tells the versions. */
const INPUTS = [
	'shared',
	'sim',
	'content',
	'src',
	'astro.config.mjs',
	'package.json',
	'package-lock.json',
	'tsconfig.json',
];

/** Where a build says what it was made from, in its own folder. */
export const STAMP_FILE = 'built.json';

/** What a build was made from, and how much it made. */
export interface Stamp {
	/** Digest of names and contents of every input. */
	readonly inputs: string;
	/** Files in the build beside the stamp, and their size in bytes: a build that lost some is no build. */
	readonly files: number;
	readonly bytes: number;
}

function filesIn(root: string, name: string): string[] {
	const full = path.join(root, name);
	if (!existsSync(full)) return [];
	if (!statSync(full).isDirectory()) return [name];
	return (readdirSync(full, { recursive: true }) as string[])
		.map((file) => path.join(name, file))
		.filter((file) => statSync(path.join(root, file)).isFile())
		.sort();
}

/** The digest of all that a build is made from, whenever it was written. */
export function digestInputs(root: string): string {
	const hash = createHash('sha256');
	for (const file of INPUTS.flatMap((name) => filesIn(root, name))) {
		const bytes = readFileSync(path.join(root, file));
		// lengths, so that nothing can move from one file into the next unseen
		hash.update(JSON.stringify([file, bytes.length])).update(bytes);
	}
	return hash.digest('hex');
}

/** A build's files and their size, its stamp left out. */
export function measureBuild(folder: string): Pick<Stamp, 'files' | 'bytes'> {
	const files = filesIn(folder, '.').filter((file) => file !== STAMP_FILE);
	return { files: files.length, bytes: files.reduce((sum, file) => sum + statSync(path.join(folder, file)).size, 0) };
}

/** Why a build must be made anew, as a sentence; null where it is what the tree would make. */
export function whyStale(root: string, folder: string): string | null {
	const file = path.join(folder, STAMP_FILE);
	if (!existsSync(file)) return 'There is no finished build yet.';
	let stamp: Partial<Stamp>;
	try {
		stamp = JSON.parse(readFileSync(file, 'utf8')) as Partial<Stamp>;
	} catch {
		return 'What the last build says of itself cannot be read.';
	}
	const { files, bytes } = measureBuild(folder);
	if (stamp.files !== files || stamp.bytes !== bytes) return 'The last build is not as it was left.';
	return stamp.inputs === digestInputs(root) ? null : 'Something it is made from has changed since the last build.';
}
