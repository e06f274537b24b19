import { beamOf } from '../../../../shared/optics/index.ts';
import { mainsWatts, wattsAt } from '../../../../shared/power/index.ts';
import { BUNDLED, footprintOf, type Profile } from '../../../../shared/profile/index.ts';
import { modeCalled } from '../../../wording/index.ts';

/** A number somebody slides. */
export interface Slider {
	readonly id: string;
	readonly label: string;
	readonly unit: string;
	readonly least: number;
	readonly most: number;
	readonly step: number;
	readonly start: number;
	/** The least for what is chosen, where that is more than `least`. */
	leastFor?(picks: Picks): number;
}

/** One of a few, such as a colour or a fixture. */
export interface Pick {
	readonly id: string;
	readonly label: string;
	readonly options: readonly { readonly value: string; readonly words: string }[];
}

/** A line of the outcome: what it is, the sum with the numbers in it, and what it comes to. */
export interface SumLine {
	readonly what: string;
	readonly sum: string;
	readonly comes: string;
	/** Past what is sound: said in words too, in `comes`. */
	readonly over?: boolean;
}

export type SliderValues = Readonly<Record<string, number>>;
export type Picks = Readonly<Record<string, string>>;

/** What a reckoner asks, and what it makes of it. */
export interface Reckoner {
	/** The sums in words, no numbers. */
	readonly formulas: readonly string[];
	readonly sliders: readonly Slider[];
	readonly picks: readonly Pick[];
	reckon(values: SliderValues, picks: Picks): readonly SumLine[];
}

/** A fixture, as far as the reckoners go: plain numbers out of its profile. */
export interface Kit {
	readonly id: string;
	readonly name: string;
	/** Watt-hours of its battery; 0 where it has none. */
	readonly wattHours: number;
	readonly chargeWatts: number;
	readonly idleWatts: number;
	/** At most, from the mains. */
	readonly mainsWatts: number;
	/** Candela straight ahead with everything full; degrees to half the peak and to a tenth. */
	readonly peak: number;
	readonly beam: number;
	readonly field: number;
	/** Metres from which it counts as one point, so that light falls with the square of the throw. */
	readonly nearest: number;
	readonly unitLoads: number;
	/** Held colours, with the watts that they draw at full brightness beside the idle draw. */
	readonly looks: readonly { readonly id: string; readonly name: string; readonly watts: number }[];
	readonly modes: readonly { readonly id: string; readonly name: string; readonly footprint: number }[];
}

/** How long a bar is, in metres, and how wide a wash shines: a profile does not say. Ours, no source. */
const ACROSS = { bar: 1, wash: 0.1 };
/** So many times its size away, a source counts as a point (read). For a wide beam: a narrow one needs more (from memory). */
const SIZES_AWAY = 5;

/** The bundled fixtures as the reckoners take them: worked out when the page is built, so that it carries numbers alone. */
export const kits = (): Kit[] => BUNDLED.map(kitOf);

function kitOf(profile: Profile): Kit {
	const { id, name, shape, power, held, modes, unitLoads } = profile;
	return {
		id,
		name,
		wattHours: power.battery?.wattHours ?? 0,
		chargeWatts: power.battery?.chargeWatts ?? 0,
		idleWatts: power.idleWatts,
		mainsWatts: mainsWatts(profile),
		...beamOf(profile),
		nearest: SIZES_AWAY * ACROSS[shape],
		unitLoads,
		looks: held.map((look) => ({
			id: look.id,
			name: look.name,
			watts:
				wattsAt(
					profile,
					Object.fromEntries(Object.entries(look.levels).map(([emitter, level]) => [emitter, (level ?? 0) / 255])),
				) - power.idleWatts,
		})),
		modes: modes.map((mode) => ({ id: mode.id, name: modeCalled(mode.name), footprint: footprintOf(mode) })),
	};
}
