import { execFileSync } from 'node:child_process';
import type { Random } from '../../shared/random/index.ts';
import { filesUnder, root, textOf } from '../house/tree.ts';
import { type Mutant, mutantsOf } from './sites.ts';

/** The folder a file counts for, such as `sim/line`. */
export const folderOf = (file: string): string => file.split('/').slice(0, 2).join('/');

/** Lines of each file that differ from a commit, or are in no commit yet: the work at hand. */
export function changedSince(ref: string): ReadonlyMap<string, ReadonlySet<number>> {
	const git = (...args: string[]): string =>
		execFileSync('git', args, { cwd: root, encoding: 'utf8', maxBuffer: 2 ** 28 });
	const lines = new Map<string, Set<number>>();
	let file = '';
	for (const line of git('diff', '--unified=0', '--no-ext-diff', '--no-color', ref, '--', 'shared', 'sim').split(
		'\n',
	)) {
		if (line.startsWith('+++ ')) file = line.replace(/^\+\+\+ (b\/)?/, '');
		const hunk = /^@@ -\S+ \+(\d+)(?:,(\d+))? @@/.exec(line);
		if (!hunk) continue;
		const set = lines.get(file) ?? new Set();
		for (let i = 0; i < Number(hunk[2] ?? 1); i++) set.add(Number(hunk[1]) + i);
		lines.set(file, set);
	}
	for (const added of git('ls-files', '--others', '--exclude-standard', 'shared', 'sim').split('\n').filter(Boolean))
		lines.set(added, new Set(Array.from(textOf(added).split('\n'), (_, at) => at + 1)));
	return lines;
}

/** Everything that could be changed, of which `draw` takes some. */
export function mutantsUnder(wanted: (file: string) => boolean): Mutant[] {
	const files = [...filesUnder('shared', ['.ts']), ...filesUnder('sim', ['.ts'])];
	return files
		.filter((file) => !file.endsWith('.d.ts') && wanted(file))
		.flatMap((file) => mutantsOf(file, textOf(file)));
}

export interface Drawn {
	readonly mutants: readonly Mutant[];
	/** How many were drawn besides that the compiler refuses: no mutants, since no such code could be run. */
	readonly refused: number;
}

/** Some mutants by chance, one folder after another, so that each folder is asked alike; never two at the same place. */
export function draw(
	all: readonly Mutant[],
	count: number,
	random: Random,
	areRight: (mutants: readonly Mutant[]) => readonly boolean[],
): Drawn {
	const folders = [...Map.groupBy(all, ({ file }) => folderOf(file))].map(([folder, mutants]) =>
		random.fork(folder).shuffle(mutants),
	);
	const mutants: Mutant[] = [];
	const places = new Set<string>();
	const placeOf = ({ file, start }: Mutant): string => `${file}:${start}`;
	let refused = 0;
	while (mutants.length < count && folders.some((left) => left.length > 0)) {
		let without = folders.slice(0, count - mutants.length);
		while (without.length > 0) {
			const next = without.flatMap((left) => {
				let mutant = left.pop();
				while (mutant && places.has(placeOf(mutant))) mutant = left.pop();
				return mutant ? [{ left, mutant }] : [];
			});
			const right = areRight(next.map(({ mutant }) => mutant));
			for (const { mutant } of next.filter((_, at) => right[at])) {
				places.add(placeOf(mutant));
				mutants.push(mutant);
			}
			without = next.filter((_, at) => !right[at]).map(({ left }) => left);
			refused += without.length;
		}
	}
	return { mutants, refused };
}
