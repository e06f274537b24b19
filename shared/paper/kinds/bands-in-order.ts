import { hexOf, levelsShownAs, percentOf } from '../../dmx/index.ts';
import type { Band } from '../../profile/index.ts';
import { benchWith } from '../bench.ts';
import { type BandSlot, bandSlots, namedOnce } from '../chart.ts';
import { draft, fresh, lettered, say, type Wrong } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type Level } from '../ids.ts';
import { asTens } from '../levels.ts';
import type { Answer, Chance, Ground, Kind, Say } from '../types.ts';

/** Functions to put in order, and fewest. */
const MOST = 4;
const LEAST = 3;

const namedOf = ({ bands }: BandSlot): Band[] => namedOnce(bands);
const placesOf = (ground: Ground): BandSlot[] => bandSlots(ground).filter((here) => namedOf(here).length >= LEAST);

/** How the last value of a band is written. */
type Written = 'value' | 'percent' | 'hex';
interface Row {
	readonly band: Band;
	readonly how: Written;
}

/** Every value that what is written may stand for. */
const standsFor = ({ band, how }: Row): number[] =>
	how === 'percent'
		? [...levelsShownAs(percentOf(band.to)), ...levelsShownAs(percentOf(band.to), 'truncate')]
		: [band.to];

/** Whether the order is the same whatever the percents among them stand for. */
const isClear = (rows: readonly Row[]): boolean =>
	rows.every((row, i) => {
		const next = rows[i + 1];
		return !next || Math.max(...standsFor(row)) < Math.min(...standsFor(next));
	});

const WRITTEN: Readonly<Record<Level, readonly Written[]>> = {
	easy: ['value'],
	middle: ['value', 'percent'],
	hard: ['value', 'percent', 'hex'],
};

/** The bands, rising, written by turns one way or another; in one way alone where percents would leave the order open. */
function rowsFor(bands: readonly Band[], chance: Chance, level: Level): Row[] {
	const ways = WRITTEN[level];
	const turns = chance.shuffle(ways.map((_, turn) => turn));
	const drawn = turns.map((turn) =>
		bands.map((band, i): Row => ({ band, how: ways[(i + turn) % ways.length] as Written })),
	);
	return drawn.find(isClear) ?? bands.map((band) => ({ band, how: level === 'hard' ? 'hex' : 'value' }));
}

const rowSay = ({ band, how }: Row): Say => {
	const end = how === 'percent' ? percentOf(band.to) : how === 'hex' ? hexOf(band.to) : band.to;
	return say(`ends-${how}`, { name: band.name, end });
};

/** The farthest from plain values that rows are written. */
const writtenAs = (rows: readonly Row[]): Written =>
	(['hex', 'percent'] as const).find((way) => rows.some(({ how }) => how === way)) ?? 'value';

/** What a row seems to be to who overlooks how it is written. */
const atFace = ({ band, how }: Row): number =>
	how === 'percent' ? percentOf(band.to) : how === 'hex' ? asTens(band.to) : band.to;

/**
 * Functions in the order in which a strip, pushed up from 0, comes to them. Easy: their last values; middle: some in percent; hard:
 * some in hexadecimal besides.
 */
export const bandsInOrder: Kind = {
	id: 'bands-in-order',
	topic: KIND_TOPICS['bands-in-order'],
	forms: ['order'],
	levels: LEVELS,
	fits: (ground) => placesOf(ground).length > 0,
	make(ground, chance, level) {
		const here = chance.pick(placesOf(ground));
		const { profile, mode, slot } = here;
		const chosen = new Set(chance.shuffle(namedOf(here)).slice(0, MOST));
		const rows = rowsFor(
			namedOf(here).filter((band) => chosen.has(band)),
			chance,
			level,
		);
		const { options, idOf } = lettered(chance, rows, rowSay);
		const order = (sorted: readonly Row[]): string[] => sorted.map(idOf);
		const right = order(rows);
		const read = (how: Written): Row[] => [...rows].sort((a, b) => faceOf(a, how) - faceOf(b, how));
		const wrongs: Wrong<string[]>[] = [
			['bands-from-the-wrong-end', [...right].reverse()],
			['percent-for-value', order(read('percent'))],
			['hex-read-as-decimal', order(read('hex'))],
			['wrong-order', [...right.slice(1), right[0] as string]],
		];
		const mistakes = wrongs.map(([mistake, ids]) => ({ mistake, answer: { form: 'order' as const, order: ids } }));
		return draft(
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					slot: slot.name,
					n: slot.at,
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
const faceOf = (row: Row, how: Written): number => (row.how === how ? atFace(row) : row.band.to);
