import { mvrLeft } from '#words/mvr/index.ts';
import type { Says } from '#words/rig/index.ts';
import type { MvrCode, MvrLeft } from '../../shared/mvr/index.ts';
import { errorText } from './error.ts';
import { sentence } from './fill.ts';

// a code without words fails here
const leftWords: Readonly<Record<MvrCode, Says>> = mvrLeft;

/** What was lost between a plan and an open rig file, as a sentence or two. */
export const mvrLeftText = ({ path, code, facts, because }: MvrLeft): string =>
	sentence(leftWords[code], { ...facts, path, because: because ? errorText(because) : '' });
