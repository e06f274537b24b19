import { fixtureWords } from '#words/reference/index.ts';
import { formatLevel, middleOf } from '../../../shared/dmx/index.ts';
import { type Band, footprintOf, type Mode, type Profile, type Slot } from '../../../shared/profile/index.ts';
import { fill } from '../../wording/index.ts';
import type { ReferenceTable } from './types.ts';

const { chart: words } = fixtureWords;

/** Every slot and band of a mode. What to type for a band has a column only where there are bands. */
export function chartTable(profile: Profile, mode: Mode): ReferenceTable {
	const columns = mode.slots.some(({ drives }) => drives.kind === 'bands') ? words.head.length : words.head.length - 1;
	return {
		caption: fill(words.caption, { name: profile.name, mode: mode.name, n: footprintOf(mode) }),
		head: words.head.slice(0, columns),
		rows: [...mode.slots]
			.sort((a, b) => a.at - b.at)
			.flatMap(rowsOf)
			.map((row) => row.slice(0, columns)),
	};
}

function rowsOf(slot: Slot): string[][] {
	const at = slot.fine === undefined ? `${slot.at}` : fill(words.fine, { coarse: slot.at, fine: slot.fine });
	const { drives } = slot;
	if (drives.kind !== 'bands') return [[at, slot.name, words.all, words.drives[drives.kind], '']];
	return drives.bands.map((band) => [
		at,
		slot.name,
		fill(words.band, { from: `${band.from}`, to: band.to }),
		doesText(band),
		formatLevel(middleOf(band)),
	]);
}

function doesText({ name, effect }: Band): string {
	return effect.do === 'strobe' ? fill(words.strobe, { name, slow: effect.slow, fast: effect.fast }) : name;
}
