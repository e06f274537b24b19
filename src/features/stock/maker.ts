import { stockNames } from '#words/stock/index.ts';
import { quickSheetOf } from '../../../shared/sheet/index.ts';
import { blankEntry, type StockEntry, type StockFixture, stockFixture } from '../../../shared/stock/index.ts';
import { newId } from './stock.ts';

/** The fixture that an entry describes. */
export const fixtureOf = (entry: StockEntry): StockFixture => stockFixture(entry, stockNames);

/** A new entry. @param now ms since 1970 */
export const newEntry = (name: string, now: number): StockEntry => blankEntry(newId(), name, now);

/**
 * The address of a bench with one fixture on a desk, switched on and lit.
 * @returns null where its chart has to be put right first
 */
export async function benchAddress(entry: StockEntry): Promise<string | null> {
	const { profile } = fixtureOf(entry);
	if (!profile) return null;
	const { linkOf } = await import('../rig/index.ts');
	const sheet = { ...quickSheetOf(profile, { count: 1, linked: 'desk' }), profiles: [profile] };
	return `/bench/${await linkOf({ sheet, log: [] })}`;
}
