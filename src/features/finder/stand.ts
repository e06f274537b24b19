import { isInputError } from '../../../shared/error/index.ts';
import { type Bench, ELSE, type Finder, finderOn } from '../../../sim/finder/index.ts';
import { type Allows, optionsOf, type SetWalk, type WalkStep } from './walk.ts';

/** A finder that stands where a walk stands. Moving it on by a step is far quicker than walking it there from the start. */
export interface Stand {
	readonly bench: Bench;
	/** @throws InputError `finder.check` or `finder.outcome` where a step does not fit the table */
	at(walk: Pick<SetWalk, 'steps'>, allows: Allows): Finder;
}

/** @param firstOf the check a walk begins with, where that is not the best of this bench; asked for walks with no steps alone */
export function standOn(bench: Bench, firstOf: (allows: Allows) => string | undefined = () => undefined): Stand {
	let key = '';
	let isBegun = false;
	let finder: Finder | null = null;
	let taken: WalkStep[] = [];
	return {
		bench,
		at({ steps }, allows) {
			const options = JSON.stringify(allows);
			const begins = steps.length === 0;
			if (!finder || key !== options || (begins && !isBegun)) {
				const first = begins ? firstOf(allows) : undefined;
				finder = finderOn(bench, { ...optionsOf(allows), ...(first === undefined ? {} : { first }) });
				key = options;
				isBegun = begins;
				taken = [];
			}
			while (taken.length > shared(taken, steps)) {
				finder.undo();
				taken.pop();
			}
			for (const step of steps.slice(taken.length)) {
				take(finder, step);
				taken.push(step);
			}
			return finder;
		},
	};
}

/** How many steps two walks begin with alike. */
function shared(one: readonly WalkStep[], two: readonly WalkStep[]): number {
	const apart = one.findIndex((step, i) => JSON.stringify(step) !== JSON.stringify(two[i]));
	return apart < 0 ? one.length : apart;
}

/** An answer that no suspect would show is taken for something else. */
function take(finder: Finder, step: WalkStep): void {
	if (step.did !== 'answer') {
		finder.cannot(step.check);
		return;
	}
	try {
		finder.answer(step.check, step.outcome);
	} catch (error) {
		if (!isInputError(error) || error.code !== 'finder.outcome') throw error;
		finder.answer(step.check, ELSE);
	}
}
