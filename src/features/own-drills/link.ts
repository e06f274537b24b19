import { InputError } from '../../../shared/error/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import { packProfile, unpackProfile } from '../profile-link/index.ts';
import { linkOf, readLink } from '../rig/index.ts';

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

/** A rig that somebody brings, and which task on it. */
export interface RigAsked {
	readonly sheet: RigSheet;
	readonly seed: number;
}

/** The fragment, with its `#`, that asks for this task on this rig: the rig whole, as a bench's link has it. */
export const rigTaskLink = async ({ sheet, seed }: RigAsked): Promise<string> =>
	`#seed=${seed}&${(await linkOf({ sheet, log: [] })).slice(1)}`;

/**
 * Reads a fragment that `rigTaskLink` wrote.
 * @throws InputError `link.damaged`, and what `readLink` throws
 */
export async function readRigTaskLink(fragment: string): Promise<RigAsked> {
	const [, digits = '', rig] = /^#?seed=(\d{1,16})&(rig=[\w.-]+)$/.exec(fragment) ?? [];
	const seed = Number(digits);
	if (rig === undefined || !Number.isSafeInteger(seed))
		throw new InputError('link.damaged', '', { trouble: 'damaged' });
	return { sheet: (await readLink(`#${rig}`)).sheet, seed };
}
