/** Something that comes late could not be fetched: no network, and not kept on the device yet. Trying again may do. */
export class NotFetched extends Error {
	override readonly name = 'NotFetched';
}

/** What is on its way. @throws NotFetched where it does not come */
export async function fetched<T>(coming: Promise<T>): Promise<T> {
	try {
		return await coming;
	} catch {
		throw new NotFetched();
	}
}
