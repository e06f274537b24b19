import { candelaOf, illuminance, poolDiameter } from '../../optics/index.ts';
import { numberOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type PaperLevel } from '../ids.ts';
import type { Chance, QuestionKind } from '../types.ts';

/** Throws in metres: where it was measured, and where it is asked for. */
interface Throws {
	readonly near: number;
	readonly far: number;
}

function throwsFor(chance: Chance, level: PaperLevel): Throws {
	const near = level === 'hard' ? 3 : 2;
	if (level === 'easy') return { near, far: chance.pick([4, 6, 8, 10]) };
	return { near, far: level === 'middle' ? chance.pick([3, 5, 7, 9]) : chance.pick([4, 4.5, 5, 7.5, 8, 10]) };
}

/** Share either way that an answer may be off by: what rounding along the way comes to. */
const CLOSE = 0.02;

/** Every whole number that is close enough, and the nearest in any case. */
function closeTo(exact: number): number[] {
	const least = Math.ceil(exact * (1 - CLOSE));
	const most = Math.floor(exact * (1 + CLOSE));
	const close = Array.from({ length: Math.max(0, most - least + 1) }, (_, i) => least + i);
	return [...new Set([...close, Math.floor(exact), Math.ceil(exact)])].sort((a, b) => a - b);
}

/** Light at a throw, from what it is at another: inverse square. Easy: twice as far and the like; middle: odd metres; hard: halves. */
export const luxAtThrow: QuestionKind = {
	id: 'lux-at-throw',
	topic: KIND_TOPICS['lux-at-throw'],
	forms: ['number'],
	levels: LEVELS,
	fits: () => true,
	make({ profiles }, chance, level) {
		const profile = chance.pick(profiles);
		const { near, far } = throwsFor(chance, level);
		const lux = Math.round(illuminance(candelaOf(profile), near));
		const times = far / near;
		const exact = lux / times ** 2;
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					near,
					far,
					lux,
					times: Math.round(100 * times) / 100,
					squared: Math.round(100 * times ** 2) / 100,
					right: Math.round(exact),
				},
			},
			{ unit: 'lux' },
			closeTo(exact),
			[
				['distance-not-squared', Math.round(lux / times)],
				['squared-the-wrong-way', Math.round(lux * times ** 2)],
				['throw-forgotten', lux],
			],
		);
	},
};

const toCentimetres = (metres: number): number => Math.round(100 * metres);

/** A pool at a throw, from what it is at another: in proportion. Levels as for light at a throw. */
export const poolAtThrow: QuestionKind = {
	id: 'pool-at-throw',
	topic: KIND_TOPICS['pool-at-throw'],
	forms: ['number'],
	levels: LEVELS,
	fits: () => true,
	make({ profiles }, chance, level) {
		const profile = chance.pick(profiles);
		const { near, far } = throwsFor(chance, level);
		const pool = toCentimetres(poolDiameter(near, profile.optics.beam));
		const times = far / near;
		const exact = pool * times;
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					near,
					far,
					pool,
					times: Math.round(100 * times) / 100,
					right: Math.round(exact),
				},
			},
			{ unit: 'centimetres' },
			closeTo(exact),
			[
				['squared-though-straight', Math.round(pool * times ** 2)],
				['wrong-way-round', Math.round(pool / times)],
				['throw-forgotten', pool],
			],
		);
	},
};

/** Percents of a pool by which neighbours run into each other. */
const OVERLAPS: Readonly<Record<PaperLevel, readonly number[]>> = {
	easy: [25, 50],
	middle: [20, 30, 40, 60],
	hard: [20, 30, 40, 60],
};

/** How far apart neighbours stand, for an overlap. Easy: quarters and halves; middle: tenths; hard: the pool at this throw comes first. */
export const rowSpacing: QuestionKind = {
	id: 'row-spacing',
	topic: KIND_TOPICS['row-spacing'],
	forms: ['number'],
	levels: LEVELS,
	fits: () => true,
	make({ profiles }, chance, level) {
		const profile = chance.pick(profiles);
		const overlap = chance.pick(OVERLAPS[level]);
		const { near, far } = level === 'hard' ? throwsFor(chance, 'hard') : { near: chance.int(2, 6), far: 0 };
		const pool = toCentimetres(poolDiameter(near, profile.optics.beam));
		const here = level === 'hard' ? (pool * far) / near : pool;
		const exact = (here * (100 - overlap)) / 100;
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					near,
					far,
					scaled: level === 'hard',
					pool,
					here: Math.round(here),
					overlap,
					rest: 100 - overlap,
					right: Math.round(exact),
				},
			},
			{ unit: 'centimetres' },
			closeTo(exact),
			[
				['overlap-for-spacing', Math.round((here * overlap) / 100)],
				['overlap-forgotten', Math.round(here)],
				['overlap-added', Math.round((here * (100 + overlap)) / 100)],
				...(level === 'hard' ? ([['throw-forgotten', Math.round((pool * (100 - overlap)) / 100)]] as const) : []),
			],
		);
	},
};
