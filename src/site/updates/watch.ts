import { updateChannel } from '../../storage/index.ts';
import type { UnderWayNames } from './underWay.ts';

const hour = 3_600_000;
/** How long the worker may be at keeping the site before it is asked anew, in milliseconds: Firefox gives it 30 s, and 30 s of grace. */
const askAgain = 20_000;
/** How long a tab that leaves its task is given to come to the page it leaves for, in milliseconds. */
const ARRIVAL = 3_000;
/** The event by which a page asks for all of the site to be kept on the device (`Kept.astro`). */
const KEEP = 'prep-bay-keep';
/** The event that tells it that this browser keeps nothing. */
const CANNOT_KEEP = 'prep-bay-cannot-keep';

/** What a tab says of a new version. */
export type UpdateNews =
	/** It stands ready, and may be asked for. */
	| 'ready'
	/** It has been asked for here, and waits for what is under way here, or in another tab. */
	| 'waits-here'
	| 'waits-there'
	/** It has been asked for in another tab, and something is under way here, or nothing is. */
	| 'asked-here'
	| 'asked-there';

/** What a page shows of a new version. */
export interface UpdateNotice {
	/** `accept` is to be called when the person wants the new version; null where it has been asked for. */
	show(saying: UpdateNews, accept: (() => void) | null): void;
}

/** Whether the person asked the browser to save data, as far as it tells. */
function isSavingData(): boolean {
	const { connection } = navigator as Navigator & { readonly connection?: { readonly saveData?: boolean } };
	return connection?.saveData === true || matchMedia('(prefers-reduced-data: reduce)').matches;
}

/** Waits until the page has nothing better to do. */
const idle = (): Promise<unknown> =>
	new Promise((done) => {
		if ('requestIdleCallback' in globalThis) requestIdleCallback(done, { timeout: 5_000 });
		else setTimeout(done, 2_000);
	});

/**
 * Registers the service worker at `/sw.js`, has it keep the whole site when the page is idle, and watches for a new version, also when
 * the page is come back to (once an hour at most). One that is asked for is taken when nothing is under way in any tab, and each tab
 * says what it waits for. Where the person saves data, nothing is kept until it is asked for. Where the browser has no service
 * workers, or refuses, the site works as before, from the network alone.
 */
export async function watchForUpdates(notice: UpdateNotice, { lock, told, count }: UnderWayNames): Promise<void> {
	if (!('serviceWorker' in navigator)) return;
	const { serviceWorker } = navigator;
	const keepAsked = new Promise<void>((done) => addEventListener(KEEP, () => done(), { once: true }));
	const saves = isSavingData();
	if (saves && !(await serviceWorker.getRegistration())) await keepAsked;

	// the first worker ever to take a page over brings no new version with it
	let controlled = serviceWorker.controller !== null;
	serviceWorker.addEventListener('controllerchange', () => {
		if (controlled) location.reload();
		controlled = true;
	});

	const registration = await serviceWorker.register('/sw.js').catch(() => undefined);
	if (!registration) return void dispatchEvent(new Event(CANNOT_KEEP));
	const keepAll = async (): Promise<void> => {
		const { port1, port2 } = new MessageChannel();
		const isOver = new Promise<boolean>((done) => {
			port1.onmessage = () => done(true);
		});
		(await serviceWorker.ready).active?.postMessage({ type: 'keep-all' }, [port2]);
		// a browser ends a worker that is asked nothing for a minute, in the middle of its work too
		const isLate = new Promise<boolean>((done) => setTimeout(done, askAgain, false));
		if (!(await Promise.race([isOver, isLate]))) await keepAll();
	};
	addEventListener(KEEP, () => void keepAll());
	void (saves ? keepAsked : idle()).then(keepAll);

	const channel = updateChannel();
	/** Where it was asked for; null while it has not been. */
	let asked: 'waits' | 'asked' | null = null;
	const say = () => {
		const isHere = Number(document.documentElement.dataset[count] ?? 0) > 0;
		if (asked) notice.show(`${asked}-${isHere ? 'here' : 'there'}`, null);
	};
	addEventListener(told, say);
	channel.addEventListener('message', () => {
		// one that was asked for here goes on saying so
		asked ??= 'asked';
		say();
	});
	const take = async (worker: ServiceWorker) => {
		await betweenTasks(navigator.locks, lock, () => {
			asked = 'waits';
			say();
			channel.postMessage('asked');
		});
		// seen in Chromium 150: a fetch at the moment the old worker is ended starts it anew, and the new one waits half a minute more
		if (asked === 'waits') {
			await new Promise((done) => setTimeout(done, ARRIVAL));
			await betweenTasks(navigator.locks, lock, say);
		}
		worker.postMessage({ type: 'SKIP_WAITING' });
	};
	const offer = (worker: ServiceWorker) => {
		// a newer one still, found while the last is waited for, is asked for as a whole anew
		asked = null;
		notice.show('ready', () => void take(worker));
	};
	if (registration.waiting && serviceWorker.controller) offer(registration.waiting);
	registration.addEventListener('updatefound', () => {
		const worker = registration.installing;
		worker?.addEventListener('statechange', () => {
			if (worker.state === 'installed' && serviceWorker.controller) offer(worker);
		});
	});

	let lookedAt = Date.now();
	document.addEventListener('visibilitychange', () => {
		if (document.visibilityState !== 'visible' || Date.now() - lookedAt < hour) return;
		lookedAt = Date.now();
		// with no network there is nothing to learn
		registration.update().catch(() => undefined);
	});
}

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
