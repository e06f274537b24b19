import { hexOf, levelOfPercent, levelsShownAs, middleOf, percentOf, TOP_LEVEL } from '../../dmx/index.ts';
import type { Band } from '../../profile/index.ts';
import { benchWith } from '../bench.ts';
import { type BandSlot, bandSlots, chartOf, endsOf, namedOnce, slotFacts, startsOf, twinsOf } from '../chart.ts';
import { draft, fresh, lettered, numberOf, say, type WrongAnswer } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type PaperLevel } from '../ids.ts';
import { asTens } from '../levels.ts';
import type { Answer, Chance, QuestionGround, QuestionKind, Say } from '../types.ts';

const placesOf = (ground: QuestionGround) => bandSlots(ground).filter(({ bands }) => namedOnce(bands).length > 0);

type Edge = 'lowest' | 'highest';

/** That edge of a band, or the other where it is the outermost of all: 0 and 255 need no chart. */
function innerEdge({ from, to }: Band, edge: Edge): Edge {
	if (edge === 'lowest') return from === 0 ? 'highest' : edge;
	return to === TOP_LEVEL ? 'lowest' : edge;
}

/**
 * The lowest or highest value of a band. Easy: read off the chart; middle: from a chart that gives the other ends only; hard: the
 * same of an edge between two bands (in papers of version 1, from a chart in hexadecimal).
 */
export const bandEdge: QuestionKind = {
	id: 'band-edge',
	topic: KIND_TOPICS['band-edge'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => placesOf(ground).length > 0,
	make(ground, chance, level) {
		const all = placesOf(ground);
		const here = chance.pick(all);
		const { profile, mode, slot, bands } = here;
		const band = chance.pick(namedOnce(bands));
		const { name } = band;
		const drawn = chance.pick(['lowest', 'highest'] as const);
		const edge = level === 'hard' && ground.version !== 1 ? innerEdge(band, drawn) : drawn;
		const of = (each: Band): number => (edge === 'lowest' ? each.from : each.to);
		const right = of(band);
		const i = bands.indexOf(band);
		// where the chart gives the other ends, this edge is worked out from the band beside
		const beside = bands[edge === 'lowest' ? i - 1 : i + 1];
		const given = beside ? (edge === 'lowest' ? beside.to : beside.from) : null;
		const hex = level === 'hard' && ground.version === 1;
		const charted = edge === 'lowest' ? { ends: endsOf(bands), hex } : { starts: startsOf(bands), hex };
		const twin = twinsOf(here, all)
			.modes.flatMap((each) => namedOnce(each.bands))
			.find((each) => each.name === name);
		const wrongs: WrongAnswer<number>[] = [
			['other-edge', edge === 'lowest' ? band.to : band.from],
			...(given === null ? [] : [[edge === 'lowest' ? 'off-by-one-low' : 'off-by-one-high', given] as const]),
			...(hex && given !== null
				? [['hex-read-as-decimal', asTens(given) + (edge === 'lowest' ? 1 : -1)] as const]
				: []),
			...(twin ? [['other-modes-chart', of(twin)] as const] : []),
			...[bands[i + 1], bands[i - 1]].flatMap((each): WrongAnswer<number>[] => (each ? [['next-band', of(each)]] : [])),
			['bands-from-the-wrong-end', TOP_LEVEL - right],
			['off-by-one-low', right - 1],
			['off-by-one-high', right + 1],
		];
		return numberOf(
			{
				facts: {
					...slotFacts(here),
					name,
					edge,
					right,
					...(level === 'easy' ? { chart: chartOf(bands), hex: false } : charted),
					given,
					read: level === 'easy',
					beside: beside?.name ?? null,
				},
				bench: benchWith({ profile, mode, address: 1, levels: { [slot.at]: right } }),
			},
			{ unit: 'value' },
			[right],
			wrongs,
		);
	},
};

/** Widest band of an easy one, in values. */
const EASY_WIDTH = 40;

/** Bands of that level, or all that have a name of their own where there is none. */
function bandsFor({ bands }: BandSlot, level: PaperLevel): Band[] {
	const named = namedOnce(bands);
	const narrow = named.filter(({ from, to }) => to - from < EASY_WIDTH);
	const wide = named.filter(({ from, to }) => to - from >= EASY_WIDTH || (to - from) % 2 === 1);
	const fit = level === 'easy' ? narrow : wide;
	return fit.length > 0 ? fit : named;
}

/** The middle value of a band: of two middles either is right. Easy: a narrow band; middle: any; hard: from last values alone. */
export const bandMiddle: QuestionKind = {
	id: 'band-middle',
	topic: KIND_TOPICS['band-middle'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => placesOf(ground).length > 0,
	make(ground, chance, level) {
		const all = placesOf(ground);
		const here = chance.pick(all);
		const { profile, mode, slot, bands } = here;
		const band = chance.pick(bandsFor(here, level));
		const { from, to, name } = band;
		const lower = middleOf(band);
		const upper = from + to - lower;
		const i = bands.indexOf(band);
		const twin = twinsOf(here, all)
			.modes.flatMap((each) => namedOnce(each.bands))
			.find((each) => each.name === name);
		const wrongs: WrongAnswer<number>[] = [
			['other-edge', from],
			['other-edge', to],
			...(from > 0 ? [['part-of-a-band', Math.floor((to - from) / 2)] as const] : []),
			...(twin ? [['other-modes-chart', middleOf(twin)] as const] : []),
			...[bands[i + 1], bands[i - 1]].flatMap((each): WrongAnswer<number>[] =>
				each ? [['next-band', middleOf(each)]] : [],
			),
			...(upper <= 100 ? [['percent-for-value', levelOfPercent(lower)] as const] : []),
		];
		return numberOf(
			{
				facts: {
					...slotFacts(here),
					name,
					from,
					to,
					sum: from + to,
					half: (from + to) / 2,
					lower,
					upper,
					two: lower !== upper,
					...(level === 'hard' ? { ends: endsOf(bands), hex: false } : { chart: chartOf(bands) }),
					before: level === 'hard' && from > 0 ? from - 1 : null,
				},
				bench: benchWith({ profile, mode, address: 1, levels: { [slot.at]: lower } }),
			},
			{ unit: 'value' },
			[lower, upper],
			wrongs,
		);
	},
};

/** Functions to put in order, and fewest. */
const MOST = 4;
const LEAST = 3;

const namedOf = ({ bands }: BandSlot): Band[] => namedOnce(bands);
const ordersIn = (ground: QuestionGround): BandSlot[] =>
	bandSlots(ground).filter((here) => namedOf(here).length >= LEAST);

/** How the last value of a band is written. */
type BandNotation = 'value' | 'percent' | 'hex';
interface BandRow {
	readonly band: Band;
	readonly how: BandNotation;
}

/** Every value that what is written may stand for. */
const standsFor = ({ band, how }: BandRow): number[] =>
	how === 'percent'
		? [...levelsShownAs(percentOf(band.to)), ...levelsShownAs(percentOf(band.to), 'truncate')]
		: [band.to];

/** Whether the order is the same whatever the percents among them stand for. */
const isClear = (rows: readonly BandRow[]): boolean =>
	rows.every((row, i) => {
		const next = rows[i + 1];
		return !next || Math.max(...standsFor(row)) < Math.min(...standsFor(next));
	});

const WRITTEN: Readonly<Record<PaperLevel, readonly BandNotation[]>> = {
	easy: ['value'],
	middle: ['value', 'percent'],
	hard: ['percent'],
};
const FIRST_HARD: readonly BandNotation[] = ['value', 'percent', 'hex'];

/** The bands, rising, written by turns one way or another; in one way alone where percents would leave the order open. */
function rowsFor(
	bands: readonly Band[],
	chance: Chance,
	level: PaperLevel,
	version: QuestionGround['version'],
): BandRow[] {
	const isFirst = level === 'hard' && version === 1;
	const ways = isFirst ? FIRST_HARD : WRITTEN[level];
	const turns = chance.shuffle(ways.map((_, turn) => turn));
	const drawn = turns.map((turn) =>
		bands.map((band, i): BandRow => ({ band, how: ways[(i + turn) % ways.length] as BandNotation })),
	);
	return drawn.find(isClear) ?? bands.map((band) => ({ band, how: isFirst ? 'hex' : 'value' }));
}

const rowSay = ({ band, how }: BandRow): Say => {
	const end = how === 'percent' ? percentOf(band.to) : how === 'hex' ? hexOf(band.to) : band.to;
	return say(`ends-${how}`, { name: band.name, end });
};

/** The farthest from plain values that rows are written. */
const writtenAs = (rows: readonly BandRow[]): BandNotation =>
	(['hex', 'percent'] as const).find((way) => rows.some(({ how }) => how === way)) ?? 'value';

/** What a row seems to be to who overlooks how it is written. */
const atFace = ({ band, how }: BandRow): number =>
	how === 'percent' ? percentOf(band.to) : how === 'hex' ? asTens(band.to) : band.to;

/**
 * Functions in the order in which a fader, pushed up from 0, comes to them. Easy: their last values; middle: some in percent; hard:
 * all of them (in papers of version 1, some in hexadecimal).
 */
export const bandsInOrder: QuestionKind = {
	id: 'bands-in-order',
	topic: KIND_TOPICS['bands-in-order'],
	forms: ['order'],
	levels: LEVELS,
	fits: (ground) => ordersIn(ground).length > 0,
	make(ground, chance, level) {
		const here = chance.pick(ordersIn(ground));
		const { profile, mode } = here;
		const chosen = new Set(chance.shuffle(namedOf(here)).slice(0, MOST));
		const rows = rowsFor(
			namedOf(here).filter((band) => chosen.has(band)),
			chance,
			level,
			ground.version,
		);
		const { options, idOf } = lettered(chance, rows, rowSay);
		const order = (sorted: readonly BandRow[]): string[] => sorted.map(idOf);
		const right = order(rows);
		const read = (how: BandNotation): BandRow[] => [...rows].sort((a, b) => faceOf(a, how) - faceOf(b, how));
		const wrongs: WrongAnswer<string[]>[] = [
			['bands-from-the-wrong-end', [...right].reverse()],
			['percent-for-value', order(read('percent'))],
			['hex-read-as-decimal', order(read('hex'))],
			['wrong-order', [...right.slice(1), right[0] as string]],
		];
		const mistakes = wrongs.map(([mistake, ids]) => ({ mistake, answer: { form: 'order' as const, order: ids } }));
		return draft(
			{
				facts: {
					...slotFacts(here),
					count: rows.length,
					names: rows.map(({ band }) => band.name),
					tops: rows.map(({ band }) => band.to),
					written: writtenAs(rows),
				},
				bench: benchWith({ profile, mode, address: 1 }),
			},
			{
				ask: { form: 'order', options },
				key: { form: 'order', right },
				mistakes: fresh<Extract<Answer, { form: 'order' }>>(
					mistakes,
					(answer) => answer.order.join(' '),
					right.join(' '),
				),
			},
		);
	},
};

/** A row by its real last value, or at its face where it is written so. */
const faceOf = (row: BandRow, how: BandNotation): number => (row.how === how ? atFace(row) : row.band.to);
