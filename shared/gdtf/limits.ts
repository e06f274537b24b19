/** Bounds on a file from outside, so that a hostile one ends in a sentence and not in a stuck device. */
export const LIMITS = Object.freeze({
	/** Bytes of the archive, and of the description once unpacked. */
	archiveBytes: 16 * 2 ** 20,
	/** Bytes of all that is read of a rig's archive, still packed: its scene and the fixture files that this names. */
	gatheredBytes: 64 * 2 ** 20,
	descriptionBytes: 8 * 2 ** 20,
	/** Elements, and geometries, within each other. */
	depth: 64,
	modes: 64,
	/** Slots of one break: a universe (E1.11). */
	slots: 512,
	/** Channels, and geometries, of one mode once every reference is followed. */
	channels: 20_000,
	/** Emitters that a profile takes: colours are fitted by trying every three of them. */
	emitters: 32,
});

/** A limit in bytes as megabytes, for a sentence. */
export const megabytes = (bytes: number): number => bytes / 2 ** 20;
