import { slotOf } from '../../dmx/index.ts';
import { footprintOf, type Mode, modeOf, type Profile } from '../../profile/index.ts';
import { profileFor } from '../../sheet/index.ts';
import { benchWith } from '../bench.ts';
import {
	entriesOf,
	isInPairs,
	modesWhere,
	type Numbered,
	numbersOf,
	otherModes,
	readsAlike,
	slotChartOf,
	slotNamesOf,
} from '../chart.ts';
import { numberOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type Level } from '../ids.ts';
import { startFor } from '../places.ts';
import type { Chance, Ground, Kind } from '../types.ts';

/** Slots of a mode that no other reads like. */
const told = (mode: Mode): Numbered[] => {
	const numbers = numbersOf(mode);
	return numbers.filter((each) => numbers.every((other) => other === each || !readsAlike(each, other)));
};

/** A fixture in a mode at an address; `crew` is what the crew calls it, where a rig sheet does. */
interface At {
	readonly profile: Profile;
	readonly mode: Mode;
	readonly start: number;
	readonly crew: string | null;
	readonly universe: number;
}

const modesOf = (ground: Ground) => modesWhere(ground, ({ mode }) => told(mode).length > 0);

/** The rig's fixtures that the paper is about, as its desk has them, for the easy and middling ones. */
function patched({ sheet, profiles }: Ground): At[] {
	if (!sheet?.desk) return [];
	return sheet.desk.patch.flatMap(({ fixture, universe, address, mode }) => {
		const placed = sheet.fixtures.find(({ id }) => id === fixture);
		if (!placed) return [];
		const profile = profileFor(sheet, placed.profile);
		if (profiles.every(({ id }) => id !== profile.id)) return [];
		return [{ profile, mode: modeOf(profile, mode), start: address, crew: placed.name, universe }];
	});
}

function pickAt(ground: Ground, chance: Chance, level: Level): At {
	const rig =
		level === 'hard'
			? []
			: patched(ground).filter(({ mode, start }) => told(mode).length > 0 && start + footprintOf(mode) <= 513);
	if (rig.length > 0) return chance.pick(rig);
	const all = modesOf(ground);
	const paired = all.filter(({ mode }) => isInPairs(mode));
	const { profile, mode } = chance.pick(level === 'hard' && paired.length > 0 ? paired : all);
	return { profile, mode, start: startFor(chance, level, footprintOf(mode)), crew: null, universe: 1 };
}

/**
 * Which slot of the desk is this slot of a fixture? Easy: from a round address; middle: from any; hard: the chart names the slots in
 * order and leaves the counting, pairs and all. Where there is a rig, easy and middling ones are about its own fixtures.
 */
export const deskSlot: Kind = {
	id: 'desk-slot',
	topic: KIND_TOPICS['desk-slot'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => modesOf(ground).length > 0,
	make(ground, chance, level) {
		const { profile, mode, start, crew, universe } = pickAt(ground, chance, level);
		const counted = level === 'hard' && isInPairs(mode);
		const wanted = chance.pick(told(mode));
		const { n, name, part } = wanted;
		const right = slotOf(start, n);
		const skipped = entriesOf(mode).findIndex((each) => readsAlike(each, wanted)) + 1;
		const others = otherModes(profile, mode).flatMap((each) =>
			numbersOf(each).filter((slot) => readsAlike(slot, wanted)),
		);
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					crew,
					otherUniverse: universe === 1 ? null : universe,
					mode: mode.name,
					start,
					n,
					name,
					part,
					before: n - 1,
					right,
					counted,
					...(counted ? { slotNames: slotNamesOf(mode) } : { slotChart: slotChartOf(mode) }),
				},
				bench: benchWith({ profile, mode, address: start, universe, alone: n }),
			},
			{ unit: 'slot' },
			[right],
			[
				['slot-in-fixture-not-on-desk', n],
				['off-by-one-high', start + n],
				...(counted && skipped > 0 ? [['fine-ignored', start + skipped - 1] as const] : []),
				...others.map((each) => ['other-modes-chart', start + each.n - 1] as const),
				['first-counted-as-zero', start + n - 2],
				['footprint-added-twice', start + footprintOf(mode) + n - 1],
			],
		);
	},
};
