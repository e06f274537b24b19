import { backWords } from '#words/bench/index.ts';
import { InputError } from '../../../shared/error/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import type { Rig } from '../../../sim/rig/index.ts';
import { openUnharmed } from '../../../sim/rig/trusted.ts';
import { describePanel, fixtureLight } from '../../wording/index.ts';
import { choicesOf, play } from './cases.ts';
import { sheetOf } from './open.ts';
import type { BenchSpec, PredictionSpec } from './schema.ts';

/** A question about what a bench will show, asked before it is done. */
export interface Prediction {
	readonly ask: string;
	/** What is done, from the bench as it is set up. */
	readonly done: readonly RigEvent[];
	readonly options: readonly string[];
	/** Which of them the rig shows. */
	readonly right: number;
}

/**
 * A prediction's options, read off the lesson's rig: what the watched fixture shows once all is done, against what it shows after
 * the mistakes named, what it showed before, what the others show, and darkness.
 * @throws InputError `lesson.try` where the rig gives fewer than two wrong ones
 */
export function predictionOf(bench: BenchSpec, { ask, done, watch, see, mistakes }: PredictionSpec): Prediction {
	const sheet = sheetOf(bench);
	const after = (log: readonly RigEvent[]): Rig => {
		const rig = openUnharmed(sheet);
		play(rig, bench.log);
		play(rig, log);
		return rig;
	};
	const seenOf = (rig: Rig, fixture = watch): string => SEEN[see](rig, fixture);
	const end = after(done);
	const right = seenOf(end);
	const others = see === 'display' ? [] : sheet.fixtures.map(({ id }) => seenOf(end, id));
	const dark = after([{ type: 'power.switch', fixture: watch, on: false }]);
	const all = [...mistakes.map((log) => seenOf(after(log))), seenOf(after([])), ...others, seenOf(dark)];
	const choices = choicesOf(right, all);
	if (!choices) throw new InputError('lesson.try', 'try', { trouble: 'too-few-options', ask });
	return { ask, done, ...choices };
}

/** What can be watched, in the words of the bench. */
const SEEN: Readonly<Record<PredictionSpec['see'], (rig: Rig, fixture: string) => string>> = {
	light: fixtureLight,
	display: describePanel,
	data: (rig, fixture) => backWords.data[rig.look(fixture).lamps.data],
};
