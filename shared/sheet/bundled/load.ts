import { fetched } from '../../error/index.ts';
import { loadProfiles } from '../find.ts';
import type { RigSheet } from '../schema.ts';

/** Permanent ids. */
export const RIG_IDS = [
	'one-wash',
	'four-in-line',
	'leader-and-three',
	'two-universes',
	'mixed-panels',
	'long-line',
] as const;
export type RigId = (typeof RIG_IDS)[number];

const FILES: Readonly<Record<RigId, () => Promise<RigSheet>>> = {
	'one-wash': async () => (await import('./rigs/one-wash.ts')).oneWash,
	'four-in-line': async () => (await import('./rigs/four-in-line.ts')).fourInLine,
	'leader-and-three': async () => (await import('./rigs/leader-and-three.ts')).leaderAndThree,
	'two-universes': async () => (await import('./rigs/two-universes.ts')).twoUniverses,
	'mixed-panels': async () => (await import('./rigs/mixed-panels.ts')).mixedPanels,
	'long-line': async () => (await import('./rigs/long-line.ts')).longLine,
};

/**
 * Fetches a bundled rig's sheet, with the profiles it names; the same object every time, so that what is worked out for it can be
 * kept.
 * @throws NotFetched
 */
export async function loadRig(id: RigId): Promise<RigSheet> {
	const sheet = await fetched(FILES[id]());
	await loadProfiles(sheet);
	return sheet;
}
