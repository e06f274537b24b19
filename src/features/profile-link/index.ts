/**
 * A fixture whole in the text of a link: what is asked on one opens on any device, whatever is in its stock. What reads profiles is fetched
 * with the first link that brings one.
 */
import { InputError } from '../../../shared/error/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import { deflateText, fromBase64url, inflateText, LINK_BOUNDS, readJson, toBase64url } from '../../storage/index.ts';

/** The version that new links have; a newer one is refused. */
const VERSION = 1;

/** Characters of one: some ten times what a fixture of eight modes comes to. */
const LONGEST = 100_000;

/** What stands in a link for a fixture: a version, and letters, digits, dashes and underscores. */
const PACKED = /^(\d{1,6})\.([\w-]+)$/;

const damaged = (): InputError => new InputError('link.damaged', '', { trouble: 'damaged' });

/** A profile as JSON, deflated, in base64url, with the version of the link before it. */
export const packProfile = async (profile: Profile): Promise<string> =>
	`${VERSION}.${toBase64url(await deflateText(JSON.stringify(profile)))}`;

/**
 * Reads what `packProfile` wrote.
 * @throws InputError `link.damaged`, `link.version`, and what `readProfile` throws
 */
export async function unpackProfile(text: string): Promise<Profile> {
	const [, version, packed = ''] = PACKED.exec(text) ?? [];
	if (version === undefined || packed.length > LONGEST) throw damaged();
	if (Number(version) !== VERSION) throw new InputError('link.version', '', { trouble: 'other-version' });
	const bytes = fromBase64url(packed);
	const json = bytes && (await inflateText(bytes, LINK_BOUNDS.characters));
	const found = json ? readJson(json) : null;
	if (!found || typeof found === 'string') throw damaged();
	const { readProfile } = await import('./read.ts');
	return readProfile(found.value);
}
