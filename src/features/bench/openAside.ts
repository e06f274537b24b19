import { asideWords } from '#words/bench/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import { errorTextLater } from '../../wording/index.ts';
import { asideText, readText } from '../rig/index.ts';
import { IN_PLACE, type Opening, plainly, type Ways } from './opened.ts';
import { openKept, played } from './reopening.ts';

/**
 * Opens a bench that was set aside, or the one still in its place.
 * @returns a sentence where it cannot be opened; it stays where it is
 */
export async function openAside(id: string, ways: Ways): Promise<Opening | string> {
	if (id === IN_PLACE) return openKept(ways);
	const text = asideText(ways.storage, id);
	if (text === null) return asideWords.goneAside;
	const found = await readText(text);
	if (found.is !== 'bench') return found.is === 'newer' ? asideWords.newerAside : asideWords.damagedAside;
	try {
		return plainly(await played(found.kept, ways), { keepAtOnce: true, backFrom: id });
	} catch (error) {
		if (!isInputError(error)) throw error;
		return error.code === 'log.stopped' ? errorTextLater(error) : asideWords.damagedAside;
	}
}
