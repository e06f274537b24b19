import { type ErrorFacts, InputError, type PartOfFixture } from '../error/index.ts';
import { isSettingValue, type SettingKey } from './rules.ts';
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

/** The id of the first menu of a panel that stands in for one nobody has described. Permanent. */
export const STAND_IN = 'stand-in';

/** Whether a panel is no panel of the real fixture: whoever shows it says so. */
export const isStandIn = (panel: Profile['panel']): boolean => panel.kind !== 'dip' && panel.menu[0]?.id === STAND_IN;

/** What the id of a crew's own fixture begins with, in their stock and so in its profile. Permanent. */
export const OWN_ID = 'own-';

/**
 * Where a panel comes from: invented and so known whole, a stand-in, or written down by its crew. The last two warn wherever they are
 * shown: how long a key is held is assumed of every panel that somebody wrote down, and often more. The first warns where hands are at
 * a real light, which has another panel.
 */
export const panelFrom = ({ id, panel }: Pick<Profile, 'id' | 'panel'>): 'invented' | 'stand-in' | 'crew' =>
	isStandIn(panel) ? 'stand-in' : id.startsWith(OWN_ID) ? 'crew' : 'invented';

/** Codes of a setting that cannot be so. */
type SettingCode = 'profile.reference' | 'profile.default' | 'sheet.settings';

type HasId = { readonly id: string };

export function idsOf(things: readonly HasId[]): ReadonlySet<string> {
	return new Set(things.map((thing) => thing.id));
}

/** Each id once. @throws InputError `profile.id` at the second of two. */
export function unique(things: readonly HasId[], place: string): void {
	const seen = new Set<string>();
	for (const [i, thing] of things.entries()) {
		if (seen.has(thing.id))
			throw new InputError('profile.id', `${place}[${i}].id`, { trouble: 'id-twice', id: thing.id });
		seen.add(thing.id);
	}
}

/** An id that must be known. @throws InputError with that code, naming `place`. */
export function refer(
	known: ReadonlySet<string>,
	id: string,
	place: string,
	of: PartOfFixture,
	code: SettingCode = 'profile.reference',
): void {
	if (!known.has(id)) throw new InputError(code, place, { trouble: 'not-of-the-fixture', of, id, known: [...known] });
}

/** Whether a fixture of this profile can be set so. @throws InputError `profile.reference`, or the code given, naming `place`. */
export function checkValue(
	profile: Profile,
	key: SettingKey,
	value: unknown,
	place: string,
	code: SettingCode = 'profile.reference',
): void {
	if (!isSettingValue(key, value)) {
		throw new InputError(code, place, { trouble: 'no-such-value', key, value: JSON.stringify(value) });
	}
	const ids =
		key === 'mode' ? profile.modes : key === 'held' ? profile.held : key === 'programme' ? profile.programmes : null;
	if (ids) refer(idsOf(ids), value as string, place, key as 'mode' | 'held' | 'programme', code);
}
