import { quickSheetOf } from '../../../shared/sheet/index.ts';
import type { StockEntry } from '../../../shared/stock/index.ts';
import { linkOf } from '../rig/index.ts';
import { fixtureOf } from './maker.ts';

/**
 * The address of a bench with one fixture on a desk, switched on and lit.
 * @returns null where its chart has to be put right first
 */
export async function benchAddress(entry: StockEntry): Promise<string | null> {
	const { profile } = fixtureOf(entry);
	if (!profile) return null;
	const sheet = { ...quickSheetOf(profile, { count: 1, linked: 'desk' }), profiles: [profile] };
	return `/bench/${await linkOf({ sheet, log: [] })}`;
}
