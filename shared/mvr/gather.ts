import {
	archiveTrouble,
	entriesIn,
	LIMITS,
	listIn,
	recordLength,
	tooLarge,
	ZIP_END,
	ZIP_RECORD,
	type ZipEntry,
	zipOf,
} from '../gdtf/index.ts';
import { CODE, entryNamed, readMvrArchive, SCENE } from './archive.ts';
import { MOST_KINDS } from './kinds.ts';
import { readScene } from './scene.ts';

/** A file from which parts can be read, so that what isn't needed never comes into memory. */
export interface FileParts {
	/** Bytes of the whole. */
	readonly size: number;
	/** What stands from one byte up to another. */
	read(from: number, to: number): Promise<Uint8Array>;
}

/**
 * What of an MVR file is read, as an MVR file of its own: its scene, the fixture files that this names, and the list of all the
 * others. A hall's file may be up to 4 GB with its models, in up to 65,534 files (ZIP64 isn't read): only what is read counts.
 * @throws InputError `mvr.archive`, `mvr.xml` or `mvr.scene`
 */
export async function gatherMvr(file: FileParts): Promise<Uint8Array<ArrayBuffer>> {
	const from = Math.max(0, file.size - ZIP_END);
	const found = listIn(await file.read(from, file.size), from, CODE);
	if (found.to - found.from > LIMITS.archiveBytes) throw tooLarge(CODE, 'list', LIMITS.archiveBytes);
	const list = await file.read(found.from, found.to);
	const entries = entriesIn(list, found.count, CODE);
	const scenes = entries.filter(({ name }) => name === SCENE);
	const records = new Map<ZipEntry, Uint8Array>();
	let read = 0;
	const take = async (entry: ZipEntry): Promise<void> => {
		if (records.has(entry)) return;
		const { at, packed } = entry;
		// the scene comes first, and alone is no matter of fixture files
		if (packed > LIMITS.gatheredBytes && scenes.includes(entry))
			throw tooLarge(CODE, 'description', LIMITS.descriptionBytes);
		read += packed;
		if (read > LIMITS.gatheredBytes) throw tooLarge(CODE, 'archive', LIMITS.gatheredBytes);
		const length = recordLength(await file.read(at, at + ZIP_RECORD), CODE) + packed;
		if (at + length > file.size) throw archiveTrouble(CODE, 'damaged');
		records.set(entry, await file.read(at, at + length));
	};
	// a file with no scene, or two, is refused by what reads it
	for (const scene of scenes.slice(0, 1)) {
		await take(scene);
		const { fixtures } = readScene(readMvrArchive(zipOf([scene], records)).scene);
		const specs = new Set(fixtures.flatMap(({ spec }) => spec ?? []));
		for (const spec of [...specs].slice(0, MOST_KINDS)) {
			const entry = entryNamed(entries, spec);
			// one that is too large is refused by its size alone
			if (entry && entry.size <= LIMITS.archiveBytes) await take(entry);
		}
	}
	return zipOf(entries, records);
}
