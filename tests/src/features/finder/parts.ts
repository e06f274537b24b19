import { isInputError } from '../../../../shared/error/index.ts';
import { type AskRoute, Refused } from '../../../../src/engine/index.ts';
import { makeWork } from '../../../../src/features/finder/routes.ts';
import { finderStore } from '../../../../src/features/finder/store.ts';
import { errorText } from '../../../../src/wording/index.ts';
import { memory } from '../../storage/memory.ts';

/** What the worker does, asked with no worker between: everything goes through JSON, as nothing else may cross. */
export function askHere(): AskRoute {
	const work = makeWork();
	return async (route, asks, { onStage } = {}) => {
		const act = work[route.replace('finder.', '') as keyof typeof work] as (
			asks: unknown,
			tell: (stage: never) => void,
		) => Promise<unknown>;
		try {
			return through(await act(through(asks), (stage) => onStage?.(stage)));
		} catch (error) {
			throw isInputError(error) ? new Refused(error.code, errorText(error)) : error;
		}
	};
}

const through = (what: unknown) => JSON.parse(JSON.stringify(what));

/** A device's store, and what lies in it. */
type Device = ReturnType<typeof memory>;

/** A finder's store on a device in memory, at a fixed time. */
export function storeOn(device: Device = memory(), ask: AskRoute = askHere()) {
	return {
		items: device.held,
		store: finderStore({ ask, storage: device.store, clock: () => Date.UTC(2026, 10, 25, 18, 5) }),
	};
}
