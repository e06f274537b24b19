/**
 * Fixtures from and to an open file, GDTF (DIN SPEC 15800). Reading goes in three steps: the archive (`readArchive`), its
 * description as a plain tree (`readFixtureType`), and a profile out of that (`toProfile`), with everything that was lost on the way
 * (`left`) and everything that had to be assumed (`asked`). The standard's own defaults (10,000 lm, 1,000 W, 25 degrees) count as not
 * given. No such file says anything of a panel, so the profile has a stand-in. `writeGdtf` goes the other way. What
 * is hostile or damaged ends in an `InputError`, never in anything else: see `LIMITS`. Archive and XML are read and written here
 * for `shared/mvr` too.
 */
export { type Archive, packedFiles, readArchive, writeArchive } from './archive.ts';
export { type ExpandedMode, expandMode, type PlacedChannel } from './expand.ts';
export {
	ASKED_CODES,
	type Asked,
	type AskedCode,
	LEFT_CODES,
	type LeftCode,
	type LeftFacts,
	type LeftOut,
	type Loss,
	type NotWritten,
} from './left.ts';
export { LIMITS } from './limits.ts';
export type { GdtfNames } from './names.ts';
export { type ModeChoice, type ProfileFromFile, toProfile } from './profile.ts';
export { readFixtureType } from './read.ts';
export type { FixtureType } from './tree.ts';
export { inBytes, readDmxValue } from './values.ts';
export { type WrittenFixture, writeGdtf } from './write.ts';
export { DATA_SOCKETS } from './write-geometry.ts';
export { element, guidOf, nameOf, textElement } from './write-xml.ts';
export { childOf, childrenOf, given, readXml, type XmlNode } from './xml.ts';
export {
	archiveTrouble,
	entriesIn,
	listIn,
	recordLength,
	textOf,
	tooLarge,
	unpacked,
	ZIP_END,
	ZIP_RECORD,
	type ZipEntry,
	zipEntries,
} from './zip.ts';
export { zipOf } from './zip-records.ts';
