import { LAST_SLOT, lastSlot } from '../../dmx/index.ts';
import { footprintOf } from '../../profile/index.ts';
import { benchWith } from '../bench.ts';
import { numberOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import { startFor } from '../places.ts';
import type { Kind } from '../types.ts';

/** The last slot a fixture takes. Easy: from a round address; middle: from any; hard: the last of a row back to back. */
export const lastSlotKind: Kind = {
	id: 'last-slot',
	topic: KIND_TOPICS['last-slot'],
	forms: ['number'],
	levels: LEVELS,
	fits: () => true,
	make({ profiles }, chance, level) {
		const profile = chance.pick(profiles);
		const mode = chance.pick(profile.modes);
		const each = footprintOf(mode);
		const count = level === 'hard' ? chance.int(2, Math.max(2, Math.min(8, Math.floor(LAST_SLOT / each)))) : 1;
		const footprint = Math.min(LAST_SLOT, each * count);
		const start = startFor(chance, level, footprint);
		const right = lastSlot(start, footprint);
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					start,
					each,
					count: footprint / each,
					footprint,
					after: right + 1,
					last: right,
				},
				bench: count === 1 ? benchWith({ profile, mode, address: start }) : null,
			},
			{ unit: 'slot' },
			[right],
			[
				['off-by-one-high', start + footprint],
				['off-by-one-low', right - 1],
				['footprint-not-added', start],
				['footprint-added-twice', right + footprint],
				['one-fixture-too-few', right - each],
				['one-fixture-too-many', right + each],
			],
		);
	},
};
