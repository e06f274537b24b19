import { levelOfPercent, middleOf, percentOf, TOP_LEVEL, valuesOf } from '../../dmx/index.ts';
import type { Band } from '../../profile/index.ts';
import { benchWith } from '../bench.ts';
import { type BandSlot, bandSlots, chartOf, doingsOf, isAtRest, same, slotFacts, startsOf } from '../chart.ts';
import { numberOf, say, severalOf, type WrongAnswer } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type PaperLevel } from '../ids.ts';
import type { Chance, QuestionGround, QuestionKind } from '../types.ts';
import { bandAtPercent } from './percents.ts';

/** Slots with a place to park and a place that is none. */
const parkSlots = (ground: QuestionGround): BandSlot[] =>
	bandSlots(ground).filter(({ bands }) => bands.some(isAtRest) && !bands.every(isAtRest));

/**
 * Where to park a slot that nobody uses, so that it leaves the light alone. Easy: from a chart; middle: from one of first values; hard:
 * the same where 0 does something, if any does.
 */
export const parkValue: QuestionKind = {
	id: 'park-value',
	topic: KIND_TOPICS['park-value'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => parkSlots(ground).length > 0,
	make(ground, chance, level) {
		const all = parkSlots(ground);
		const notAtZero = all.filter(({ bands }) => !isAtRest(bands[0] as Band));
		const here = chance.pick(level === 'hard' && notAtZero.length > 0 ? notAtZero : all);
		const { profile, mode, slot, bands } = here;
		const rest = bands.filter(isAtRest);
		const others = bands.filter((band) => !isAtRest(band));
		const rights = rest.flatMap(valuesOf);
		const first = rest[0] as Band;
		return numberOf(
			{
				facts: {
					...slotFacts(here),
					...(level === 'easy' ? { chart: chartOf(bands) } : { starts: startsOf(bands) }),
					names: [...new Set(rest.map(({ name }) => name))],
					stretches: rest.flatMap(({ from, to }) => [from, to]),
					middle: middleOf(first),
				},
				bench: benchWith({ profile, mode, address: 1, levels: { [slot.at]: middleOf(first) } }),
			},
			{ unit: 'value' },
			rights,
			[
				['zero-taken-for-rest', 0],
				...rest.flatMap(({ from, to }): WrongAnswer<number>[] => [
					['off-by-one-high', to + 1],
					['off-by-one-low', from - 1],
				]),
				['bands-from-the-wrong-end', TOP_LEVEL - middleOf(first)],
				...others.map((band): WrongAnswer<number> => ['next-band', middleOf(band)]),
			],
		);
	},
};

/** A slot on its way up from one band to another. */
interface FaderRun {
	readonly here: BandSlot;
	readonly start: Band;
	readonly end: Band;
	/** What else the slot can do, by name. */
	readonly names: readonly string[];
}

const LEAST_NAMES = 3;

/** Those of the names that some band between two values has. */
const namesBetween = (names: readonly string[], bands: readonly Band[], from: number, to: number): string[] =>
	names.filter((name) => bands.some((band) => band.from > from && band.to < to && same(band.name, name)));

/** Every run that passes something and leaves something out. */
function runsOn(here: BandSlot): FaderRun[] {
	const { bands } = here;
	const doings = doingsOf(bands).map(({ name }) => name);
	return bands.flatMap((start, i) =>
		bands.slice(i + 2).flatMap((end) => {
			const names = doings.filter((name) => !same(name, start.name) && !same(name, end.name));
			const met = namesBetween(names, bands, start.to, end.from);
			return names.length >= LEAST_NAMES && met.length > 0 && met.length < names.length
				? [{ here, start, end, names }]
				: [];
		}),
	);
}

const runsIn = (ground: QuestionGround): FaderRun[] => bandSlots(ground).flatMap(runsOn);

/** A fader's stand in the middle of a band: a percent that is in it for sure, or where there is none, its value. */
const percentAt = (bands: readonly Band[], band: Band): number | null => {
	const percent = percentOf(middleOf(band));
	return bandAtPercent(bands, percent) === band ? percent : null;
};

/**
 * What a fader passes through between two places on its way up. Easy: values, and a chart; middle: a chart of first values; hard: the
 * same, its places in percent.
 */
export const faderPasses: QuestionKind = {
	id: 'fader-passes',
	topic: KIND_TOPICS['fader-passes'],
	forms: ['several'],
	levels: LEVELS,
	fits: (ground) => runsIn(ground).length > 0,
	make(ground, chance, level) {
		const { here, start, end, names } = chance.pick(runsIn(ground));
		const { profile, mode, slot, bands } = here;
		const from = middleOf(start);
		const to = middleOf(end);
		const fromPercent = level === 'hard' ? percentAt(bands, start) : null;
		const toPercent = level === 'hard' ? percentAt(bands, end) : null;
		const inPercent = fromPercent !== null && toPercent !== null;
		const between = (least: number, most: number): string[] => namesBetween(names, bands, least, most);
		const right = between(start.to, end.from);
		return severalOf(
			chance,
			{
				facts: {
					...slotFacts(here),
					from,
					to,
					fromPercent: inPercent ? fromPercent : null,
					toPercent: inPercent ? toPercent : null,
					inPercent,
					...(level === 'easy' ? { chart: chartOf(bands) } : { starts: startsOf(bands) }),
					start: start.name,
					end: end.name,
					met: right,
				},
				bench: benchWith({ profile, mode, address: 1, levels: { [slot.at]: from } }),
			},
			names,
			{
				label: (name) => say('name', { name }),
				isRight: (name) => right.includes(name),
				wrongs: [
					...(inPercent ? ([['percent-for-value', between(fromPercent, toPercent)]] as const) : []),
					['bands-from-the-wrong-end', between(TOP_LEVEL - to, TOP_LEVEL - from)],
					['one-too-many', between(-1, end.from)],
					['some-missed', right.slice(0, 1)],
				],
			},
		);
	},
};

/** One line of a chart as a maker prints it: what a stretch of values does; an empty name says that it does nothing. */
interface ChartLine {
	readonly from: number;
	readonly to: number;
	readonly name: string;
}

const FEWEST_LINES = 4;
const MOST_LINES = 7;
const OFFERED = 6;

/** Places where a chart of so many lines is cut: never two too close, so that each line is a few values wide. */
function cutsFor(chance: Chance, count: number): number[] {
	const cuts = new Set<number>();
	while (cuts.size < count - 1) {
		const at = chance.int(8, TOP_LEVEL - 8);
		if ([...cuts].every((each) => Math.abs(each - at) > 7)) cuts.add(at);
	}
	return [...cuts].sort((a, b) => a - b);
}

/** A chart made up of the names of a real one, one of its stretches said to do nothing, one left out, or both. */
function chartWith(names: readonly string[], chance: Chance, level: PaperLevel): ChartLine[] {
	const count = Math.min(MOST_LINES, Math.max(FEWEST_LINES, names.length + 1));
	const cuts = [0, ...cutsFor(chance, count), TOP_LEVEL + 1];
	const [blank, gap] = chance.shuffle(Array.from({ length: count }, (_, i) => i)) as [number, number];
	const lines = cuts.slice(0, -1).map((from, i): ChartLine => {
		const name = level !== 'middle' && i === blank ? '' : (names[i % names.length] as string);
		return { from, to: (cuts[i + 1] as number) - 1, name };
	});
	return level === 'easy' ? lines : lines.filter((_, i) => i !== gap);
}

const doesSomething = (lines: readonly ChartLine[], value: number): boolean =>
	lines.some(({ from, to, name }) => name !== '' && from <= value && value <= to);

/** Every value of which a chart says no function, as stretches. */
function emptyStretches(lines: readonly ChartLine[]): ChartLine[] {
	const empty: ChartLine[] = [];
	for (let value = 0; value <= TOP_LEVEL; value++) {
		if (doesSomething(lines, value)) continue;
		const last = empty.at(-1);
		if (last && last.to === value - 1) empty[empty.length - 1] = { ...last, to: value };
		else empty.push({ from: value, to: value, name: '' });
	}
	return empty;
}

/**
 * Of which values does a chart say no function? Easy: it has a band that says so; middle: it leaves values out; hard: both, and values
 * on the edges. The chart is made up, with the names of a real one.
 */
export const gapValues: QuestionKind = {
	id: 'gap-values',
	topic: KIND_TOPICS['gap-values'],
	forms: ['several'],
	levels: LEVELS,
	fits: (ground) => bandSlots(ground).length > 0,
	make(ground, chance, level) {
		const { slot, bands } = chance.pick(bandSlots(ground));
		const lines = chartWith(
			doingsOf(bands).map(({ name }) => name),
			chance,
			level,
		);
		const empty = emptyStretches(lines);
		const isRight = (value: number): boolean => !doesSomething(lines, value);
		const inside = (line: ChartLine): number[] =>
			level === 'hard' ? [line.from, line.to, middleOf(line)] : [chance.int(line.from, line.to), middleOf(line)];
		const right = chance.shuffle([...new Set(empty.flatMap(inside))]).slice(0, chance.int(2, 3));
		const full = lines.filter(({ name }) => name !== '');
		const edges = empty
			.flatMap(({ from, to }) => [from - 1, to + 1])
			.filter((value) => value >= 0 && value <= TOP_LEVEL);
		const wrong = [
			...new Set([...(level === 'hard' ? chance.shuffle(edges) : []), ...chance.shuffle(full.flatMap(inside))]),
		];
		const values = [...right, ...wrong.filter((value) => !isRight(value)).slice(0, OFFERED - right.length)];
		values.sort((a, b) => a - b);
		const said = lines.filter(({ name }) => name === '');
		const isSaid = (value: number): boolean => said.some(({ from, to }) => from <= value && value <= to);
		return severalOf(
			chance,
			{
				facts: {
					slot: slot.name,
					chart: lines.flatMap(({ from, to, name }) => [from, to, name]),
					stretches: empty.flatMap(({ from, to }) => [from, to]),
					hasGap: level !== 'easy',
					hasBand: level !== 'middle',
				},
			},
			values,
			{
				label: (value) => say('value', { value }),
				isRight,
				wrongs: [
					['gap-taken-for-band', values.filter(isSaid)],
					['some-missed', values.filter((value) => isRight(value) && !isSaid(value))],
					['off-by-one-high', values.filter((value) => isRight(value) || (value > 0 && isRight(value - 1)))],
					['off-by-one-low', values.filter((value) => isRight(value) || (value < TOP_LEVEL && isRight(value + 1)))],
					['percent-for-value', values.filter((value) => value <= 100 && isRight(levelOfPercent(value)))],
				],
			},
		);
	},
};
