import { asideWords, fileWords, openingWords } from '#words/bench/index.ts';
import { partWords } from '#words/ui/index.ts';
import { type InputError, isInputError } from '../../../shared/error/index.ts';
import { LINK_BOUNDS } from '../../storage/index.ts';
import { errorTextLater } from '../../wording/index.ts';
import {
	asideText,
	type BenchRecord,
	isKept,
	type PlayProgress,
	playInStretches,
	putAside,
	type RigStore,
	readBenchFile,
	readLink,
	readText,
	rigStore,
	setKeptAside,
	storeOf,
	takePlace,
	textKept,
} from '../rig/index.ts';
import { emptySheet } from './firstSheet.ts';
import { type BenchOpening, firstBench, IN_PLACE, type OpeningHelp, plainly } from './opened.ts';

/**
 * Opens the bench kept on the device, however long it takes to play. One that cannot be read or played is set aside, and said; one
 * that a newer version made, or that a person would not wait for, stays where it is until another needs the place.
 */
export async function openKept(ways: OpeningHelp): Promise<BenchOpening> {
	const { storage, now } = ways;
	const text = textKept(storage);
	if (text === null) return plainly(await firstBench());
	const found = await readText(text);
	if (found.is === 'newer') return plainly(await firstBench(), { trouble: openingWords.newerStore });
	try {
		if (found.is === 'bench') return plainly(await played(found.kept, ways), { place: takePlace(text) });
	} catch (error) {
		if (!isInputError(error)) throw error;
		if (error.code === 'log.stopped')
			return plainly(await firstBench(), { trouble: openingWords.stoppedOwn, before: IN_PLACE });
	}
	setKeptAside(storage, text, now());
	return plainly(await firstBench(), { trouble: openingWords.damagedStore });
}

/**
 * Opens what a link holds, or an empty bench with a sentence where it holds nothing that can be opened. What was kept on the
 * device is set aside before this one takes its place.
 */
export async function openLink(fragment: string, ways: OpeningHelp): Promise<BenchOpening> {
	const { storage, now } = ways;
	try {
		const store = await played(await readLink(fragment), ways);
		const own = textKept(storage);
		const before = own === null ? null : putAside(storage, own, 'link', now());
		return plainly(store, { keepAtOnce: true, isTheirs: true, before });
	} catch (error) {
		if (!isInputError(error)) throw error;
		const before = isKept(storage) ? IN_PLACE : null;
		return plainly(rigStore(emptySheet()), { trouble: await troubleOf(error), before });
	}
}

/**
 * Opens a bench that was saved to a file, on this device or another. What was kept is set aside before this one takes its place.
 * @returns a sentence where the file cannot be opened; the bench on the page stays
 */
export async function openFile(file: Pick<File, 'size' | 'text'>, ways: OpeningHelp): Promise<BenchOpening | string> {
	const { storage, now } = ways;
	if (file.size > LINK_BOUNDS.characters) return fileWords.long;
	try {
		const store = await played(await readBenchFile(await file.text()), ways);
		const own = textKept(storage);
		const before = own === null ? null : putAside(storage, own, 'file', now());
		return plainly(store, { keepAtOnce: true, before, by: 'file' });
	} catch (error) {
		// so a browser says that a file has gone, or may not be read
		if (error instanceof DOMException) return partWords.unread;
		if (!isInputError(error)) throw error;
		return /^(file\.|link\.(crowded|slow)|log\.stopped)/.test(error.code) ? errorTextLater(error) : fileWords.noFit;
	}
}

/** A store on what was kept, played with pauses for the page. */
const played = async ({ sheet, log }: BenchRecord, playing: PlayProgress): Promise<RigStore> =>
	storeOf(await playInStretches(sheet, log, playing));

/** One sentence about a link: its own where the link itself is off, a plain one where its insides do not fit. */
async function troubleOf(error: InputError): Promise<string> {
	const own = error.code.startsWith('link.') || error.code === 'log.stopped';
	return own ? openingWords.badLink(await errorTextLater(error)) : openingWords.noFit;
}

/**
 * Opens a bench that was set aside, or the one still in its place.
 * @returns a sentence where it cannot be opened; it stays where it is
 */
export async function openAside(id: string, ways: OpeningHelp): Promise<BenchOpening | string> {
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
