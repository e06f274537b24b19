import { InputError, isInputError } from '../../../../shared/error/index.ts';
import { MOST_READ } from '../../../storage/index.ts';
import { refusedFor } from './bounds.ts';
import { qrInPicture } from './readQr.ts';
import type { HandedIn } from './types.ts';

/** Sorts a text into what it is, in a worker: a file may hold thousands of records, and the page must not stand still. */
type Sort = (text: string, from: string) => Promise<readonly HandedIn[]>;

/**
 * Sorts files that were dropped or chosen, pictures of QR codes among them. Each is read by itself; one that cannot be is there
 * by its name, with its sentence.
 * @param signal stops the looking at pictures; files are still read
 */
export async function readFiles(files: Iterable<File>, sort: Sort, signal?: AbortSignal): Promise<readonly HandedIn[]> {
	const handed: HandedIn[] = [];
	for (const file of files) handed.push(...(await readOne(file, sort, signal)));
	return handed;
}

async function readOne(file: File, sort: Sort, signal?: AbortSignal): Promise<readonly HandedIn[]> {
	const refused = (error: InputError): HandedIn[] => [{ is: 'refused', ...refusedFor(file.name, error), error }];
	try {
		if (file.type.startsWith('image/')) return await sort(await qrInPicture(file, signal), file.name);
		if (file.size > 2 * MOST_READ.handedIn)
			return refused(new InputError('handed.long', '', { trouble: 'file-too-large' }));
		return await sort(await file.text(), file.name);
	} catch (error) {
		if (isInputError(error)) return refused(error);
		// a browser says so when a file has gone, or may not be read
		if (error instanceof DOMException) return refused(new InputError('handed.unread', '', { trouble: 'unreadable' }));
		throw error;
	}
}
