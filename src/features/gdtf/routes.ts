/** Open fixture files in the worker: what reads and writes them is fetched with the first one. */

import { gdtfNames } from '#words/gdtf/index.ts';
import {
	type Asked,
	type LeftOut,
	type ModeChoice,
	type ProfileFromFile,
	readArchive,
	readFixtureType,
	toProfile,
	writeGdtf,
} from '../../../shared/gdtf/index.ts';
import { type Profile, readProfile } from '../../../shared/profile/index.ts';
import { assumedText, leftOutText } from '../../wording/index.ts';

/** Something lost or assumed, with its sentence. */
type Worded<Thing> = Thing & { readonly says: string };

interface ReadAnswer extends Pick<ProfileFromFile, 'profile' | 'personalities'> {
	readonly left: readonly Worded<LeftOut>[];
	readonly asked: readonly Worded<Asked>[];
	/** Every mode the file has, by name, whether it was taken or not. */
	readonly modes: readonly string[];
}

interface WriteAnswer {
	readonly bytes: Uint8Array;
	readonly left: readonly Worded<LeftOut>[];
}

const wordedLeft = (left: readonly LeftOut[]): Worded<LeftOut>[] =>
	left.map((each) => ({ ...each, says: leftOutText(each) }));

export const routes = {
	/**
	 * A profile out of a GDTF file.
	 * @throws InputError `gdtf.archive`, `gdtf.xml`, `gdtf.tree` or `gdtf.mode`
	 */
	read({ bytes, modes }: { readonly bytes: Uint8Array } & ModeChoice): ReadAnswer {
		const { description, otherFiles } = readArchive(bytes);
		const type = readFixtureType(description);
		const { left, asked, ...read } = toProfile(type, gdtfNames, { modes });
		const files: LeftOut[] = otherFiles > 0 ? [{ path: '', code: 'other-files', facts: { count: otherFiles } }] : [];
		return {
			...read,
			modes: type.modes.map(({ name }) => name),
			left: wordedLeft([...files, ...left]),
			asked: asked.map((each) => ({ ...each, says: assumedText(each) })),
		};
	},
	/**
	 * A GDTF file of a profile.
	 * @throws InputError `profile.*` for what is no profile
	 */
	write({ profile }: { readonly profile: Profile }): WriteAnswer {
		const { bytes, left } = writeGdtf(readProfile(profile));
		return { bytes, left: wordedLeft(left) };
	},
};
