import type { PaperResult } from './types.ts';

/** Whether a result is among those that figures are made of, and why. Words for each are in `content/en/papers`. */
export type ResultStanding =
	/** A person's first. */
	| { readonly counts: true; readonly why: 'first' }
	/** A later try, since nothing fits in those before it. */
	| { readonly counts: true; readonly why: 'in-place' }
	| { readonly counts: true; readonly why: 'by-hand' }
	/** Something in it does not fit. */
	| { readonly counts: false; readonly why: 'misfit' }
	/** Another of this name counts, and nothing shows that this is somebody else. */
	| { readonly counts: false; readonly why: 'later-try' }
	/** Begun at the very moment that another of this name was: it may be a copy. */
	| { readonly counts: false; readonly why: 'copy' }
	| { readonly counts: false; readonly why: 'by-hand' };

/** What tells one try from another. */
interface Try {
	readonly taken: { readonly result: Pick<PaperResult, 'started' | 'ended'> };
	readonly flags: readonly unknown[];
}

/** Milliseconds that two devices' clocks may differ by, and one person's tries so seem to overlap: this house's own. */
const CLOCKS_DIFFER = 60_000;

/**
 * Tells people of one name apart: nobody sits two papers at once, so of results that overlap in time each is somebody else's. One
 * begun at the very moment of another is a copy of it, and the same person's. Where a time is not known nothing tells them apart.
 * @param rows by when they ended
 * @returns a person's tries each, in time
 */
export function peopleOf<T extends Try>(rows: readonly T[]): T[][] {
	const people: T[][] = [];
	for (const row of rows) {
		const own = people.find((tries) => isCopy(row, tries)) ?? people.find((tries) => isAfter(row, tries));
		if (own) own.push(row);
		else people.push([row]);
	}
	return people;
}

function isCopy({ taken }: Try, tries: readonly Try[]): boolean {
	const { started } = taken.result;
	return started !== null && tries.some((each) => each.taken.result.started === started);
}

function isAfter({ taken }: Try, tries: readonly Try[]): boolean {
	const { started } = taken.result;
	return tries.every(({ taken: { result } }) => {
		if (started === null || result.ended === null) return true;
		return started > result.ended - CLOCKS_DIFFER;
	});
}

/**
 * Whether one of a person's tries counts: the first in which everything fits does, unless the trainer said otherwise.
 * @param said what the trainer said, where it was said
 */
export function standingOf<T extends Try>(row: T, tries: readonly T[], said: boolean | undefined): ResultStanding {
	if (said === true) return { counts: true, why: 'by-hand' };
	if (said === false) return { counts: false, why: 'by-hand' };
	if (row.flags.length > 0) return { counts: false, why: 'misfit' };
	const first = tries.find(({ flags }) => flags.length === 0);
	if (first === row) return { counts: true, why: tries[0] === row ? 'first' : 'in-place' };
	return {
		counts: false,
		why: isCopy(
			row,
			tries.filter((each) => each !== row),
		)
			? 'copy'
			: 'later-try',
	};
}
