import { levelOfPercent, middleOf } from '../../dmx/index.ts';
import type { Band } from '../../profile/index.ts';
import { benchWith } from '../bench.ts';
import { type BandSlot, bandSlots, chartOf, endsOf, namedOnce, twinsOf } from '../chart.ts';
import { numberOf, type Wrong } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type Level } from '../ids.ts';
import type { Ground, Kind } from '../types.ts';

/** Widest band of an easy one, in values. */
const EASY_WIDTH = 40;

const placesOf = (ground: Ground) => bandSlots(ground).filter(({ bands }) => namedOnce(bands).length > 0);

/** Bands of that level, or all that have a name of their own where there is none. */
function bandsFor({ bands }: BandSlot, level: Level): Band[] {
	const named = namedOnce(bands);
	const narrow = named.filter(({ from, to }) => to - from < EASY_WIDTH);
	const wide = named.filter(({ from, to }) => to - from >= EASY_WIDTH || (to - from) % 2 === 1);
	const fit = level === 'easy' ? narrow : wide;
	return fit.length > 0 ? fit : named;
}

/** The middle value of a band: of two middles either is right. Easy: a narrow band; middle: any; hard: from last values alone. */
export const bandMiddle: Kind = {
	id: 'band-middle',
	topic: KIND_TOPICS['band-middle'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => placesOf(ground).length > 0,
	make(ground, chance, level) {
		const all = placesOf(ground);
		const here = chance.pick(all);
		const { profile, mode, slot, bands } = here;
		const band = chance.pick(bandsFor(here, level));
		const { from, to, name } = band;
		const lower = middleOf(band);
		const upper = from + to - lower;
		const i = bands.indexOf(band);
		const twin = twinsOf(here, all)
			.modes.flatMap((each) => namedOnce(each.bands))
			.find((each) => each.name === name);
		const wrongs: Wrong<number>[] = [
			['other-edge', from],
			['other-edge', to],
			...(from > 0 ? [['part-of-a-band', Math.floor((to - from) / 2)] as const] : []),
			...(twin ? [['other-modes-chart', middleOf(twin)] as const] : []),
			...[bands[i + 1], bands[i - 1]].flatMap((each): Wrong<number>[] => (each ? [['next-band', middleOf(each)]] : [])),
			...(upper <= 100 ? [['percent-for-value', levelOfPercent(lower)] as const] : []),
		];
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					slot: slot.name,
					n: slot.at,
					name,
					from,
					to,
					sum: from + to,
					half: (from + to) / 2,
					lower,
					upper,
					two: lower !== upper,
					...(level === 'hard' ? { ends: endsOf(bands), hex: false } : { chart: chartOf(bands) }),
					before: level === 'hard' && from > 0 ? from - 1 : null,
				},
				bench: benchWith({ profile, mode, address: 1, levels: { [slot.at]: lower } }),
			},
			{ unit: 'value' },
			[lower, upper],
			wrongs,
		);
	},
};
