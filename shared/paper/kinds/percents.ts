import { bandOf, levelOfPercent, levelsShownAs, middleOf, percentOf, TOP_LEVEL } from '../../dmx/index.ts';
import type { Band } from '../../profile/index.ts';
import { benchWith } from '../bench.ts';
import { type BandSlot, bandSay, bandSlots, chartOf, namedOnce, slotFacts, startsOf, twinsOf } from '../chart.ts';
import { numberOf, oneOf, type WrongAnswer } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type MistakeId, type PaperLevel } from '../ids.ts';
import type { Chance, QuestionGround, QuestionKind, Say } from '../types.ts';

const PERCENTS = Array.from({ length: 101 }, (_, percent) => percent);

/** The values that a desk may go to when this percent is typed, whichever way it rounds. */
const SET_BY = PERCENTS.map((percent) => [levelOfPercent(percent), levelOfPercent(percent, 'truncate')]);

/** Those, and the values that a desk may show as this percent: what somebody who reads it off a desk may have before them. */
const MEANT = PERCENTS.map((percent, i) => [
	...new Set([...(SET_BY[i] ?? []), ...levelsShownAs(percent), ...levelsShownAs(percent, 'truncate')]),
]);

/**
 * The band that a percent is in, whichever way a desk rounds; null where it may be in one or another.
 * @param meant the values that each percent may stand for
 */
export function bandAtPercent(bands: readonly Band[], percent: number, meant = MEANT): Band | null {
	const met = new Set((meant[percent] ?? []).map((value) => bandOf(bands, value) as Band | undefined));
	const [band] = met;
	return met.size === 1 && band ? band : null;
}

const percentsIn = (bands: readonly Band[], band: Band, meant = MEANT): number[] =>
	PERCENTS.filter((percent) => bandAtPercent(bands, percent, meant) === band);

/** A slot's chart as it is printed: whole, or for hard by first values alone. */
const printed = (bands: readonly Band[], level: PaperLevel) =>
	level === 'hard' ? { starts: startsOf(bands), byStarts: true } : { chart: chartOf(bands), byStarts: false };

/** The percents of a band to ask about: one of the middle for easy, any for middle, the outermost for hard. */
function percentFor(percents: readonly number[], chance: Chance, level: PaperLevel): number {
	if (level === 'easy') return percents[Math.floor(percents.length / 2)] as number;
	if (level === 'middle') return chance.pick(percents);
	return chance.pick([percents[0] as number, percents.at(-1) as number]);
}

/**
 * What does a slot do at this percent of the desk? Easy: in the middle of a band; middle: anywhere in one; hard: close to its edge, by
 * a chart of first values. Never a percent that may be in either of two bands.
 */
export const bandOfPercent: QuestionKind = {
	id: 'band-of-percent',
	topic: KIND_TOPICS['band-of-percent'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => bandSlots(ground).length > 0,
	make(ground, chance, level) {
		const all = bandSlots(ground);
		const here = chance.pick(all);
		const { profile, mode, slot, bands } = here;
		const band = chance.pick(bands.filter((each) => percentsIn(bands, each).length > 0));
		const percent = percentFor(percentsIn(bands, band), chance, level);
		const value = levelOfPercent(percent);
		const read = (mistake: MistakeId, chart: readonly Band[], at: number): WrongAnswer<Say>[] => {
			const found = bandOf(chart, at);
			return found ? [[mistake, bandSay(found as Band)]] : [];
		};
		return oneOf(
			chance,
			{
				facts: {
					...slotFacts(here),
					percent,
					value,
					...printed(bands, level),
					from: band.from,
					to: band.to,
					name: band.name,
				},
				bench: benchWith({ profile, mode, address: 1, levels: { [slot.at]: value } }),
			},
			bandSay(band),
			[
				...read('percent-for-value', bands, percent),
				...read('bands-from-the-wrong-end', bands, TOP_LEVEL - value),
				...twinsOf(here, all).modes.flatMap((twin) => read('other-modes-chart', twin.bands, value)),
				...bands.map((each): WrongAnswer<Say> => ['next-band', bandSay(each)]),
			],
			ground,
		);
	},
};

/** A band with a name of its own, and the percents that are sure to set a value in it. */
interface BandInPercent {
	readonly here: BandSlot;
	readonly band: Band;
	readonly percents: readonly number[];
}

const bandsInPercent = (ground: QuestionGround): BandInPercent[] =>
	bandSlots(ground).flatMap((here) =>
		namedOnce(here.bands).flatMap((band) => {
			const percents = percentsIn(here.bands, band, SET_BY);
			return percents.length > 0 && percents.length < PERCENTS.length ? [{ here, band, percents }] : [];
		}),
	);

/** Widest band of a hard one, in percents. */
const NARROW = 12;

/**
 * A percent that, typed, puts a slot into a band, whichever way the desk rounds. Easy: a wide band; middle: any; hard: a narrow one, by
 * a chart of first values.
 */
export const percentInBand: QuestionKind = {
	id: 'percent-in-band',
	topic: KIND_TOPICS['percent-in-band'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => bandsInPercent(ground).length > 0,
	make(ground, chance, level) {
		const all = bandsInPercent(ground);
		const fit = all.filter(({ percents }) => level === 'middle' || percents.length > NARROW === (level === 'easy'));
		const { here, band, percents } = chance.pick(fit.length > 0 ? fit : all);
		const { profile, mode, slot, bands } = here;
		const i = bands.indexOf(band);
		const beside = [bands[i + 1], bands[i - 1]].flatMap((each): WrongAnswer<number>[] =>
			each ? [['next-band', percentOf(middleOf(each))]] : [],
		);
		const least = percents[0] as number;
		const most = percents.at(-1) as number;
		const wrongs: WrongAnswer<number>[] = [
			['value-for-percent', middleOf(band)],
			['value-for-percent', band.from],
			['value-for-percent', band.to],
			['bands-from-the-wrong-end', percentOf(TOP_LEVEL - middleOf(band))],
			...beside,
		];
		return numberOf(
			{
				facts: {
					...slotFacts(here),
					name: band.name,
					...printed(bands, level),
					from: band.from,
					to: band.to,
					least,
					most,
					single: least === most,
				},
				bench: benchWith({ profile, mode, address: 1, levels: { [slot.at]: levelOfPercent(least) } }),
			},
			{ unit: 'percent' },
			percents,
			wrongs,
		);
	},
};
