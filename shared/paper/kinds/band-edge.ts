import { TOP_LEVEL } from '../../dmx/index.ts';
import type { Band } from '../../profile/index.ts';
import { benchWith } from '../bench.ts';
import { bandSlots, chartOf, endsOf, namedOnce, startsOf, twinsOf } from '../chart.ts';
import { numberOf, type Wrong } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import { asTens } from '../levels.ts';
import type { Ground, Kind } from '../types.ts';

const placesOf = (ground: Ground) => bandSlots(ground).filter(({ bands }) => namedOnce(bands).length > 0);

/**
 * The lowest or highest value of a band. Easy: read off the chart; middle: from a chart that gives the other ends only; hard: from
 * such a chart in hexadecimal.
 */
export const bandEdge: Kind = {
	id: 'band-edge',
	topic: KIND_TOPICS['band-edge'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => placesOf(ground).length > 0,
	make(ground, chance, level) {
		const all = placesOf(ground);
		const here = chance.pick(all);
		const { profile, mode, slot, bands } = here;
		const band = chance.pick(namedOnce(bands));
		const { name } = band;
		const edge = chance.pick(['lowest', 'highest'] as const);
		const of = (each: Band): number => (edge === 'lowest' ? each.from : each.to);
		const right = of(band);
		const i = bands.indexOf(band);
		// where the chart gives the other ends, this edge is worked out from the band beside
		const beside = bands[edge === 'lowest' ? i - 1 : i + 1];
		const given = beside ? (edge === 'lowest' ? beside.to : beside.from) : null;
		const hex = level === 'hard';
		const charted = edge === 'lowest' ? { ends: endsOf(bands), hex } : { starts: startsOf(bands), hex };
		const twin = twinsOf(here, all)
			.modes.flatMap((each) => namedOnce(each.bands))
			.find((each) => each.name === name);
		const wrongs: Wrong<number>[] = [
			['other-edge', edge === 'lowest' ? band.to : band.from],
			...(given === null ? [] : [[edge === 'lowest' ? 'off-by-one-low' : 'off-by-one-high', given] as const]),
			...(hex && given !== null
				? [['hex-read-as-decimal', asTens(given) + (edge === 'lowest' ? 1 : -1)] as const]
				: []),
			...(twin ? [['other-modes-chart', of(twin)] as const] : []),
			...[bands[i + 1], bands[i - 1]].flatMap((each): Wrong<number>[] => (each ? [['next-band', of(each)]] : [])),
			['bands-from-the-wrong-end', TOP_LEVEL - right],
			['off-by-one-low', right - 1],
			['off-by-one-high', right + 1],
		];
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					slot: slot.name,
					n: slot.at,
					name,
					edge,
					right,
					...(level === 'easy' ? { chart: chartOf(bands), hex: false } : charted),
					given,
					read: level === 'easy',
					beside: beside?.name ?? null,
				},
				bench: benchWith({ profile, mode, address: 1, levels: { [slot.at]: right } }),
			},
			{ unit: 'value' },
			[right],
			wrongs,
		);
	},
};
