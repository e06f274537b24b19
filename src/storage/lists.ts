/** The database that a trainer's records are kept in. Its version is that of the tables; each record says its own besides. */
export const DATABASE = Object.freeze({ name: 'prep-bay.papers', version: 2 });

/** What each list of records is kept under. */
export type List = 'papers' | 'results' | 'names' | 'counts';
export const LISTS: readonly List[] = ['papers', 'results', 'names', 'counts'];

type Databases = () => Promise<readonly { name?: string }[]>;

/** Asked of the browser; undefined where it cannot say. */
const ofBrowser = (): Databases | undefined =>
	typeof indexedDB === 'undefined' ? undefined : indexedDB.databases?.bind(indexedDB);

/**
 * Whether this device may have kept records before: only then is what reads them fetched with a page. A browser that cannot say
 * is taken to have.
 */
export async function mayHoldRecords(databases: Databases | undefined = ofBrowser()): Promise<boolean> {
	if (!databases) return true;
	try {
		return (await databases()).some(({ name }) => name === DATABASE.name);
	} catch {
		return true;
	}
}
