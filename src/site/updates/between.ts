/** What it takes of a browser's locks. */
export type Locks = Pick<LockManager, 'query' | 'request'>;

/**
 * Waits until nothing is under way in any tab of the site. Each tab holds a lock of its own while something is: this stands behind
 * each of them in turn, so it hears of a tab that ends its task, is closed or breaks off, with no timer; and whoever begins
 * something meanwhile is waited for too.
 * @param lock what the locks of such tabs are called by
 * @param onWait called once, when there is something to wait for
 */
export async function betweenTasks(locks: Locks, lock: string, onWait: () => void): Promise<void> {
	let isTold = false;
	for (;;) {
		const { held = [] } = await locks.query();
		const names = held.flatMap(({ name = '' }) => (name.startsWith(lock) ? [name] : []));
		if (names.length === 0) return;
		if (!isTold) onWait();
		isTold = true;
		for (const name of names) await locks.request(name, () => undefined);
	}
}
