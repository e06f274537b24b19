import { chartNames } from '#words/fixtures/index.ts';
import { cableWords, deskName, sockets } from '#words/rig/index.ts';
import type { Profile } from '../../shared/profile/index.ts';
import { type Port, type SheetCable, splitPort } from '../../shared/sheet/index.ts';
import { fill } from './fill.ts';

/** What names are read from: an open rig, or a sheet that no rig has been opened from. */
export interface NameSource {
	readonly gear: {
		readonly units: ReadonlyMap<string, { readonly placed: { readonly name: string }; readonly profile: Profile }>;
		readonly desk: { readonly name: string } | null;
		readonly boxes: readonly { readonly id: string; readonly name: string }[];
		readonly cables: readonly SheetCable[];
	};
}

/** What the crew calls a fixture: its name on the sheet; its id where the sheet has no such fixture. */
export function fixtureName(rig: NameSource, fixtureId: string): string {
	return rig.gear.units.get(fixtureId)?.placed.name ?? fixtureId;
}

/** What the crew calls a device. */
export function deviceName(rig: NameSource, device: string): string {
	if (device === 'desk') return rig.gear.desk?.name ?? deskName;
	return rig.gear.boxes.find(({ id }) => id === device)?.name ?? fixtureName(rig, device);
}

/** A mode as the floor calls it, by its name in its profile: a bundled one's own words may be the standard's. */
export const modeCalled = (name: string): string => chartNames[name] ?? name;

/** A channel or a band by the name that the floor has for it: a bundled one's own may be the standard's. */
export const partCalled = (name: string): string => chartNames[name] ?? name;

/** A mode's name as the floor says it; its id where the profile has no such mode. */
export function modeName(profile: Profile, modeId: string): string {
	return modeCalled(profile.modes.find((mode) => mode.id === modeId)?.name ?? modeId);
}

/** A socket by the names people use: 'wash 1, data in', 'desk, output A'. */
export function portText(port: Port, rig: NameSource): string {
	const { device, socket } = splitPort(port);
	const known =
		socket === 'in' || socket === 'out' ? sockets[socket] : fill(sockets.output, { id: socket.toUpperCase() });
	return fill(sockets.at, { device: deviceName(rig, device), socket: known });
}

/** A cable by its number or name alone: 'cable 3'. Known by its id, so that one taken away still has its name. */
export function cableName(cableId: string): string {
	const id = cableId.replace(/^(cable|c(?=-?\d))-?/, '').replaceAll('-', ' ');
	return fill(cableWords.name, { id: id || cableId });
}

/** A cable by its name and where it runs: 'cable 3 (from desk, output A to wash 1, data in)'. */
export function cableText(rig: NameSource, cableId: string): string {
	const name = cableName(cableId);
	const cable = cableOf(rig, cableId);
	if (!cable) return name;
	const at = (port: Port | null): string | null => (port === null ? null : portText(port, rig));
	return fill(cableWords.ends, { name, from: at(cable.from), to: at(cable.to) });
}

const cableOf = (rig: NameSource, id: string): SheetCable | undefined =>
	rig.gear.cables.find((cable) => cable.id === id);
