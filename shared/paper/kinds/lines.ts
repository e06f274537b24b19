import { EIA485, mostReceivers } from '../../dmx/index.ts';
import { numberOf, say, severalOf, type WrongAnswer } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type PaperLevel } from '../ids.ts';
import { nthName } from '../places.ts';
import type { Chance, QuestionGround, QuestionKind } from '../types.ts';

/** Receivers to one unit load: what makers build to (EIA-485 receivers of 1, 1/2, 1/4 and 1/8, from memory). */
const TO_ONE_LOAD = [1, 2, 4, 8];
/** What a splitter's input draws in these questions: the question says so. */
const SPLITTER_LOADS = 1;

/**
 * How many fixtures one line may carry. Easy: all alike; middle: and a splitter's input at its end; hard: some of a whole unit load
 * first.
 */
export const splitterAfter: QuestionKind = {
	id: 'splitter-after',
	topic: KIND_TOPICS['splitter-after'],
	forms: ['number'],
	levels: LEVELS,
	fits: () => true,
	make(_ground, chance, level) {
		const hasSplitter = level !== 'easy';
		const per = chance.pick(level === 'hard' ? TO_ONE_LOAD.slice(1) : TO_ONE_LOAD);
		const whole = level === 'hard' ? chance.int(2, 20) : 0;
		const room = EIA485.mostUnitLoads - whole - (hasSplitter ? SPLITTER_LOADS : 0);
		const right = whole + room * per;
		return numberOf(
			{
				facts: {
					most: EIA485.mostUnitLoads,
					per,
					isWhole: per === 1,
					whole,
					hasSplitter,
					room,
					more: room * per,
					right,
				},
			},
			{ unit: 'fixtures' },
			[right],
			[
				...(hasSplitter ? ([['splitter-not-counted', right + per]] as const) : []),
				['unit-load-for-fixture', EIA485.mostUnitLoads],
				['unit-load-for-fixture', whole + room],
				...(whole > 0 ? ([['first-ones-forgotten', room * per]] as const) : []),
				['other-load', mostReceivers(1 / per)],
				['one-fixture-too-many', right + 1],
				['one-fixture-too-few', right - 1],
			],
		);
	},
};

/** Ends of cables that are no fixture; words for them are in `content/en/papers`. */
const DESK = 'desk';
const SPLITTER = 'splitter';

/** Fixtures along each line, in order: one line from the desk, or one to a splitter and two from it. */
interface LinePlan {
	readonly trunk: readonly string[];
	readonly branches: readonly (readonly string[])[];
}

const COUNTS: Readonly<Record<PaperLevel, number>> = { easy: 3, middle: 5, hard: 6 };

function planFor({ profiles }: QuestionGround, chance: Chance, level: PaperLevel): LinePlan {
	const { name } = chance.pick(profiles);
	const numbers = Array.from({ length: COUNTS[level] }, (_, i) => i + 1);
	// at no level does the last name tell the last place
	const names = chance.shuffle(numbers).map((n) => nthName(name, n - 1));
	if (level !== 'hard') return { trunk: names, branches: [] };
	const trunk = chance.int(1, 2);
	const first = chance.int(1, 2);
	return {
		trunk: names.slice(0, trunk),
		branches: [names.slice(trunk, trunk + first), names.slice(trunk + first)],
	};
}

/** Cables along a line, from what feeds it. */
const cablesAlong = (from: string, names: readonly string[]): (readonly [string, string])[] =>
	names.map((name, i) => [i === 0 ? from : (names[i - 1] as string), name]);

/**
 * Where the terminators go. Easy: the cables of a row in order, its names in any; middle: both in any order; hard: a splitter with two
 * branches, whose input ends its own line.
 */
export const terminatorPlace: QuestionKind = {
	id: 'terminator-place',
	topic: KIND_TOPICS['terminator-place'],
	forms: ['several'],
	levels: LEVELS,
	fits: () => true,
	make(ground, chance, level) {
		const { trunk, branches } = planFor(ground, chance, level);
		const hasSplitter = branches.length > 0;
		const lines = hasSplitter ? branches : [trunk];
		const cables = [
			...cablesAlong(DESK, hasSplitter ? [...trunk, SPLITTER] : trunk),
			...branches.flatMap((branch) => cablesAlong(SPLITTER, branch)),
		];
		const names = [...trunk, ...branches.flat()].sort((a, b) => (a < b ? -1 : 1));
		const right = lines.flatMap((line) => line.slice(-1));
		const firsts = lines.flatMap((line) => line.slice(0, 1));
		const wrongs: WrongAnswer<readonly string[]>[] = [
			['other-end-of-the-line', firsts],
			['other-end-of-the-line', trunk.slice(0, 1)],
			...(hasSplitter ? ([['one-too-many', [...right, trunk.at(-1) as string]]] as const) : []),
			...right.map((name): WrongAnswer<readonly string[]> => ['some-missed', right.filter((each) => each !== name)]),
			['last-name-for-last-place', names.slice(-1)],
		];
		return severalOf(
			chance,
			{
				facts: {
					cables: (level === 'easy' ? cables : chance.shuffle(cables)).flat(),
					hasSplitter,
					count: right.length,
					names: right,
				},
			},
			names,
			{ label: (name) => say('name', { name }), isRight: (name) => right.includes(name), wrongs },
		);
	},
};
