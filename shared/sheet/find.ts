import { InputError } from '../error/index.ts';
import { loadProfile, type Profile, profileAtHand } from '../profile/index.ts';
import { devicesOf, GOOD_WIRES } from './devices.ts';
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

/**
 * How a rig is meant to be, from how it stands. What hands can set or plug is taken as they left it. What no hand wants is put
 * right: broken cables, anything wrong inside a fixture, no power in the hall, frames that hold no levels, lost data; batteries and
 * the remote are as the rig was laid out with.
 * @param stands the rig as it stands
 * @param laid the sheet that it came from
 */
export function asMeant(stands: RigSheet, laid: RigSheet): RigSheet {
	const charges = new Map(laid.fixtures.map(({ id, charge }) => [id, charge]));
	const { power: _power, sound: _sound, ...hall } = stands.hall;
	return {
		...stands,
		hall,
		fixtures: stands.fixtures.map(({ condition: _condition, lost: _lost, ...fixture }) => ({
			...fixture,
			charge: charges.get(fixture.id) ?? 1,
		})),
		desk: stands.desk && {
			...stands.desk,
			outputs: stands.desk.outputs.map(({ startCode: _startCode, ...output }) => output),
		},
		cables: stands.cables.map((cable) => ({ ...cable, ...GOOD_WIRES })),
		remote: laid.remote,
	};
}
