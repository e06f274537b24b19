import { isInputError } from '../../../../shared/error/index.ts';
import { type Ask, Refused } from '../../../../src/features/finder/asking.ts';
import type { Storage } from '../../../../src/features/finder/keep.ts';
import { finderStore } from '../../../../src/features/finder/store.ts';
import { makeWork } from '../../../../src/features/finder/work.ts';

/** A device's store in memory. */
export function memory(): { readonly items: Map<string, string>; readonly storage: Storage } {
	const items = new Map<string, string>();
	return {
		items,
		storage: () => ({
			getItem: (key) => items.get(key) ?? null,
			setItem: (key, text) => void items.set(key, text),
			removeItem: (key) => void items.delete(key),
		}),
	};
}

/** What the worker does, asked with no worker between: everything goes through JSON, as nothing else may cross. */
function askHere(): Ask {
	const work = makeWork();
	return async (ask, asks, onStage) => {
		const act = work[ask] as (asks: unknown, tell: (stage: never) => void) => Promise<unknown>;
		try {
			return through(await act(through(asks), (stage) => onStage?.(stage)));
		} catch (error) {
			throw isInputError(error) ? new Refused(error.code, error.message) : error;
		}
	};
}

const through = (what: unknown) => JSON.parse(JSON.stringify(what));

/** A finder's store on a device in memory, at a fixed time. */
export function storeOn(device = memory(), ask: Ask = askHere()) {
	return {
		...device,
		store: finderStore({ ask, storage: device.storage, clock: () => Date.UTC(2026, 10, 25, 18, 5) }),
	};
}
