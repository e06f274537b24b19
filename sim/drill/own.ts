import { isInputError } from '../../shared/error/index.ts';
import { bundledProfile, type Profile } from '../../shared/profile/index.ts';
import { makeRandom } from '../../shared/random/index.ts';
import { atPanel, type PanelGoal, UNSEEN_GOALS } from './kinds/unseen.ts';
import { makeTask } from './make.ts';
import type { DrillFacts, Task } from './types.ts';

/** Draws of one goal before the next is asked: a start that is done already is drawn again. */
const TRIES = 12;

/** A task on a fixture that somebody brings: what is asked of it, and what the words of that need. */
export interface OwnTask {
	readonly task: Task;
	readonly goal: PanelGoal;
	readonly facts: DrillFacts;
}

/**
 * A task at the panel of this fixture: an address, a static colour, a mode and an address, or to follow a leader, by turns of the seed.
 * What its panel cannot do is passed over. The same fixture and seed give the same task.
 * @param profile a whole profile, which the sheet of the task carries
 * @param seed a whole number from 0 to 2^53 - 1
 * @returns null where nothing can be asked: its panel sets none of it
 */
export function ownTask(profile: Profile, seed: number): OwnTask | null {
	const random = makeRandom(seed).fork('own');
	const profiles = bundledProfile(profile.id) === profile ? [] : [profile];
	for (const step of UNSEEN_GOALS.keys()) {
		const goal = UNSEEN_GOALS[(seed + step) % UNSEEN_GOALS.length] as PanelGoal;
		if (!mayAsk(profile, goal)) continue;
		for (let draw = 0; draw < TRIES; draw++) {
			const made = madeOr(() => {
				const { facts, ...draft } = atPanel(random.fork(`${goal} ${draw}`), profile, goal);
				return { task: makeTask({ ...draft, rig: { ...draft.rig, profiles } }), goal, facts };
			});
			if (made) return made;
		}
	}
	return null;
}

/**
 * A seed that asks something else of the same fixture than this one does, in the order of the goals; where its panel has only one thing
 * to be asked, one that asks that anew.
 * @param drawn a whole number from 0 to 2^53 - 1, drawn for it
 */
export function ownSeedAfter(profile: Profile, seed: number, drawn: number): number {
	const turns = UNSEEN_GOALS.length;
	const now = ownTask(profile, seed)?.goal;
	const seeds = [...UNSEEN_GOALS.keys()].map((step) => drawn - (drawn % turns) + ((seed + step + 1) % turns));
	return seeds.find((each) => ownTask(profile, each)?.goal !== now) ?? drawn;
}

const mayAsk = ({ modes, held }: Profile, goal: PanelGoal): boolean =>
	goal === 'mode-address' ? modes.length > 1 : goal === 'held' ? held.length > 1 : true;

/** Null where it was done before it began, or its panel and its switches cannot get there. */
function madeOr(make: () => OwnTask): OwnTask | null {
	try {
		return make();
	} catch (error) {
		if (isInputError(error)) return null;
		throw error;
	}
}
