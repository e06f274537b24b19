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
export const EQUIVALENTS: readonly Equivalent[] = [
	{
		file: 'shared/power/index.ts',
		line: 'const emitter = profile.emitters.find((each) => each.id === id);',
		before: 'find',
		after: 'findLast',
		why: 'No two emitters of a profile have one id: a profile where they do is refused.',
	},
	{
		file: 'shared/statistics/index.ts',
		line: 'const whole = variance(scores.map((row) => row.reduce((total, score) => total + score, 0))) ?? 0;',
		before: '+',
		after: '-',
		why: 'Every total turns negative, and numbers vary as much as their negatives.',
	},
	{
		file: 'sim/finder/finder.ts',
		line: "const SLOW = new Set(['line-ended', 'line-straight', 'neighbour-strips', 'desk-restart', 'leader-change']);",
		before: "['line-ended', 'line-straight', 'neighbour-strips', 'desk-restart', 'leader-change']",
		after: "['line-straight', 'line-ended', 'neighbour-strips', 'desk-restart', 'leader-change']",
		why: 'A set that is only asked what it has knows no order.',
	},
	{
		file: 'sim/finder/witness.ts',
		line: 'return [(4 * x) / below, (9 * y) / below];',
		before: '[(4 * x) / below, (9 * y) / below]',
		after: '[(9 * y) / below, (4 * x) / below]',
		why: "Two colours are only held to the distance between them, which is the same with u' and v' exchanged in both.",
	},
	{
		file: 'sim/sequence/play.ts',
		line: '(_, suspect) => Math.floor(hash01(suspect, 1) * 2 ** 26) * 2 ** 26 + Math.floor(hash01(suspect, 2) * 2 ** 26),',
		before: '26',
		after: '27',
		why: 'Marks only have to differ by chance: a set is looked up by them, and worked out again where it is not found.',
	},
	{
		file: 'sim/sequence/play.ts',
		line: 'for (let i = 0; i < left; i++) spare[i] = work[from + i] as number;',
		before: '<',
		after: '<=',
		why: 'One more is copied than is looked at afterwards.',
	},
];

/** The line a mutant stands on, with no blanks around it. */
const lineOf = ({ text, line }: Mutant): string => (text.split('\n')[line - 1] ?? '').trim();

/** Whether a mutant is that one. */
export const isThat = (mutant: Mutant, { file, line, before, after }: Equivalent): boolean =>
	mutant.file === file && mutant.before === before && mutant.after === after && lineOf(mutant) === line;

export const isEquivalent = (mutant: Mutant): boolean => EQUIVALENTS.some((each) => isThat(mutant, each));
