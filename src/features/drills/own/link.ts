import { InputError } from '../../../../shared/error/index.ts';
import { type Profile, readProfile } from '../../../../shared/profile/index.ts';
import { deflateText, fromBase64url, inflateText, LINK_BOUNDS, readJson, toBase64url } from '../../../storage/index.ts';

/** A fixture that somebody brings, and which task on it. */
export interface OwnAsked {
	readonly profile: Profile;
	readonly seed: number;
}

/** The version that new links have; a newer one is refused. */
const LINK_VERSION = 1;

/** Characters of a link: some ten times what a fixture of eight modes comes to. */
const LONGEST = 100_000;

const damaged = (): InputError => new InputError('link.damaged', '', { trouble: 'damaged' });

/** The fragment, with its `#`, that asks for this task on this fixture: the fixture whole, so that it opens on any device. */
export async function ownLink({ profile, seed }: OwnAsked): Promise<string> {
	return `#seed=${seed}&on=${LINK_VERSION}.${toBase64url(await deflateText(JSON.stringify(profile)))}`;
}

/**
 * Reads a fragment that `ownLink` wrote.
 * @throws InputError `link.damaged`, `link.version`, and what `readProfile` throws
 */
export async function readOwnLink(fragment: string): Promise<OwnAsked> {
	const [, digits = '', version, packed = ''] = /^#?seed=(\d{1,16})&on=(\d{1,6})\.([\w-]*)$/.exec(fragment) ?? [];
	const seed = Number(digits);
	if (version === undefined || !Number.isSafeInteger(seed) || packed.length > LONGEST) throw damaged();
	if (Number(version) !== LINK_VERSION) throw new InputError('link.version', '', { trouble: 'other-version' });
	const bytes = fromBase64url(packed);
	const text = bytes && (await inflateText(bytes, LINK_BOUNDS.characters));
	const found = text ? readJson(text) : null;
	if (!found || typeof found === 'string') throw damaged();
	return { profile: readProfile(found.value), seed };
}
