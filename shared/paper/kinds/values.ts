import { bandOf, levelOfPercent, middleOf, TOP_LEVEL } from '../../dmx/index.ts';
import type { Band } from '../../profile/index.ts';
import { benchWith } from '../bench.ts';
import {
	type BandSlot,
	bandSay,
	bandSlots,
	chartOf,
	doingsOf,
	namedOnce,
	type SlotFunction,
	slotFacts,
	startsOf,
	twinsOf,
} from '../chart.ts';
import { type DraftParts, oneOf, say, severalOf, type WrongAnswer } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type MistakeId, type PaperLevel } from '../ids.ts';
import type { Chance, ItemDraft, QuestionGround, QuestionKind, Say } from '../types.ts';

/** Which function does this value give? Easy: in the middle of a band; middle: inside one; hard: on its edge, from first values alone. */
export const valueFunction: QuestionKind = {
	id: 'value-function',
	topic: KIND_TOPICS['value-function'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => bandSlots(ground).length > 0,
	make(ground, chance, level) {
		const all = bandSlots(ground);
		const here = chance.pick(all);
		const { profile, mode, slot, bands } = here;
		const band = chance.pick(bands);
		const value = valueIn(band, chance, level);
		return oneOf(
			chance,
			{
				facts: {
					...slotFacts(here),
					value,
					...(level === 'hard' ? { starts: startsOf(bands) } : { chart: chartOf(bands) }),
					byStarts: level === 'hard',
					from: band.from,
					to: band.to,
					name: band.name,
				},
				bench: benchWith({ profile, mode, address: 1, levels: { [slot.at]: value } }),
			},
			bandSay(band),
			wrongs(here, value, band, all),
			ground,
		);
	},
};

function valueIn(band: Band, chance: Chance, level: PaperLevel): number {
	if (level === 'hard') return chance.pick([band.from, band.to]);
	const wide = band.to - band.from > 3;
	return level === 'middle' && wide ? chance.int(band.from + 1, band.to - 1) : middleOf(band);
}

/** What other readings of the same value give. */
function wrongs(here: BandSlot, value: number, band: Band, all: readonly BandSlot[]): WrongAnswer<Say>[] {
	const { bands } = here;
	const { modes, fixtures } = twinsOf(here, all);
	const read = (mistake: MistakeId, chart: readonly Band[], at: number): WrongAnswer<Say>[] => {
		const found = at >= 0 && at <= TOP_LEVEL ? bandOf(chart, at) : undefined;
		return found ? [[mistake, bandSay(found as Band)]] : [];
	};
	const i = bands.indexOf(band);
	const beside = [...bands].sort((a, b) => Math.abs(bands.indexOf(a) - i) - Math.abs(bands.indexOf(b) - i));
	return [
		...(value === band.from ? read('off-by-one-low', bands, value - 1) : []),
		...(value === band.to ? read('off-by-one-high', bands, value + 1) : []),
		...(value <= 100 ? read('percent-for-value', bands, levelOfPercent(value)) : []),
		...modes.slice(0, 1).flatMap((twin) => read('other-modes-chart', twin.bands, value)),
		...read('bands-from-the-wrong-end', bands, TOP_LEVEL - value),
		...fixtures.slice(0, 1).flatMap((twin) => read('other-fixtures-chart', twin.bands, value)),
		...beside.map((each): WrongAnswer<Say> => ['next-band', bandSay(each)]),
	];
}

/** Values offered, at most. */
const OFFERED = 6;

/**
 * Which values give this function? Easy: its whole stretch, one of four, from a chart of first values; middle: several of six
 * values, from a chart; hard: the same with values on the edges, from a chart of first values.
 */
export const functionValues: QuestionKind = {
	id: 'function-values',
	topic: KIND_TOPICS['function-values'],
	forms: ['one', 'several'],
	levels: LEVELS,
	fits: (ground) => bandSlots(ground).length > 0,
	make(ground, chance, level) {
		const all = bandSlots(ground);
		const named = all.filter(({ bands }) => namedOnce(bands).length > 0);
		if (level === 'easy' && named.length > 0) return stretchOf(chance.pick(named), all, chance, ground);
		return valuesOf(chance.pick(all), chance, level);
	},
};

const about = (
	{ profile, mode, slot }: BandSlot,
	name: string,
	chart: DraftParts['facts'],
	level: number,
): DraftParts => ({
	facts: { ...slotFacts({ profile, mode, slot }), name, ...chart },
	bench: benchWith({ profile, mode, address: 1, levels: { [slot.at]: level } }),
});

const stretch = (from: number, to: number): Say => say('stretch', { from, to, single: from === to });

function stretchOf(here: BandSlot, all: readonly BandSlot[], chance: Chance, ground: QuestionGround): ItemDraft {
	const { bands } = here;
	const band = chance.pick(namedOnce(bands));
	const { from, to, name } = band;
	const beside = bands.filter((each) => each !== band);
	const near = [...beside].sort((a, b) => Math.abs(a.from - from) - Math.abs(b.from - from));
	const others = twinsOf(here, all).modes.flatMap((twin) => namedOnce(twin.bands).filter((each) => each.name === name));
	const wrongs: WrongAnswer<Say>[] = [
		...(to < TOP_LEVEL ? [['off-by-one-high', stretch(from, to + 1)] as const] : []),
		...(from > 0 ? [['off-by-one-low', stretch(from - 1, to)] as const] : []),
		...(to > from + 1 ? [['part-of-a-band', stretch(middleOf(band), to)] as const] : []),
		...others.slice(0, 1).map((each): WrongAnswer<Say> => ['other-modes-chart', stretch(each.from, each.to)]),
		['bands-from-the-wrong-end', stretch(TOP_LEVEL - to, TOP_LEVEL - from)],
	];
	const neighbours = near.map((each): WrongAnswer<Say> => ['next-band', stretch(each.from, each.to)]);
	const facts = { starts: startsOf(bands), form: 'one', from, to, last: to === TOP_LEVEL, next: to + 1 };
	return oneOf(
		chance,
		about(here, name, facts, middleOf(band)),
		stretch(from, to),
		[
			...(ground.version === 1 ? chance.shuffle(wrongs) : chance.shuffle([...wrongs, ...slipped(from, to)])),
			...neighbours,
		],
		ground,
	);
}

/** Both edges one off: so that the right stretch is not the one that all the others are a slip from. */
function slipped(from: number, to: number): WrongAnswer<Say>[] {
	const all: WrongAnswer<readonly [number, number]>[] = [
		['off-by-one-high', [from + 1, to + 1]],
		['off-by-one-low', [from - 1, to - 1]],
		['off-by-one-high', [from + 1, to]],
		['off-by-one-low', [from, to - 1]],
		['off-by-one-high', [from - 1, to + 1]],
	];
	return all.flatMap(([mistake, [least, most]]) =>
		least >= 0 && least <= most && most <= TOP_LEVEL ? [[mistake, stretch(least, most)]] : [],
	);
}

function valuesOf(here: BandSlot, chance: Chance, level: PaperLevel): ItemDraft {
	const { bands } = here;
	const doing = chance.pick(doingsOf(bands));
	const gives = (value: number): boolean => isIn(doing.bands, value);
	const [rights, wrongs] = level === 'hard' ? edgeValues(doing, bands) : innerValues(doing, bands, chance);
	const right = chance.shuffle([...new Set(rights)]).slice(0, chance.int(2, 3));
	const wrong = chance.shuffle([...new Set(wrongs)].filter((value) => !gives(value))).slice(0, OFFERED - right.length);
	const values = [...right, ...wrong].sort((a, b) => a - b);
	const after = bands[bands.indexOf(doing.bands.at(-1) as Band) + 1];
	const first = doing.bands[0] as Band;
	const charted =
		level === 'hard' ? { starts: startsOf(bands), byStarts: true } : { chart: chartOf(bands), byStarts: false };
	const facts = { ...charted, form: 'several', stretches: doing.bands.flatMap(({ from, to }) => [from, to]) };
	return severalOf(chance, about(here, doing.name, facts, middleOf(first)), values, {
		label: (value) => say('value', { value }),
		isRight: gives,
		wrongs: [
			['off-by-one-high', values.filter((value) => gives(value) || gives(value - 1))],
			['off-by-one-low', values.filter((value) => gives(value) || gives(value + 1))],
			['bands-from-the-wrong-end', values.filter((value) => gives(TOP_LEVEL - value))],
			['percent-for-value', values.filter((value) => value <= 100 && gives(levelOfPercent(value)))],
			['part-of-a-band', values.filter((value) => isPart(doing, value))],
			...(after ? [['next-band', values.filter((value) => isIn([after], value))] as const] : []),
		],
	});
}

const isIn = (bands: readonly Band[], value: number): boolean =>
	value >= 0 && value <= TOP_LEVEL && bandOf(bands, value) !== undefined;

/** In the first of two bands of one name; of a single band, in it but on neither edge. */
function isPart({ bands }: SlotFunction, value: number): boolean {
	const first = bands[0] as Band;
	return bands.length > 1 ? isIn([first], value) : first.from < value && value < first.to;
}

/** Values on the edges of what gives it, and just past them. */
function edgeValues({ bands }: SlotFunction, all: readonly Band[]): [number[], number[]] {
	const beside = bands
		.flatMap(({ from, to }) => [from - 1, to + 1])
		.filter((value) => value >= 0 && value <= TOP_LEVEL);
	return [
		bands.flatMap((band) => [band.from, band.to, middleOf(band)]),
		[...beside, ...all.flatMap(({ from, to }) => [from, to])],
	];
}

/** Values well inside what gives it, and inside what does not. */
function innerValues({ bands }: SlotFunction, all: readonly Band[], chance: Chance): [number[], number[]] {
	const inside = (band: Band): number[] => {
		const [least, most] = band.to - band.from > 1 ? [band.from + 1, band.to - 1] : [band.from, band.to];
		return [middleOf(band), chance.int(least, most), chance.int(least, most)];
	};
	return [bands.flatMap(inside), all.filter((band) => !bands.includes(band)).flatMap(inside)];
}
