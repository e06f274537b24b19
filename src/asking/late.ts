/** Something that is fetched late could not be: no network, and not kept on the device yet. */
export class NotFetched extends Error {
	override readonly name = 'NotFetched';
}

const missing = new Set<() => Promise<void>>();

/** Notes that something was asked for that is still to be fetched; what is handed out in its place is not for use. */
export function miss(fetch: () => Promise<void>): void {
	missing.add(fetch);
}

/**
 * Does a thing, and does it again once all has been fetched that it asked for in vain. One at a time: what is missing is noted for
 * all. Only in workers as they are built does anything come late (`src/slim/late.ts`).
 * @throws NotFetched, and whatever `act` throws with all at hand
 */
export async function withAll<T>(act: () => T | Promise<T>): Promise<T> {
	for (;;) {
		missing.clear();
		try {
			const got = await act();
			if (missing.size === 0) return got;
		} catch (error) {
			if (missing.size === 0) throw error;
		}
		await fetched(Promise.all([...missing].map((fetch) => fetch())));
	}
}

/** What is on its way, or `NotFetched`. */
export async function fetched<T>(coming: Promise<T>): Promise<T> {
	try {
		return await coming;
	} catch {
		throw new NotFetched();
	}
}
