import { InputError } from '../../../shared/error/index.ts';
import { asMeant, loadSheet, type RigSheet } from '../../../shared/sheet/index.ts';
import { LONGEST_LOG, type RigEvent, readEvent, readLog } from '../../../sim/event/index.ts';
import { toSheet } from '../../../sim/rig/index.ts';
import {
	fromBase64url,
	inflateText,
	type JsonTrouble,
	KEPT,
	LINK_BOUNDS,
	MOST_READ,
	readJson,
	readRecord,
} from '../../storage/index.ts';
import { type BenchRecord, inWaits, MOST } from './kept.ts';
import { LINK_VERSION } from './linkVersion.ts';
import { pauses, playInStretches } from './play.ts';

/** Longest a log from elsewhere may play, ms of the rig's clock: 400 days, the fastest clock left running for 16 hours. */
export const LONGEST_PLAY_MS = 400 * 24 * 3_600_000;

/** As `readLink`. */
export async function readFragment(fragment: string): Promise<BenchRecord> {
	const [, version, packed = ''] = /^#?rig=(\d{1,6})\.(.*)$/s.exec(fragment) ?? [];
	if (version === undefined) throw damaged();
	if (Number(version) !== LINK_VERSION) throw new InputError('link.version', '', { trouble: 'other-version' });
	if (packed.length > MOST_READ.link) throw new InputError('link.long', '', { trouble: 'too-long' });
	const bytes = fromBase64url(packed);
	const text = bytes && (await inflateText(bytes, LINK_BOUNDS.characters));
	if (!text) throw damaged();
	const found = readJson(text);
	if (typeof found === 'string') throw troubles[found]();
	return playable(await readKept(found.value));
}

/** As `readBenchFile` of the door. */
export async function readFile(text: string): Promise<BenchRecord> {
	const found = readRecord(text, { ...KEPT.bench, bounds: LINK_BOUNDS });
	if (found.is === 'newer') throw new InputError('file.newer', 'version', { trouble: 'newer' });
	if (found.is === 'damaged') throw new InputError('file.damaged', '', { trouble: 'damaged' });
	return playable(await readKept(found.record['kept']));
}

/** @throws InputError `link.slow` where its clock ran longer than a bench from elsewhere may */
function playable(kept: BenchRecord): BenchRecord {
	const plays = kept.log.reduce((sum, event) => sum + (event.type === 'clock.wait' ? event.ms : 0), 0);
	if (plays > LONGEST_PLAY_MS)
		throw new InputError('link.slow', '', {
			trouble: 'plays-too-long',
			days: Math.round(plays / 86_400_000),
			limit: LONGEST_PLAY_MS / 86_400_000,
		});
	return kept;
}

/** As `readBenchSheet`. */
export async function benchOf({ sheet, log }: BenchRecord): Promise<RigSheet> {
	return asMeant(toSheet(await playInStretches(sheet, log)), sheet);
}

/**
 * A sheet and its log from outside, as `[sheet, log]`, read event by event with pauses for the page. Waits longer than one event
 * may last are cut in several: a bench left alone makes them.
 * @throws InputError `link.damaged` or `link.crowded`, and what `loadSheet` and `readLog` throw
 */
export async function readKept(input: unknown): Promise<BenchRecord> {
	if (!Array.isArray(input) || input.length !== 2) throw damaged();
	const [sheet, log] = input as [Record<string, unknown> | null, unknown];
	for (const [what, most] of Object.entries(MOST)) {
		const list = sheet?.[what];
		if (Array.isArray(list) && list.length > most)
			throw new InputError('link.crowded', what, { trouble: 'too-many', list: what, count: list.length, limit: most });
	}
	return { sheet: await loadSheet(sheet), log: await readInPieces(log) };
}

async function readInPieces(input: unknown): Promise<RigEvent[]> {
	// no list, or too long a one: the log's own sentence
	if (!Array.isArray(input) || input.length > LONGEST_LOG) return readLog(input);
	const pause = pauses();
	const log: RigEvent[] = [];
	for (const [i, event] of input.entries()) {
		for (const part of inWaits(event)) log.push(readEvent(part, `[${i}]`));
		if (i % 64 === 0) await pause();
	}
	return log;
}

const tooMuch = (): InputError => new InputError('link.crowded', '', { trouble: 'too-much' });

const damaged = (): InputError => new InputError('link.damaged', '', { trouble: 'damaged' });

const troubles: Readonly<Record<JsonTrouble, () => InputError>> = {
	long: tooMuch,
	many: tooMuch,
	deep: damaged,
	damaged,
};
