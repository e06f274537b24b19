import type { Profile } from './schema.ts';

/** Flashes a second that a profile takes. */
const RATES = Object.freeze({ least: 0.1, most: 30 });

/** A rate that a chart or a file gives, within what a profile takes. @param found flashes a second */
export const rateWithin = (found: number): number => Math.min(RATES.most, Math.max(RATES.least, found));

/**
 * What is assumed of a fixture from outside where neither chart, file nor label says: round figures of an ordinary small LED fixture
 * (common practice). Where two would do, the one that asks for more care stands.
 */
export const ASSUMED = Object.freeze({
	/** Flashes a second across a strobe band. */
	strobe: Object.freeze({ slow: 1, fast: 20 }),
	wattsAnEmitter: 10,
	idleWatts: 2,
	unitLoads: 1,
	/** A follower at start address 1 then follows whichever way the real one listens. */
	follows: 'own-address',
} as const);

/** What such a fixture is set to when new. */
export const assumedDefaults = (
	ids: Pick<Profile['defaults'], 'mode' | 'held' | 'programme'>,
): Profile['defaults'] => ({
	work: 'line',
	lead: 'off',
	address: 1,
	speed: 50,
	level: 100,
	strobe: 0,
	loss: 'hold',
	curve: 'straight',
	limit: 100,
	sensor: 'shut',
	code: 1,
	hearing: 50,
	lock: 'off',
	sleep: 0,
	...ids,
});
