import { deflateText, KEPT, LINK_BOUNDS, MOST_READ, toBase64url } from '../../storage/index.ts';
import type { FinderRecord } from './walk.ts';

/**
 * The fragment of a link that goes on with a walk where it stands, with what the gig allows: on another device it has the same rig,
 * steps and questions. What is this device's own stays: the plan it began from, and whether its verdict was counted.
 * @returns null where it comes out longer than the finder reads on the other device
 */
export async function walkLink({ allows, walk }: FinderRecord): Promise<string | null> {
	const { plan: _, found: __, ...own } = walk ?? {};
	const text = JSON.stringify({ version: KEPT.walk.version, allows, walk: walk && { ...own, counted: [] } });
	// what is read on the other side is bounded in bytes, and a character may be several
	if (new TextEncoder().encode(text).length > LINK_BOUNDS.characters) return null;
	const packed = toBase64url(await deflateText(text));
	return packed.length > MOST_READ.link ? null : `#walk=${KEPT.walk.version}.${packed}`;
}
