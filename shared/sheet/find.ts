import { InputError } from '../error/index.ts';
import { loadProfile, type Profile, profileAtHand } from '../profile/index.ts';
import { devicesOf } from './devices.ts';
import type { Port, RigSheet } from './schema.ts';

/**
 * The profile a sheet's fixture goes by: the sheet's own first, then the bundled ones. A page awaits `loadProfiles` first.
 * @throws InputError `sheet.reference`
 */
export function profileFor(sheet: RigSheet, id: string, path = 'profile'): Profile {
	const profile = sheet.profiles.find((each) => each.id === id) ?? profileAtHand(id);
	if (!profile) throw new InputError('sheet.reference', path, { trouble: 'no-such-profile', id });
	return profile;
}

/**
 * Fetches the bundled profiles that a sheet names, so that it can be opened: await it before. Names that no bundled profile has are
 * passed over; `profileFor` says so.
 * @throws NotFetched
 */
export async function loadProfiles({
	fixtures,
}: {
	readonly fixtures: readonly { readonly profile: string }[];
}): Promise<void> {
	await Promise.all([...new Set(fixtures.map(({ profile }) => profile))].map(loadProfile));
}

/** Splits `device:socket`. */
export function splitPort(port: Port): { readonly device: string; readonly socket: string } {
	const colon = port.indexOf(':');
	return { device: port.slice(0, colon), socket: port.slice(colon + 1) };
}

/** Every data socket of the rig, in the order of the sheet. */
export function portsOf(sheet: RigSheet): Port[] {
	return devicesOf(sheet).flatMap(({ id, ports }) => ports.map(({ socket }) => `${id}:${socket}`));
}
