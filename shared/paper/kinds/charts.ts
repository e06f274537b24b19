import { slotOf } from '../../dmx/index.ts';
import { footprintOf, type Mode, modeOf, type Profile } from '../../profile/index.ts';
import { profileFor } from '../../sheet/index.ts';
import { benchWith } from '../bench.ts';
import {
	entriesOf,
	type FootprintSlot,
	isInPairs,
	modesWhere,
	numbersOf,
	otherModes,
	readsAlike,
	slotChartOf,
	slotNamesOf,
	slotSay,
} from '../chart.ts';
import { draft, fresh, inTurn, lettered, numberOf, oneOf, say, type WrongAnswer } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type MistakeId, type PaperLevel } from '../ids.ts';
import { startFor } from '../places.ts';
import type { Answer, Chance, QuestionGround, QuestionKind, Say } from '../types.ts';

/** How many names of slots a mode needs, all told apart: a right one and two wrong. */
const LEAST_NAMES = 3;

const different = (numbers: readonly FootprintSlot[]): number =>
	numbers.filter((each, i) => numbers.findIndex((other) => readsAlike(each, other)) === i).length;

const placesOf = (ground: QuestionGround) =>
	modesWhere(ground, ({ mode }) => different(numbersOf(mode)) >= LEAST_NAMES);

/**
 * What does this slot of the desk do? Easy: the fixture starts at 1; middle: elsewhere; hard: with a chart that names the slots in
 * order and leaves the counting, pairs and all.
 */
export const slotDoes: QuestionKind = {
	id: 'slot-does',
	topic: KIND_TOPICS['slot-does'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => placesOf(ground).length > 0,
	make(ground, chance, level) {
		const all = placesOf(ground);
		const paired = all.filter(({ mode }) => isInPairs(mode));
		const hard = level === 'hard' && paired.length > 0;
		const { profile, mode } = chance.pick(hard ? paired : all);
		const numbers = numbersOf(mode);
		const start = level === 'easy' ? 1 : startFor(chance, 'hard', footprintOf(mode));
		const right = chance.pick(numbers);
		const slot = slotOf(start, right.n);
		const at = (mistake: MistakeId, found: FootprintSlot | undefined): WrongAnswer<Say>[] =>
			found ? [[mistake, slotSay(found)]] : [];
		const near = [...numbers].sort((a, b) => Math.abs(a.n - right.n) - Math.abs(b.n - right.n));
		const others = otherModes(profile, mode).flatMap((each) => at('other-modes-chart', numbersOf(each)[right.n - 1]));
		return oneOf(
			chance,
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					start,
					slot,
					n: right.n,
					less: start - 1,
					name: right.name,
					part: right.part,
					counted: hard,
					...(hard ? { slotNames: slotNamesOf(mode) } : { slotChart: slotChartOf(mode) }),
				},
				bench: benchWith({ profile, mode, address: start, alone: right.n }),
			},
			slotSay(right),
			[
				...(hard ? at('fine-ignored', entriesOf(mode)[right.n - 1]) : []),
				...chance.shuffle([
					...at('off-by-one-low', numbers[right.n - 2]),
					...at('off-by-one-high', numbers[right.n]),
					...others.slice(0, 1),
				]),
				...near.filter(({ n }) => n < right.n).flatMap((each) => at('off-by-one-low', each)),
				...near.filter(({ n }) => n > right.n).flatMap((each) => at('off-by-one-high', each)),
			],
			ground,
		);
	},
};

/** Slots on the left, and what stands on the right besides: one more than there are. */
const ROWS = 3;

/** Runs of a chart in which no two slots read alike. */
const runsOf = (numbers: readonly FootprintSlot[]): FootprintSlot[][] =>
	numbers
		.map((_, i) => numbers.slice(i, i + ROWS + 1))
		.filter((run) => run.length > ROWS && run.every((a) => run.every((b) => a === b || !readsAlike(a, b))));

const places = (ground: QuestionGround) => modesWhere(ground, ({ mode }) => runsOf(numbersOf(mode)).length > 0);

type Match = Extract<Answer, { form: 'match' }>;

/** Which slot of the desk does what? Easy: counted from 1; middle: from a start address; hard: a run with a pair in it, if any. */
export const matchSlots: QuestionKind = {
	id: 'match-slots',
	topic: KIND_TOPICS['match-slots'],
	forms: ['match'],
	levels: LEVELS,
	fits: (ground) => places(ground).length > 0,
	make(ground, chance, level) {
		const { profile, mode } = chance.pick(places(ground));
		const numbers = numbersOf(mode);
		const runs = runsOf(numbers);
		const paired = runs.filter((each) => each.some(({ part }) => part === 'fine'));
		const run = chance.pick(level === 'hard' && paired.length > 0 ? paired : runs);
		const start = level === 'easy' ? 1 : startFor(chance, 'hard', numbers.length);
		// the odd one out stands before the run or behind it: what a count one off would take for the first or the last
		const extraFirst = chance.chance(0.5);
		const asked = extraFirst ? run.slice(1) : run.slice(0, ROWS);
		const left = inTurn(asked, ({ n }) => say('desk-slot', { slot: start + n - 1 }));
		const right = lettered(chance, run, slotSay);
		const pairs = (shift: number): Record<string, string> =>
			Object.fromEntries(
				asked.map((each) => [left.idOf(each), right.idOf(run[run.indexOf(each) + shift] as FootprintSlot)]),
			);
		const key = pairs(0);
		const mistakes: { mistake: 'off-by-one-low' | 'off-by-one-high'; answer: Match }[] = [
			extraFirst
				? { mistake: 'off-by-one-low', answer: { form: 'match', pairs: pairs(-1) } }
				: { mistake: 'off-by-one-high', answer: { form: 'match', pairs: pairs(1) } },
		];
		return draft(
			{
				facts: { fixture: profile.name, mode: mode.name, start, slotChart: slotChartOf(mode), less: start - 1 },
				bench: benchWith({ profile, mode, address: start }),
			},
			{
				ask: { form: 'match', left: left.options, right: right.options },
				key: { form: 'match', right: key },
				mistakes: fresh(mistakes, ({ pairs: each }) => JSON.stringify(each), JSON.stringify(key)),
			},
		);
	},
};

/** Slots of a mode that no other reads like. */
const told = (mode: Mode): FootprintSlot[] => {
	const numbers = numbersOf(mode);
	return numbers.filter((each) => numbers.every((other) => other === each || !readsAlike(each, other)));
};

/** A fixture in a mode at an address; `crew` is what the crew calls it, where a rig sheet does. */
interface FixtureAtAddress {
	readonly profile: Profile;
	readonly mode: Mode;
	readonly start: number;
	readonly crew: string | null;
	readonly universe: number;
}

const modesOf = (ground: QuestionGround) => modesWhere(ground, ({ mode }) => told(mode).length > 0);

/** The rig's fixtures that the paper is about, as its desk has them, for the easy and middling ones. */
function patched({ sheet, profiles }: QuestionGround): FixtureAtAddress[] {
	if (!sheet?.desk) return [];
	return sheet.desk.patch.flatMap(({ fixture, universe, address, mode }) => {
		const placed = sheet.fixtures.find(({ id }) => id === fixture);
		if (!placed) return [];
		const profile = profileFor(sheet, placed.profile);
		if (profiles.every(({ id }) => id !== profile.id)) return [];
		return [{ profile, mode: modeOf(profile, mode), start: address, crew: placed.name, universe }];
	});
}

function pickAt(ground: QuestionGround, chance: Chance, level: PaperLevel): FixtureAtAddress {
	const rig =
		level === 'hard'
			? []
			: patched(ground).filter(({ mode, start }) => told(mode).length > 0 && start + footprintOf(mode) <= 513);
	if (rig.length > 0) return chance.pick(rig);
	const all = modesOf(ground);
	const paired = all.filter(({ mode }) => isInPairs(mode));
	const { profile, mode } = chance.pick(level === 'hard' && paired.length > 0 ? paired : all);
	return { profile, mode, start: startFor(chance, level, footprintOf(mode)), crew: null, universe: 1 };
}

/**
 * Which slot of the desk is this slot of a fixture? Easy: from a round address; middle: from any; hard: the chart names the slots in
 * order and leaves the counting, pairs and all. Where there is a rig, easy and middling ones are about its own fixtures.
 */
export const deskSlot: QuestionKind = {
	id: 'desk-slot',
	topic: KIND_TOPICS['desk-slot'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => modesOf(ground).length > 0,
	make(ground, chance, level) {
		const { profile, mode, start, crew, universe } = pickAt(ground, chance, level);
		const counted = level === 'hard' && isInPairs(mode);
		const wanted = chance.pick(told(mode));
		const { n, name, part } = wanted;
		const right = slotOf(start, n);
		const skipped = entriesOf(mode).findIndex((each) => readsAlike(each, wanted)) + 1;
		const others = otherModes(profile, mode).flatMap((each) =>
			numbersOf(each).filter((slot) => readsAlike(slot, wanted)),
		);
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					crew,
					otherUniverse: universe === 1 ? null : universe,
					mode: mode.name,
					start,
					n,
					name,
					part,
					before: n - 1,
					right,
					counted,
					...(counted ? { slotNames: slotNamesOf(mode) } : { slotChart: slotChartOf(mode) }),
				},
				bench: benchWith({ profile, mode, address: start, universe, alone: n }),
			},
			{ unit: 'slot' },
			[right],
			[
				['slot-in-fixture-not-on-desk', n],
				['off-by-one-high', start + n],
				...(counted && skipped > 0 ? [['fine-ignored', start + skipped - 1] as const] : []),
				...others.map((each) => ['other-modes-chart', start + each.n - 1] as const),
				['first-counted-as-zero', start + n - 2],
				['footprint-added-twice', start + footprintOf(mode) + n - 1],
			],
		);
	},
};
