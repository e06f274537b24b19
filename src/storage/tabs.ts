/** What taking hold takes of a browser: both may be missing where a page is not served securely, or is old. */
export interface Holders {
	readonly locks: Pick<LockManager, 'request'> | undefined;
	readonly channel: ((name: string) => BroadcastChannel) | undefined;
}

/** A thing held by this tab: it alone may write. */
export interface Hold {
	letGo(): void;
}

const ofBrowser = (): Holders => ({
	locks: navigator.locks,
	channel: typeof BroadcastChannel === 'undefined' ? undefined : (name) => new BroadcastChannel(name),
});

/**
 * Takes hold of a thing by its key, so that of two tabs with the same one only one writes. By the browser's own locks where there are any:
 * a second tab is told no, and may take it over, which tells the first. Without them, whoever comes last writes, and tells the others.
 * @param takeOver takes it from the tab that has it
 * @param onLost another tab has taken it
 * @returns null where another tab has it
 */
export function takeHold(
	name: string,
	takeOver: boolean,
	onLost: () => void,
	{ locks, channel }: Holders = ofBrowser(),
): Promise<Hold | null> {
	if (locks) return byLock(locks, name, takeOver, onLost);
	return Promise.resolve(channel ? byChannel(channel(name), onLost) : { letGo: () => {} });
}

function byLock(
	locks: Pick<LockManager, 'request'>,
	name: string,
	takeOver: boolean,
	onLost: () => void,
): Promise<Hold | null> {
	return new Promise((resolve) => {
		let held = false;
		let letGo = () => {};
		const until = new Promise<void>((done) => {
			letGo = done;
		});
		locks
			.request(name, takeOver ? { steal: true } : { ifAvailable: true }, (lock) => {
				if (!lock) return resolve(null);
				held = true;
				resolve({ letGo });
				return until;
			})
			// a lock that is stolen breaks the promise of who had it
			.catch(() => (held ? onLost() : resolve(null)));
	});
}

function byChannel(wire: BroadcastChannel, onLost: () => void): Hold {
	wire.onmessage = () => {
		wire.close();
		onLost();
	};
	wire.postMessage('mine');
	return { letGo: () => wire.close() };
}
