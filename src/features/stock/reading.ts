import { InputError, isInputError } from '../../../shared/error/index.ts';
import { readEntry, type StockEntry } from '../../../shared/stock/index.ts';
import {
	fromBase64url,
	inflateText,
	isRecord,
	KEPT,
	LINK_BOUNDS,
	type Migrate,
	MOST_READ,
	type ReadResult,
	readRecord,
} from '../../storage/index.ts';
import { MOST_STOCK, type StockList } from './stock.ts';

const damagedStock = (): InputError => new InputError('stock.damaged', '', { trouble: 'damaged' });

/** The first version held fixtures made from charts alone, and did not say so. */
const withKinds: Migrate = (old) => ({
	...old,
	kept: isRecord(old['kept'])
		? Object.fromEntries(
				Object.entries(old['kept']).map(([id, each]) => [id, isRecord(each) ? { kind: 'chart', ...each } : each]),
			)
		: old['kept'],
});

/** The first two versions had no panels but those that stand in. */
const withPanels: Migrate = (old) => ({
	...old,
	kept: isRecord(old['kept'])
		? Object.fromEntries(
				Object.entries(old['kept']).map(([id, each]) => [id, isRecord(each) ? { panel: null, ...each } : each]),
			)
		: old['kept'],
});

/**
 * Stock as it is kept, saved or sent, from text. Each entry is read by itself: one that is damaged does not take the others along.
 * @throws InputError `stock.damaged` where the whole cannot be read, `stock.newer` where a newer version wrote it
 */
export function readStock(text: string): ReadResult<StockList> {
	const found = readRecord(text, KEPT.stock, [withKinds, withPanels]);
	if (found.is === 'newer') throw new InputError('stock.newer', 'version', { trouble: 'newer' });
	if (found.is === 'damaged') throw damagedStock();
	const { kept: list } = found.record;
	if (!isRecord(list)) throw damagedStock();
	const kept = new Map<string, StockEntry>();
	const damaged: [string, unknown][] = [];
	for (const [id, each] of Object.entries(list)) {
		try {
			const entry = readEntry(each);
			if (entry.id !== id || kept.size >= MOST_STOCK) throw damagedStock();
			kept.set(id, entry);
		} catch (error) {
			if (!isInputError(error)) throw error;
			damaged.push([id, each]);
		}
	}
	return { kept, damaged: Object.fromEntries(damaged) };
}

/** Stock that a link's fragment holds. @throws InputError as `readStock` */
export async function readStockLink(fragment: string): Promise<ReadResult<StockList>> {
	const [, packed = ''] = /^#?stock=(.*)$/s.exec(fragment) ?? [];
	const bytes = packed.length > MOST_READ.link ? null : fromBase64url(packed);
	const text = bytes && (await inflateText(bytes, LINK_BOUNDS.characters));
	if (!text) throw damagedStock();
	return readStock(text);
}
