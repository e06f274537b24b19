import { InputError } from '../../../shared/error/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import { packProfile, unpackProfile } from '../profile-link/index.ts';

/** A fixture that somebody brings, and which task on it. */
export interface OwnAsked {
	readonly profile: Profile;
	readonly seed: number;
}

/** The fragment, with its `#`, that asks for this task on this fixture: the fixture whole, so that it opens on any device. */
export const ownLink = async ({ profile, seed }: OwnAsked): Promise<string> =>
	`#seed=${seed}&on=${await packProfile(profile)}`;

/**
 * Reads a fragment that `ownLink` wrote.
 * @throws InputError `link.damaged`, `link.version`, and what `readProfile` throws
 */
export async function readOwnLink(fragment: string): Promise<OwnAsked> {
	const [, digits = '', on] = /^#?seed=(\d{1,16})&on=([\w.-]+)$/.exec(fragment) ?? [];
	const seed = Number(digits);
	if (on === undefined || !Number.isSafeInteger(seed)) throw new InputError('link.damaged', '', { trouble: 'damaged' });
	return { profile: await unpackProfile(on), seed };
}
