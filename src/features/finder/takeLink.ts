import type { FinderStore } from './store.ts';

/**
 * Takes a walk out of a link. Once taken it leaves the address: whoever loads the page again goes on with what stands there by then.
 * One that was not taken stays for another try, until something of one's own is begun: that must not give way to it later.
 * @param link the fragment
 */
export async function takeLink(store: FinderStore, link: string): Promise<void> {
	const before = store.scene.walk;
	const leave = (): void => {
		if (location.hash === link) history.replaceState(history.state, '', `${location.pathname}${location.search}`);
	};
	if (await store.read(link)) return leave();
	const look = (): void => {
		const { walk } = store.scene;
		if (walk === null || walk === before) return;
		leave();
		stop();
	};
	const stop = store.subscribe(look);
	look();
}
