const hour = 3_600_000;

/** What a page shows when a new version is ready. */
export interface UpdateNotice {
	/** Shows the notice; `accept` is to be called when the person wants the new version. */
	show(accept: () => void): void;
}

/**
 * Registers the service worker at `/sw.js` and watches for a new version, also when the page is come back to (once an hour at most).
 * Where the browser has no service workers, or refuses, the site works as before, from the network alone.
 */
export async function watchForUpdates(notice: UpdateNotice): Promise<void> {
	if (!('serviceWorker' in navigator)) return;
	const { serviceWorker } = navigator;

	// the first worker ever to take a page over brings no new version with it
	let controlled = serviceWorker.controller !== null;
	serviceWorker.addEventListener('controllerchange', () => {
		if (controlled) location.reload();
		controlled = true;
	});

	const registration = await serviceWorker.register('/sw.js').catch(() => undefined);
	if (!registration) return;

	const offer = (worker: ServiceWorker) => notice.show(() => worker.postMessage({ type: 'SKIP_WAITING' }));
	if (registration.waiting && serviceWorker.controller) offer(registration.waiting);
	registration.addEventListener('updatefound', () => {
		const worker = registration.installing;
		worker?.addEventListener('statechange', () => {
			if (worker.state === 'installed' && serviceWorker.controller) offer(worker);
		});
	});

	let asked = Date.now();
	document.addEventListener('visibilitychange', () => {
		if (document.visibilityState !== 'visible' || Date.now() - asked < hour) return;
		asked = Date.now();
		// with no network there is nothing to learn
		registration.update().catch(() => undefined);
	});
}
