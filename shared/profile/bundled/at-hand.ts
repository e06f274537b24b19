import { fetched } from '../../error/index.ts';
import type { Profile } from '../schema.ts';

/** Permanent ids of the bundled fixtures, in the order a bench offers them. */
export const PROFILE_IDS = Object.freeze(['tallow-6', 'picket-8', 'cobble', 'thimble-4'] as const);
export type ProfileId = (typeof PROFILE_IDS)[number];

const FILES: Readonly<Record<ProfileId, () => Promise<Profile>>> = {
	'tallow-6': async () => (await import('./tallow-6.ts')).tallow6,
	'picket-8': async () => (await import('./picket-8.ts')).picket8,
	cobble: async () => (await import('./cobble.ts')).cobble,
	'thimble-4': async () => (await import('./thimble-4.ts')).thimble4,
};

const atHand = new Map<string, Profile>();

/** The bundled profile of that id, where it has been fetched or came with the script: see `loadProfile`. */
export const profileAtHand = (id: string): Profile | undefined => atHand.get(id);

export function putAtHand(profiles: readonly Profile[]): void {
	for (const profile of profiles) atHand.set(profile.id, profile);
}

/**
 * Fetches a bundled profile, so that sheets that name it can be opened from then on: await it before.
 * @returns undefined where no bundled fixture is called that
 * @throws NotFetched
 */
export async function loadProfile(id: string): Promise<Profile | undefined> {
	const there = atHand.get(id);
	if (there || !Object.hasOwn(FILES, id)) return there;
	const profile = await fetched(FILES[id as ProfileId]());
	putAtHand([profile]);
	return profile;
}
