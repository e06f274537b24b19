import { DIP_REACH, DIP_WEIGHTS, switchesFor, upSwitches } from '../../dmx/index.ts';
import { draft, fresh, type Wrong } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import { addressFor, dipBench, dipsOf, weightsOf } from '../switches.ts';
import type { Answer, Kind } from '../types.ts';

/** Set these switches to an address. Easy: one or two up; middle: three; hard: four or more. */
export const addressToDip: Kind = {
	id: 'address-to-dip',
	topic: KIND_TOPICS['address-to-dip'],
	forms: ['switches'],
	levels: LEVELS,
	fits: (ground) => dipsOf(ground).length > 0,
	make(ground, chance, level) {
		const { profile, panel } = chance.pick(dipsOf(ground));
		const { wiring } = panel;
		const address = addressFor(chance, level, wiring);
		const up = upSwitches(switchesFor(address, wiring));
		const other = wiring === 'sum' ? 'sum-plus-one' : 'sum';
		const wrongs: Wrong<readonly number[]>[] = [
			['switches-reversed', up.map((n) => DIP_WEIGHTS.length + 1 - n)],
			...(address > DIP_REACH[other].highest
				? []
				: [['other-wiring', upSwitches(switchesFor(address, other))] as const]),
		];
		const text = (numbers: readonly number[]): string => [...numbers].sort((a, b) => a - b).join(' ');
		const mistakes = wrongs.map(([mistake, chosen]) => ({
			mistake,
			answer: { form: 'switches' as const, up: [...chosen].sort((a, b) => a - b) },
		}));
		return draft(
			{
				facts: {
					fixture: profile.name,
					address,
					wiring,
					up,
					weights: weightsOf(up).reverse(),
					single: up.length === 1,
					sum: address - (wiring === 'sum' ? 0 : 1),
				},
				bench: dipBench(profile),
			},
			{
				ask: { form: 'switches', count: DIP_WEIGHTS.length },
				key: { form: 'switches', up },
				mistakes: fresh<Extract<Answer, { form: 'switches' }>>(mistakes, (answer) => text(answer.up), text(up)),
			},
		);
	},
};
