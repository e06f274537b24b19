import { nextFreeAddress } from '../../dmx/index.ts';
import { footprintOf } from '../../profile/index.ts';
import { numberOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type Level } from '../ids.ts';
import { modesThatRow, type Placed, placedOf, placedPart, rigPlaces, shortModes } from '../places.ts';
import type { Chance, Ground, Kind } from '../types.ts';

/** What stands already, and how many slots the new one takes. */
interface Patch {
	readonly taken: readonly Placed[];
	readonly universe: number;
}

/** Fixtures back to back from 1; where a gap is wanted, one somewhere between them, wider or narrower than the new one. */
function patchFor(ground: Ground, chance: Chance, level: Level, footprint: number): Patch {
	const rig = level === 'middle' ? rigPlaces(ground) : null;
	if (rig) return rig;
	const count = level === 'easy' ? chance.int(1, 2) : chance.int(3, 4);
	const gapAt = level === 'hard' ? chance.int(1, count - 1) : -1;
	const taken: Placed[] = [];
	let next = level === 'easy' ? 1 : chance.int(1, footprint);
	for (let i = 0; i < count; i++) {
		const { profile, mode } = chance.pick(shortModes(ground));
		if (i === gapAt)
			next += chance.chance(0.5) ? footprint + chance.int(0, 2) : Math.max(1, footprint - chance.int(1, 2));
		taken.push(placedOf(profile, mode, i, next));
		next += footprintOf(mode);
	}
	return { taken, universe: 1 };
}

/**
 * The lowest address at which one more fits. Easy: behind one or two that stand from 1; middle: behind more, or on the rig; hard:
 * with a gap that it may or may not fit.
 */
export const nextFree: Kind = {
	id: 'next-free',
	topic: KIND_TOPICS['next-free'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => modesThatRow(ground).length > 0 && shortModes(ground).length > 0,
	make(ground, chance, level) {
		const { profile, mode } = chance.pick(modesThatRow(ground));
		const footprint = footprintOf(mode);
		const drawn = patchFor(ground, chance, level, footprint);
		const fallback: Patch = { taken: [placedOf(profile, mode, 0, 1)], universe: 1 };
		const { taken, universe } =
			nextFreeAddress(drawn.taken, footprint, { universe: drawn.universe }) === null ? fallback : drawn;
		const right = nextFreeAddress(taken, footprint, { universe }) as number;
		const firstFree = nextFreeAddress(taken, 1, { universe }) ?? right;
		const last = taken.reduce((most, each) => (each.start > most.start ? each : most));
		const before = taken.find((each) => each.start + each.footprint === right) ?? null;
		const behind = last.start + last.footprint;
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					footprint,
					universe,
					gap: firstFree < right,
					right,
					end: right + footprint - 1,
					beforeName: before?.name ?? null,
					beforeStart: before?.start ?? null,
					beforeLast: right - 1,
					count: taken.length,
					placed: placedPart(chance.shuffle(taken)),
				},
			},
			{ unit: 'address' },
			[right],
			[
				['off-by-one-low', right - 1],
				['footprint-not-added', firstFree],
				['one-fixture-too-many', behind],
				...(before ? [['footprint-not-added', before.start] as const] : []),
				['footprint-added-twice', behind + last.footprint],
				['off-by-one-high', right + 1],
			],
		);
	},
};
