/** What papers do in the worker: setting, marking, reading what came in, and looking for codes in pictures. */
import { fetched } from '../../../shared/error/index.ts';
import type { Look } from './exchange/qrLook.ts';
import { papersWork } from './work.ts';

export const routes = {
	...papersWork,
	/** The text of the QR code in a picture; null where none is found. What reads codes is fetched with the first picture. */
	code: async (look: Look): Promise<string | null> => (await fetched(import('./exchange/qrLook.ts'))).qrInLook(look),
};
