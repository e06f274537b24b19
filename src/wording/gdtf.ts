import { asked, left } from '#words/gdtf/index.ts';
import type { Says } from '#words/rig/index.ts';
import type { Asked, AskedCode, LeftCode, LeftOut } from '../../shared/gdtf/index.ts';
import { errorText } from './error.ts';
import { sentence } from './fill.ts';

// a code without words fails here
const leftWords: Readonly<Record<LeftCode, Says>> = left;
const askedWords: Readonly<Record<AskedCode, Says>> = asked;

/** What was lost between a profile and an open fixture file, as a sentence or two. */
export const leftOutText = ({ path, code, facts, because }: LeftOut): string =>
	sentence(leftWords[code], { ...facts, path, because: because ? errorText(because) : '' });

/** What had to be assumed of a fixture from such a file, and where to look. */
export const assumedText = ({ code, facts }: Asked): string => sentence(askedWords[code], facts);
