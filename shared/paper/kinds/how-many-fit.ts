import { howManyFit, LAST_SLOT } from '../../dmx/index.ts';
import { footprintOf } from '../../profile/index.ts';
import type { ModeAt } from '../chart.ts';
import { numberOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type Level } from '../ids.ts';
import { modesThatRow, shortModes } from '../places.ts';
import type { Chance, Kind } from '../types.ts';

/** Others that stand first, and how many. */
function othersFor(modes: readonly ModeAt[], chance: Chance, level: Level): { at: ModeAt; count: number } | null {
	if (level !== 'hard' || modes.length === 0) return null;
	const at = chance.pick(modes);
	return { at, count: chance.int(2, Math.min(12, howManyFit(footprintOf(at.mode)) - 1)) };
}

/** How many fit one universe? Easy: from 1; middle: from an address on; hard: behind a row of others. */
export const howManyFitKind: Kind = {
	id: 'how-many-fit',
	topic: KIND_TOPICS['how-many-fit'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => modesThatRow(ground).length > 0,
	make(ground, chance, level) {
		const { profile, mode } = chance.pick(modesThatRow(ground));
		const footprint = footprintOf(mode);
		const others = othersFor(shortModes(ground), chance, level);
		const othersEach = others ? footprintOf(others.at.mode) : 0;
		const taken = others ? others.count * othersEach : 0;
		const from = others ? taken + 1 : level === 'easy' ? 1 : chance.int(2, 300);
		const start = from + footprint - 1 > LAST_SLOT ? 1 : from;
		const right = howManyFit(footprint, start);
		const room = LAST_SLOT + 1 - start;
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					footprint,
					start,
					room,
					right,
					used: right * footprint,
					left: room - right * footprint,
					others: start === from ? (others?.count ?? 0) : 0,
					othersFixture: others?.at.profile.name ?? null,
					othersMode: others?.at.mode.name ?? null,
					othersEach,
				},
			},
			{ unit: 'fixtures' },
			[right],
			[
				...(start > 1 ? [['past-512', howManyFit(footprint)] as const] : []),
				['one-fixture-too-many', right + 1],
				['one-fixture-too-few', right - 1],
				...(start === 1 ? [['out-of-256', Math.floor(256 / footprint)] as const] : []),
			],
		);
	},
};
