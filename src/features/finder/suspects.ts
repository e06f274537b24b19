import { suspectWords } from '#words/finder/index.ts';
import type { SuspectView } from './view.ts';

/** Suspects parted by whether anything seen speaks against them. */
export interface Parted {
	/** Heaviest first; what the finder does not know is never among them. */
	readonly fitting: readonly SuspectView[];
	readonly against: readonly SuspectView[];
	readonly unknown: SuspectView | null;
}

/** Id of the suspect that stands for all the finder does not know. */
const UNKNOWN = 'unknown';

/** How many suspects the line names. */
const NAMED = 3;

/**
 * What the line over the suspects says, and whom it names. Where nothing fits it names nobody, and once a repair has helped it says no
 * more of what fits.
 */
export function lineOf(
	suspects: readonly SuspectView[],
	isMended: boolean,
): { count: string; named: readonly SuspectView[] } {
	const { fitting } = part(suspects);
	if (fitting.length > 0) return { count: suspectWords.fit(fitting.length), named: suspects.slice(0, NAMED) };
	return { count: isMended ? suspectWords.title : suspectWords.noneFits, named: [] };
}

/** Nothing can speak against what predicts nothing, so the unknown stands by itself. */
export function part(suspects: readonly SuspectView[]): Parted {
	const known = suspects.filter(({ id }) => id !== UNKNOWN);
	return {
		fitting: known.filter(({ against }) => against.length === 0),
		against: known.filter(({ against }) => against.length > 0),
		unknown: suspects.find(({ id }) => id === UNKNOWN) ?? null,
	};
}
