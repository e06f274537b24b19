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

/** Nothing can speak against what predicts nothing, so the unknown stands by itself. */
export function part(suspects: readonly SuspectView[]): Parted {
	const known = suspects.filter(({ id }) => id !== UNKNOWN);
	return {
		fitting: known.filter(({ against }) => against.length === 0),
		against: known.filter(({ against }) => against.length > 0),
		unknown: suspects.find(({ id }) => id === UNKNOWN) ?? null,
	};
}
