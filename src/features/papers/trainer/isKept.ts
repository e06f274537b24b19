/** The database that `carry/shelf.ts` keeps papers and results in; a test holds the two names to each other. */
export const KEPT_IN = 'prep-bay.papers';

/**
 * Whether this device may have kept something of a trainer's before: only then is what reads it fetched with the page. A browser
 * that cannot say is taken to have.
 */
export async function isAnythingKept(
	databases: (() => Promise<readonly { name?: string }[]>) | undefined,
): Promise<boolean> {
	if (!databases) return true;
	try {
		return (await databases()).some(({ name }) => name === KEPT_IN);
	} catch {
		return true;
	}
}
