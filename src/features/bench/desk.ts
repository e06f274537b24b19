import { LAST_SLOT, lastSlot, nextFreeAddress } from '../../../shared/dmx/index.ts';
import { type Band, footprintOf, modeOf, type Profile, type Slot } from '../../../shared/profile/index.ts';
import type { Desk, Patch, Rig } from '../../../sim/rig/index.ts';
import { modeCalled, partCalled } from '../../wording/index.ts';

/** One strip of the desk: a slot that the patch gives a name. */
export interface Fader {
	readonly key: string;
	/** Slot of the universe, 1 to 512. */
	readonly slot: number;
	readonly name: string;
	/** The fine half of a 16-bit pair. */
	readonly fine: boolean;
	readonly drives: Slot['drives']['kind'];
	/** Function slots: what they can do. */
	readonly bands: readonly Band[];
}

/** The strips of one patched fixture. */
export interface FaderGroup {
	readonly fixture: string;
	readonly name: string;
	readonly patch: Patch;
	readonly profile: Profile;
	readonly mode: string;
	/** Last slot that is sent. */
	readonly last: number;
	readonly pastEnd: boolean;
	readonly faders: readonly Fader[];
}

/** Level that stands on a slot of the desk, 0 to 255. */
export const levelAt = ({ gear }: Rig, universe: number, slot: number): number =>
	gear.desk?.levels.get(universe)?.[slot - 1] ?? 0;

/** Strips by fixture, in the order of the sheet, named by the patch: what the desk thinks each is. */
export function faderGroups(rig: Rig): FaderGroup[] {
	const { desk, units } = rig.gear;
	if (!desk) return [];
	return [...units].flatMap(([fixture, { placed, profile }]) => {
		const patch = desk.patch.find((each) => each.fixture === fixture);
		if (!patch) return [];
		const mode = modeOf(profile, patch.mode);
		const end = lastSlot(patch.address, footprintOf(mode));
		const faders = mode.slots.flatMap((slot) => {
			const at = patch.address + slot.at - 1;
			const bands =
				slot.drives.kind === 'bands' ? slot.drives.bands.map((band) => ({ ...band, name: partCalled(band.name) })) : [];
			const fader: Fader = {
				key: slot.id,
				slot: at,
				name: partCalled(slot.name),
				fine: false,
				drives: slot.drives.kind,
				bands,
			};
			if (slot.fine === undefined) return [fader];
			const fineAt = patch.address + slot.fine - 1;
			const fine = { ...fader, key: `${slot.id}-fine`, slot: fineAt, fine: true };
			return [fader, fine];
		});
		return [
			{
				fixture,
				name: placed.name,
				patch,
				profile,
				mode: modeCalled(mode.name),
				last: Math.min(end, LAST_SLOT),
				pastEnd: end > LAST_SLOT,
				faders: faders.filter(({ slot }) => slot <= LAST_SLOT).sort((a, b) => a.slot - b.slot),
			},
		];
	});
}

/** Where a fixture that is not patched could go: its own mode, in the first output's universe, past what is taken. */
export function suggestedPatch(rig: Rig, fixture: string): Patch | null {
	const { desk, units } = rig.gear;
	const unit = units.get(fixture);
	const universe = desk?.outputs[0]?.universe;
	if (!desk || !unit || universe === undefined) return null;
	const { mode } = unit.state.context.settings;
	const taken = desk.patch.flatMap((patch) => {
		const other = units.get(patch.fixture);
		if (!other) return [];
		return {
			universe: patch.universe,
			start: patch.address,
			footprint: footprintOf(modeOf(other.profile, patch.mode)),
		};
	});
	const address = nextFreeAddress(taken, footprintOf(modeOf(unit.profile, mode)), { universe });
	return { fixture, universe, address: address ?? 1, mode };
}

/** Every level that stands up, with some of them changed: what `desk.recall` takes. */
export function levelsWith(
	desk: Desk,
	changes: readonly { readonly universe: number; readonly slot: number; readonly level: number }[],
): { universe: number; slot: number; level: number }[] {
	const changed = new Set(changes.map(({ universe, slot }) => `${universe}.${slot}`));
	const standing = [...desk.levels].flatMap(([universe, frame]) =>
		[...frame].flatMap((level, i) =>
			level > 0 && !changed.has(`${universe}.${i + 1}`) ? { universe, slot: i + 1, level } : [],
		),
	);
	return [...standing, ...changes.filter(({ level }) => level > 0)];
}
