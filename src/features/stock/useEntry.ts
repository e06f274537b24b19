import { useEffect, useRef, useState } from 'preact/hooks';
import type { StockEntry } from '../../../shared/stock/index.ts';
import { useUnderWay } from '../../site/updates/index.ts';
import { type BrowserStore, followKept, type OnShelf, tellKept } from '../../storage/index.ts';
import { changeStock, openStock } from './keep.ts';
import { contentOf, type StockList } from './stock.ts';

/** Milliseconds between a change and its keeping; what is typed without a pause as long is undone in one go. */
const KEEP_AFTER_MS = 400;
/** Most steps back that are held. */
const MOST_BACK = 100;

/** An entry under the hand of a person. */
export interface Editing<Entry extends StockEntry> {
	readonly entry: Entry;
	readonly change: (part: Partial<Omit<Entry, 'kind' | 'id'>>) => void;
	readonly undo: () => void;
	readonly canUndo: boolean;
	/** Another tab wrote this one, and what it wrote is shown. */
	readonly isTheirs: boolean;
	/** What became of the last keeping; null before the first. */
	readonly found: OnShelf<StockList> | null;
}

/** An entry as it is edited: kept a moment after each change and when the page is left, undone step by step, followed over every tab. */
export function useEntry<Entry extends StockEntry>(storage: BrowserStore, begun: Entry): Editing<Entry> {
	const [entry, set] = useState(begun);
	const [back, setBack] = useState<readonly Entry[]>([]);
	const [isTheirs, setTheirs] = useState(false);
	const [found, setFound] = useState<OnShelf<StockList> | null>(null);
	const now = useRef(begun);
	const kept = useRef(begun);
	const timer = useRef(0);
	useUnderWay(back.length > 0, true);

	const save = () => {
		window.clearTimeout(timer.current);
		timer.current = 0;
		const saving = now.current;
		if (contentOf(saving) === contentOf(kept.current)) return;
		kept.current = saving;
		changeStock(storage, (stock) => new Map(stock).set(saving.id, saving)).then((there) => {
			setFound(there);
			// the list may have been read before: it looks again
			tellKept();
		});
	};
	const put = (next: Entry) => {
		now.current = next;
		set(next);
		if (timer.current === 0) timer.current = window.setTimeout(save, KEEP_AFTER_MS);
	};
	const step = () => setBack((steps) => [...steps, now.current].slice(-MOST_BACK));
	const change: Editing<Entry>['change'] = (part) => {
		if (timer.current === 0) step();
		window.clearTimeout(timer.current);
		timer.current = 0;
		setTheirs(false);
		put({ ...now.current, ...part, changed: Date.now() });
	};
	const undo = () => {
		const last = back.at(-1);
		if (!last) return;
		setBack(back.slice(0, -1));
		setTheirs(false);
		put({ ...last, changed: Date.now() });
	};
	useEffect(() => {
		const look = async () => {
			const { kept: stock } = await openStock(storage);
			const there = stock.get(begun.id);
			if (!isSame(there, begun) || there.changed <= now.current.changed || contentOf(there) === contentOf(now.current))
				return;
			step();
			window.clearTimeout(timer.current);
			timer.current = 0;
			now.current = there;
			kept.current = there;
			set(there);
			setTheirs(true);
		};
		const hide = () => {
			if (document.hidden) save();
		};
		const stop = followKept(look);
		document.addEventListener('visibilitychange', hide);
		window.addEventListener('pagehide', save);
		return () => {
			stop();
			save();
			document.removeEventListener('visibilitychange', hide);
			window.removeEventListener('pagehide', save);
		};
	}, []);
	return { entry, change, undo, canUndo: back.length > 0, isTheirs, found };
}

/** Whether what is kept under an entry's id is of its kind: nothing turns one into another. */
const isSame = <Entry extends StockEntry>(there: StockEntry | undefined, { kind }: Entry): there is Entry =>
	there?.kind === kind;
