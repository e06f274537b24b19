import { type InputError, isInputError } from '../../../shared/error/index.ts';
import { type BrowserStore, deflateText, MOST_READ, type OnShelf, shelfOf, toBase64url } from '../../storage/index.ts';
import { added, merged, NO_STOCK, type StockList, stockText } from './stock.ts';

const shelf = shelfOf<StockList>('stock', {
	none: NO_STOCK,
	reader: async () => (await import('./reading.ts')).readStock,
	write: stockText,
	merge: merged,
});

/** The crew's fixtures kept on the device. What cannot be read is set aside before anything is written over it. */
export const openStock = (store: BrowserStore): Promise<OnShelf<StockList>> => shelf.open(store);

/** Changes what is kept: read again first, since another tab may have written meanwhile. @returns what is there then */
export const changeStock = (
	store: BrowserStore,
	change: (stock: StockList) => StockList,
): Promise<OnShelf<StockList>> => shelf.change(store, change);

/** What was set aside last, as text; null where there is none. */
export const asideText = (store: BrowserStore): string | null => shelf.aside(store);

/** What came of opening a file or a link. */
export type AddOutcome =
	| { readonly is: 'added'; readonly found: OnShelf<StockList>; readonly count: number }
	| { readonly is: 'refused'; readonly because: InputError };

/** Adds what a file or a link holds; one that holds none changes nothing. */
async function addTo(store: BrowserStore, read: () => Promise<StockList>): Promise<AddOutcome> {
	try {
		const came = await read();
		let count = 0;
		const found = await changeStock(store, (own) => {
			const both = added(own, came);
			count = both.count;
			return both.stock;
		});
		return { is: 'added', found, count };
	} catch (error) {
		if (!isInputError(error)) throw error;
		return { is: 'refused', because: error };
	}
}

export const addFile = (store: BrowserStore, text: string): Promise<AddOutcome> =>
	// larger than anything of ours: as if it held nothing
	addTo(store, async () => (await import('./reading.ts')).readStock(text.length > MOST_READ.saved ? '' : text).kept);

/** Whether a fragment (with or without its `#`) says that it holds fixtures. */
export const holdsStock = (fragment: string): boolean => /^#?stock=/.test(fragment);

export const addLink = (store: BrowserStore, fragment: string): Promise<AddOutcome> =>
	addTo(store, async () => (await (await import('./reading.ts')).readStockLink(fragment)).kept);

/** The fragment, with its `#`, that adds these fixtures to anyone's stock. */
export const linkOf = async (stock: StockList): Promise<string> =>
	`#stock=${toBase64url(await deflateText(stockText(stock)))}`;
