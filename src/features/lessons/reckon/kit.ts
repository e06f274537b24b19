import { beamOf } from '../../../../shared/optics/index.ts';
import { mainsWatts, wattsAt } from '../../../../shared/power/index.ts';
import { BUNDLED, footprintOf, type Profile } from '../../../../shared/profile/index.ts';
import type { Kit } from './types.ts';

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
		modes: modes.map((mode) => ({ id: mode.id, name: mode.name, footprint: footprintOf(mode) })),
	};
}
