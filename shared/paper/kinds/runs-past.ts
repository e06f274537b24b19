import { LAST_SLOT, lastSlot, slotsPast } from '../../dmx/index.ts';
import { footprintOf } from '../../profile/index.ts';
import { benchWith } from '../bench.ts';
import { oneOf, say, type Wrong } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type Level } from '../ids.ts';
import type { Chance, Ground, Kind, Say } from '../types.ts';

/** Modes that can run past the end: of one slot none does. */
const modesOf = ({ profiles }: Ground) =>
	profiles.flatMap((profile) => profile.modes.flatMap((mode) => (footprintOf(mode) > 1 ? [{ profile, mode }] : [])));

/** The last slot, past 512 or not: far from it for easy, anywhere about for middle, on the edge for hard. */
function lastFor(chance: Chance, level: Level): number {
	if (level === 'easy') return chance.pick([-1, 1]) * chance.int(3, 8) + LAST_SLOT;
	return LAST_SLOT + (level === 'middle' ? chance.int(-4, 5) : chance.int(-1, 1));
}

/** What a last slot comes to: all of it fits, or so many slots are lost. */
const comesTo = (last: number): Say =>
	last > LAST_SLOT ? say('runs-past', { past: last - LAST_SLOT }) : say('runs-fits', { last });

/** Does a fixture run past the end of its universe, and by how much? */
export const runsPastKind: Kind = {
	id: 'runs-past',
	topic: KIND_TOPICS['runs-past'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => modesOf(ground).length > 0,
	make(ground, chance, level) {
		const { profile, mode } = chance.pick(modesOf(ground));
		const footprint = footprintOf(mode);
		const start = Math.max(1, Math.min(LAST_SLOT, lastFor(chance, level) - footprint + 1));
		const last = lastSlot(start, footprint);
		const past = slotsPast(start, footprint);
		const wrongs: Wrong<Say>[] =
			past > 0
				? [
						['wrapped-past-512', say('runs-on', { past, next: 2 })],
						chance.chance(0.5) ? ['off-by-one-high', comesTo(last + 1)] : ['off-by-one-low', comesTo(last - 1)],
						['past-512', say('runs-fits', { last })],
					]
				: [
						['off-by-one-high', comesTo(last + 1)],
						['footprint-added-twice', comesTo(last + footprint)],
						...chance.shuffle<Wrong<Say>>([
							['off-by-one-low', comesTo(last - 1)],
							['footprint-not-added', comesTo(start)],
						]),
					];
		return oneOf(
			chance,
			{
				facts: { fixture: profile.name, mode: mode.name, start, footprint, last, past, fits: past === 0 },
				bench: benchWith({ profile, mode, address: start }),
			},
			comesTo(last),
			wrongs,
		);
	},
};
