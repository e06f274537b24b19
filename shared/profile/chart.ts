import { type ErrorFacts, InputError } from '../error/index.ts';
import type { Mode, Profile, Slot } from './schema.ts';

/** The facts of a mode that this fixture does not have. */
export const noMode = ({ name, modes }: Profile, id: string): ErrorFacts['mode.unknown'] => ({
	trouble: 'no-such-mode',
	id,
	profile: name,
	known: modes.map((each) => each.id),
});

/** The mode of that id. @throws InputError `mode.unknown`. */
export function modeOf(profile: Profile, id: string): Mode {
	const mode = profile.modes.find((each) => each.id === id);
	if (!mode) throw new InputError('mode.unknown', 'mode', noMode(profile, id));
	return mode;
}

/** Slots a mode takes on the line (E1.20: footprint), 1..512. */
export function footprintOf(mode: Mode): number {
	return Math.max(...mode.slots.map((slot) => Math.max(slot.at, slot.fine ?? 0)));
}

/** Which slot of the chart stands at number `n` of the footprint, and whether it is the fine half; null past the end. */
export function slotAt(
	mode: Mode,
	n: number,
): { readonly slot: Slot; readonly part: 'whole' | 'coarse' | 'fine' } | null {
	for (const slot of mode.slots) {
		if (slot.at === n) return { slot, part: slot.fine === undefined ? 'whole' : 'coarse' };
		if (slot.fine === n) return { slot, part: 'fine' };
	}
	return null;
}
