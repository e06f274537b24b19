import { archiveTrouble, LIMITS, textOf, unpacked, type ZipEntry, zipEntries } from '../gdtf/index.ts';

/** The scene's own file. The standard gives it this name, at the root. */
export const SCENE = 'GeneralSceneDescription.xml';

export const CODE = 'mvr.archive';

/** What is in an MVR archive. */
export interface MvrArchive {
	/** The text of its scene. */
	readonly scene: string;
	/** Names of all its files but the scene. */
	readonly names: readonly string[];
	/**
	 * A file of it; null where there is none of that name. A name may leave the ending off, or be written in other capitals, as older
	 * files do. @throws InputError `mvr.archive`
	 */
	file(name: string): Uint8Array | null;
}

/**
 * Opens an MVR archive (DIN SPEC 15801) and reads its scene. Fixture files in it are unpacked when they are asked for, each within
 * the bound of an archive of its own. `gatherMvr` leaves out beforehand what nobody will ask for.
 * @throws InputError `mvr.archive`
 */
export function readMvrArchive(bytes: Uint8Array): MvrArchive {
	const entries = zipEntries(bytes, CODE, LIMITS.gatheredBytes + LIMITS.archiveBytes).filter(
		({ name }) => !name.endsWith('/'),
	);
	const scenes = entries.filter(({ name }) => name === SCENE);
	const [scene] = scenes;
	if (!scene) throw archiveTrouble(CODE, 'no-description');
	if (scenes.length > 1) throw archiveTrouble(CODE, 'two-descriptions');
	const others = entries.filter((each) => each !== scene);
	return {
		scene: textOf(unpacked(bytes, scene, CODE, LIMITS.descriptionBytes), CODE),
		names: others.map(({ name }) => name),
		file(name) {
			const entry = entryNamed(others, name);
			return entry ? unpacked(bytes, entry, CODE, LIMITS.archiveBytes) : null;
		},
	};
}

/** The file that a scene means by a name. */
export function entryNamed(entries: readonly ZipEntry[], name: string): ZipEntry | undefined {
	const plain = (text: string): string => text.toLowerCase().replace(/\.gdtf$/, '');
	return entries.find((each) => each.name === name) ?? entries.find((each) => plain(each.name) === plain(name));
}
