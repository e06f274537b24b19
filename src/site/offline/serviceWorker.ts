// The service worker itself: a script of its own, with nothing imported. `write.ts` strips its types and puts the lists of files before it.

/** A file of this version: its address, the SHA-256 of what is in it, and what it weighs on the way, in bytes. */
type ListedFile = readonly [address: string, digest: string, weight: number];

/** Kept when this version is installed. */
declare const first: readonly ListedFile[];
/** Kept once a page asks for it. */
declare const later: readonly ListedFile[];
/** Kept once a person asked for what needs it. */
declare const asked: readonly ListedFile[];

/** What of a service worker's surroundings is used here: TypeScript knows a page's or a worker's, not both in one program. */
interface WorkerEvent extends Event {
	waitUntil(done: Promise<unknown>): void;
}
declare const self: {
	addEventListener(type: 'install' | 'activate', act: (event: WorkerEvent) => void): void;
	addEventListener(type: 'message', act: (event: MessageEvent & WorkerEvent) => void): void;
	addEventListener(
		type: 'fetch',
		act: (event: { readonly request: Request; respondWith(answer: Promise<Response>): void }) => void,
	): void;
	skipWaiting(): Promise<void>;
	readonly clients: { claim(): Promise<void> };
	readonly registration: ServiceWorkerRegistration;
};

/** Every version keeps its files here, each by its address and what is in it: one that did not change is fetched once for all. */
const CACHE = 'prep-bay.files';
/** Stands in the cache once the whole site does: a new version then comes whole. */
const WHOLE = new URL('/?prep-bay-whole', location.href).href;
/** Stands in the cache once something that is only kept when asked for does: a new version then brings its own along. */
const WAS_ASKED = new URL('/?prep-bay-asked', location.href).href;
/** Where pages hear of what is kept. */
const channel = new BroadcastChannel('prep-bay.kept');
/** Files fetched at a time. */
const AT_ONCE = 6;

const all: readonly ListedFile[] = [...first, ...later];
const byAddress = new Map([...all, ...asked].map((file) => [file[0], file]));
const askedAddresses = new Set(asked.map(([address]) => address));
const keyOf = ([address, digest]: ListedFile): string =>
	new URL(`${address}?${encodeURIComponent(digest)}`, location.href).href;

async function keysIn(cache: Cache): Promise<ReadonlySet<string>> {
	return new Set((await cache.keys()).map(({ url }) => url));
}

/** Fetches a file of this very version, and keeps it: a host that changes versions halfway through sends another, which is refused. */
async function fetchAndKeep(cache: Cache, file: ListedFile): Promise<Response> {
	const [address, digest] = file;
	// a name with a hash in it is never another file: what the page has fetched already serves
	const cacheMode = address.startsWith('/_astro/') ? 'default' : 'no-cache';
	const answer = await fetch(address, { integrity: `sha256-${digest}`, cache: cacheMode, credentials: 'same-origin' });
	if (!answer.ok) throw new Error(`${address} was not there: ${answer.status}`);
	// what a host moved on its way may not answer for a page
	const plain = answer.redirected ? new Response(answer.body, { headers: answer.headers }) : answer;
	await cache.put(keyOf(file), plain.clone());
	if (askedAddresses.has(address)) await cache.put(WAS_ASKED, new Response(''));
	return plain;
}

/** Keeps files, a few at a time; those that are there already are not fetched again. */
async function keep(files: readonly ListedFile[], onKept: () => void = () => {}): Promise<void> {
	const cache = await caches.open(CACHE);
	const there = await keysIn(cache);
	const missing = files.filter((file) => !there.has(keyOf(file)));
	let next = 0;
	const run = async () => {
		for (let file = missing[next++]; file; file = missing[next++]) {
			await fetchAndKeep(cache, file);
			onKept();
		}
	};
	await Promise.all(Array.from({ length: AT_ONCE }, run));
}

/** How much of this version is kept, in bytes as they came over the network. */
async function whatIsKept(): Promise<{ kept: number; of: number }> {
	const there = await keysIn(await caches.open(CACHE));
	const weigh = (files: readonly ListedFile[]) => files.reduce((sum, [, , weight]) => sum + weight, 0);
	return { kept: weigh(all.filter((file) => there.has(keyOf(file)))), of: weigh(all) };
}

async function install(): Promise<void> {
	const cache = await caches.open(CACHE);
	const wanted = (await cache.match(WHOLE)) ? all : first;
	await keep((await cache.match(WAS_ASKED)) ? [...wanted, ...asked] : wanted);
}

/** Drops what no version here needs. One that is on its way may have brought files already: it tidies up in its turn. */
async function tidy(): Promise<void> {
	if (self.registration.installing || self.registration.waiting) return;
	const cache = await caches.open(CACHE);
	const wanted = new Set([...[...all, ...asked].map(keyOf), WHOLE, WAS_ASKED]);
	for (const { url } of await cache.keys()) if (!wanted.has(url)) await cache.delete(url);
	// versions up to 2026 were kept under names like these
	for (const name of await caches.keys()) if (name.startsWith('workbox-')) await caches.delete(name);
}

let keepingAll: Promise<void> | null = null;

/** Keeps the rest, and tells every page how far it is. */
async function keepAll(): Promise<void> {
	const tell = async (isStuck: boolean) => channel.postMessage({ ...(await whatIsKept()), isStuck });
	let count = 0;
	try {
		await keep(all, () => {
			if (++count % 16 === 0) void tell(false);
		});
		await (await caches.open(CACHE)).put(WHOLE, new Response(''));
		await tell(false);
	} catch {
		// no network, or no room: what came is kept, and the next page asks again
		await tell(true);
	}
}

async function answer(file: ListedFile, request: Request): Promise<Response> {
	const cache = await caches.open(CACHE);
	const kept = await cache.match(keyOf(file), { ignoreVary: true });
	if (kept) return kept;
	try {
		return await fetchAndKeep(cache, file);
	} catch {
		// the host has another version by now, or there is no network
		const page = byAddress.get('/not-kept/');
		return fetch(request).catch(async (error) => {
			const instead = request.mode === 'navigate' && page ? await cache.match(keyOf(page)) : undefined;
			if (instead) return instead;
			throw error;
		});
	}
}

self.addEventListener('install', (event) => event.waitUntil(install()));
// the pages already open are answered from the device from now on
self.addEventListener('activate', (event) => event.waitUntil(tidy().then(() => self.clients.claim())));
self.addEventListener('message', (event) => {
	const { type } = (event.data ?? {}) as { readonly type?: unknown };
	// a new version waits until it is told to take over, or no page is open
	if (type === 'SKIP_WAITING') event.waitUntil(self.skipWaiting());
	if (type === 'keep-all') {
		keepingAll ??= keepAll().finally(() => {
			keepingAll = null;
		});
		event.waitUntil(keepingAll.then(() => event.ports[0]?.postMessage('over')));
	}
	if (type === 'what-is-kept') event.waitUntil(whatIsKept().then((kept) => event.ports[0]?.postMessage(kept)));
});
self.addEventListener('fetch', (event) => {
	const { request } = event;
	// what a link carries after the `?` is read by the page, not the host
	const { origin, pathname } = new URL(request.url);
	if (request.method !== 'GET' || origin !== location.origin) return;
	const isPage = request.mode === 'navigate' && !/\.[a-z0-9]+$/.test(pathname);
	const file = byAddress.get(pathname) ?? (isPage ? byAddress.get('/404.html') : undefined);
	if (file) event.respondWith(answer(file, request));
});

// a module to whoever checks it, so that its names are its own; `write.ts` makes the script of it that a browser takes
export {};
