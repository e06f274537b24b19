import type { Mutant } from './sites.ts';

/** A change that means the same, so that no test can tell it: where it stands, as a line of the file reads, and why. */
export interface Equivalent {
	readonly file: string;
	/** The line it stands on, with no blanks around it. */
	readonly line: string;
	readonly before: string;
	readonly after: string;
	readonly why: string;
}

/** Those met so far. Sparingly: a change that only seems to mean the same is a hole in the tests. */
export const EQUIVALENTS: readonly Equivalent[] = [];

/** The line a mutant stands on, with no blanks around it. */
const lineOf = ({ text, line }: Mutant): string => (text.split('\n')[line - 1] ?? '').trim();

/** Whether a mutant is that one. */
export const isThat = (mutant: Mutant, { file, line, before, after }: Equivalent): boolean =>
	mutant.file === file && mutant.before === before && mutant.after === after && lineOf(mutant) === line;

export const isEquivalent = (mutant: Mutant): boolean => EQUIVALENTS.some((each) => isThat(mutant, each));
