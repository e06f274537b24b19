import { addressOf, DIP_WEIGHTS, switchesFor, switchesUp, upSwitches } from '../../dmx/index.ts';
import { numberOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import { addressFor, dipBench, dipsOf, weightsOf } from '../switches.ts';
import type { Kind } from '../types.ts';

/** Which address do these switches set? Easy: one or two up; middle: three; hard: four or more. */
export const dipToAddress: Kind = {
	id: 'dip-to-address',
	topic: KIND_TOPICS['dip-to-address'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => dipsOf(ground).length > 0,
	make(ground, chance, level) {
		const { profile, panel } = chance.pick(dipsOf(ground));
		const { wiring } = panel;
		const address = addressFor(chance, level, wiring);
		const up = upSwitches(switchesFor(address, wiring));
		const weights = weightsOf(up);
		const sum = weights.reduce((total, weight) => total + weight, 0);
		const reversed = switchesUp(up.map((n) => DIP_WEIGHTS.length + 1 - n));
		return numberOf(
			{
				facts: { fixture: profile.name, wiring, up, weights, sum, address, single: up.length === 1 },
				bench: dipBench(profile, address),
			},
			{ unit: 'address' },
			[address],
			[
				['other-wiring', addressOf(switchesUp(up), wiring === 'sum' ? 'sum-plus-one' : 'sum')],
				['switches-reversed', addressOf(reversed, wiring)],
				['switch-number-for-weight', up.reduce((total, n) => total + n, 0)],
				['off-by-one-low', address - 1],
				['off-by-one-high', address + 1],
			],
		);
	},
};
