import { howManyFit, nthAddress } from '../../dmx/index.ts';
import { footprintOf } from '../../profile/index.ts';
import { numberOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import { modesThatRow } from '../places.ts';
import type { Kind } from '../types.ts';

/** The start address of the nth fixture of a row. Easy: third or fourth from 1; middle: up to the eighth; hard: farther, from any. */
export const nthAddressKind: Kind = {
	id: 'nth-address',
	topic: KIND_TOPICS['nth-address'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => modesThatRow(ground).length > 0,
	make(ground, chance, level) {
		const { profile, mode } = chance.pick(modesThatRow(ground));
		const footprint = footprintOf(mode);
		const fit = howManyFit(footprint);
		const [least, most] = level === 'easy' ? [3, 4] : level === 'middle' ? [3, 8] : [6, 16];
		const n = chance.int(Math.min(least, fit), Math.min(most, fit));
		const highest = nthAddress(1, footprint, fit) - (n - 1) * footprint;
		const first = level === 'easy' ? 1 : chance.int(1, Math.max(1, highest));
		const right = nthAddress(first, footprint, n);
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					footprint,
					first,
					n,
					before: n - 1,
					slots: (n - 1) * footprint,
					right,
				},
			},
			{ unit: 'address' },
			[right],
			[
				['one-fixture-too-many', first + n * footprint],
				['one-fixture-too-few', first + (n - 2) * footprint],
				['footprint-not-added', first + n - 1],
				['off-by-one-low', right - 1],
				['off-by-one-high', right + 1],
			],
		);
	},
};
