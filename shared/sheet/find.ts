import { InputError } from '../error/index.ts';
import { bundledProfile, type Profile } from '../profile/index.ts';
import { devicesOf } from './devices.ts';
import type { Port, RigSheet } from './schema.ts';

/** The profile a sheet's fixture goes by: the sheet's own first, then the bundled ones. @throws InputError `sheet.reference`. */
export function profileFor(sheet: RigSheet, id: string, path = 'profile'): Profile {
	const profile = sheet.profiles.find((each) => each.id === id) ?? bundledProfile(id);
	if (!profile) throw new InputError('sheet.reference', path, { trouble: 'no-such-profile', id });
	return profile;
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
