import { deflateText, KEPT, toBase64url } from '../../storage/index.ts';
import type { FinderRecord } from './walk.ts';

/**
 * The fragment of a link that goes on with a walk where it stands, with what the gig allows: on another device it has the same rig,
 * steps and questions. What is this device's own stays: the plan it began from, and whether its verdict was counted.
 */
export async function walkLink({ allows, walk }: FinderRecord): Promise<string> {
	const { plan: _, found: __, ...own } = walk ?? {};
	const text = JSON.stringify({ version: KEPT.walk.version, allows, walk: walk && { ...own, counted: [] } });
	return `#walk=${KEPT.walk.version}.${toBase64url(await deflateText(text))}`;
}
