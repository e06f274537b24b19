/**
 * Questions that are read from a simulated rig: what a fixture does with a frame, which fader lets a colour out, which setting makes a
 * follower follow, which role each of a row must have, what a display says, what to check first, which cautions go with a task, and
 * tasks done on the bench.
 * Each right answer is found by opening the rig and looking, or by asking the finder or the drill; each wrong option is another
 * reading of the same rig, opened and looked at likewise, and plainly not the same. `setRigPaper` and `markRigPaper` set and mark
 * papers with these kinds beside the plain ones.
 *
 * Left out: lights that take more than a few words to tell, what a microphone hears, and rigs too large for the finder to answer
 * at once. What is seen is told as a person would: colours by name, output in percent, a programme by what it does.
 */

import { InputError } from '../../shared/error/index.ts';
import { lastFew } from '../../shared/memo/index.ts';
import {
	type Answers,
	type Item,
	markPaper,
	type Paper,
	type PaperMark,
	type PaperRecipeInput,
	type PaperSources,
	type PracticalMark,
	setPaper,
} from '../../shared/paper/index.ts';
import { type BundledKind, type Drill, makeDrill } from '../drill/index.ts';
import { markDrill } from '../drill/trusted.ts';
import { readLog } from '../event/index.ts';
import { cautionHere, onTheBench } from './drills.ts';
import { displaySays } from './kinds/display-says.ts';
import { firstCheck } from './kinds/first-check.ts';
import { followSetting } from './kinds/follow-setting.ts';
import { frameLook } from './kinds/frame-look.ts';
import { gateSlot } from './kinds/gate-slot.ts';
import { rowRoles } from './kinds/row-roles.ts';

/** The kinds of question that are read from a rig, and how what is done on the bench is marked. */
export const RIG_SOURCES: PaperSources = Object.freeze({
	kinds: Object.freeze([
		frameLook,
		followSetting,
		rowRoles,
		displaySays,
		firstCheck,
		cautionHere,
		onTheBench,
		gateSlot,
	]),
	practical,
});

/** Sets a paper with the kinds that are read from a rig beside the plain ones. @throws InputError as `setPaper`. */
export const setRigPaper = (recipe: PaperRecipeInput, seed: number): Paper => setPaper(recipe, seed, RIG_SOURCES);

/** Marks answers to a paper, and what was done on the bench by playing its log. @throws InputError as `markPaper`. */
export const markRigPaper = (paper: Paper, answers: Answers): PaperMark => markPaper(paper, answers, RIG_SOURCES);

/** Drills kept made, the last few: a class hands in the same ones. */
const KEPT = 64;
const drills = lastFew<Drill>(KEPT);

const drillOf = (kind: string, seed: number): Drill =>
	drills(`${kind} ${seed}`, () => makeDrill(kind as BundledKind, seed));

/**
 * Marks what was done on the bench: the drill is made anew from its kind and seed, and the log played into it. What was done live is
 * not right, whatever was put right afterwards.
 * @throws InputError `paper.practical` for a question that is none, `log.shape`, `log.length`, `event.shape` for a log that is none,
 * `drill.hands` for a hand the drill does not give, and as `replay` for an event that fits nothing
 */
function practical({ ask }: Item, log: readonly unknown[]): PracticalMark {
	if (ask.form !== 'practical')
		throw new InputError('paper.practical', 'ask', { trouble: 'not-practical', form: ask.form });
	const drill = drillOf(ask.drill.kind, ask.drill.seed);
	const { done, harm, right, presses, fewest, milliseconds } = markDrill(drill, readLog(log));
	// on the practice bench a link made live can be made again; where it counts, a mains lead once moved live is not right
	const harmed = new Set(harm.map(({ fixture }) => fixture));
	const held = right.filter((at) => {
		const it = drill.goal[at];
		return !(it?.is === 'fed' && harmed.has(it.fixture));
	});
	const isDone = done && harm.length === 0;
	return { done: isDone, right: held.length, of: drill.goal.length, presses, fewest, milliseconds };
}
