import { strToU8, zipSync } from 'fflate';
import { LIMITS } from './limits.ts';
import { archiveTrouble, textOf, unpacked, zipEntries } from './zip.ts';

/** The one file of the archive that is read. The standard gives it this name, at the root. */
const DESCRIPTION = 'description.xml';

const CODE = 'gdtf.archive';

/** What is in an archive. */
export interface Archive {
	/** The text of its description. */
	readonly description: string;
	/** How many other files it holds: pictures, models. They are left unread. */
	readonly otherFiles: number;
}

/**
 * Opens a GDTF archive and reads its description. What the archive says of a file (size, check sum) is held to what comes out of
 * it, and no more comes out than the limit, whatever it says.
 * @throws InputError `gdtf.archive`
 */
export function readArchive(bytes: Uint8Array): Archive {
	const entries = zipEntries(bytes, CODE);
	const found = entries.filter(({ name }) => name === DESCRIPTION);
	const [entry] = found;
	if (!entry) throw archiveTrouble(CODE, 'no-description');
	if (found.length > 1) throw archiveTrouble(CODE, 'two-descriptions');
	const files = entries.filter(({ name }) => !name.endsWith('/'));
	return {
		description: textOf(unpacked(bytes, entry, CODE, LIMITS.descriptionBytes), CODE),
		otherFiles: files.length - 1,
	};
}

/** An archive that holds this description alone. */
export function writeArchive(description: string): Uint8Array {
	return packedFiles({ [DESCRIPTION]: strToU8(description) });
}

/** An archive of these files, by their names. The same files give the same archive everywhere. */
export const packedFiles = (files: Readonly<Record<string, Uint8Array>>): Uint8Array =>
	// a fixed time with no zone
	zipSync({ ...files }, { mtime: '2000-01-01T12:00:00' });
