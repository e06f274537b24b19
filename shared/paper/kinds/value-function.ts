import { bandOf, levelOfPercent, middleOf, TOP_LEVEL } from '../../dmx/index.ts';
import type { Band } from '../../profile/index.ts';
import { benchWith } from '../bench.ts';
import { type BandSlot, bandSlots, chartOf, startsOf, twinsOf } from '../chart.ts';
import { oneOf, say, type Wrong } from '../draft.ts';
import type { MistakeId } from '../ids.ts';
import { KIND_TOPICS, LEVELS, type Level } from '../ids.ts';
import type { Chance, Kind, Say } from '../types.ts';

/** Which function does this value give? Easy: in the middle of a band; middle: inside one; hard: on its edge, from first values alone. */
export const valueFunction: Kind = {
	id: 'value-function',
	topic: KIND_TOPICS['value-function'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => bandSlots(ground).length > 0,
	make(ground, chance, level) {
		const all = bandSlots(ground);
		const here = chance.pick(all);
		const { profile, mode, slot, bands } = here;
		const band = chance.pick(bands);
		const value = valueIn(band, chance, level);
		return oneOf(
			chance,
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					slot: slot.name,
					n: slot.at,
					value,
					...(level === 'hard' ? { starts: startsOf(bands) } : { chart: chartOf(bands) }),
					byStarts: level === 'hard',
					from: band.from,
					to: band.to,
					name: band.name,
				},
				bench: benchWith({ profile, mode, address: 1, levels: { [slot.at]: value } }),
			},
			called(band),
			wrongs(here, value, band, all),
		);
	},
};

const called = ({ name }: Band): Say => say('name', { name });

function valueIn(band: Band, chance: Chance, level: Level): number {
	if (level === 'hard') return chance.pick([band.from, band.to]);
	const wide = band.to - band.from > 3;
	return level === 'middle' && wide ? chance.int(band.from + 1, band.to - 1) : middleOf(band);
}

/** What other readings of the same value give. */
function wrongs(here: BandSlot, value: number, band: Band, all: readonly BandSlot[]): Wrong<Say>[] {
	const { bands } = here;
	const { modes, fixtures } = twinsOf(here, all);
	const read = (mistake: MistakeId, chart: readonly Band[], at: number): Wrong<Say>[] => {
		const found = at >= 0 && at <= TOP_LEVEL ? bandOf(chart, at) : undefined;
		return found ? [[mistake, called(found as Band)]] : [];
	};
	const i = bands.indexOf(band);
	const beside = [...bands].sort((a, b) => Math.abs(bands.indexOf(a) - i) - Math.abs(bands.indexOf(b) - i));
	return [
		...(value === band.from ? read('off-by-one-low', bands, value - 1) : []),
		...(value === band.to ? read('off-by-one-high', bands, value + 1) : []),
		...(value <= 100 ? read('percent-for-value', bands, levelOfPercent(value)) : []),
		...modes.slice(0, 1).flatMap((twin) => read('other-modes-chart', twin.bands, value)),
		...read('bands-from-the-wrong-end', bands, TOP_LEVEL - value),
		...fixtures.slice(0, 1).flatMap((twin) => read('other-fixtures-chart', twin.bands, value)),
		...beside.map((each): Wrong<Say> => ['next-band', called(each)]),
	];
}
