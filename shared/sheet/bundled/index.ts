/** The bundled rigs, all of them: set in a made-up hall, invented, and between them what crews meet. */
import type { RigSheet } from '../schema.ts';
import type { RigId } from './load.ts';
import { fourInLine } from './rigs/four-in-line.ts';
import { leaderAndThree } from './rigs/leader-and-three.ts';
import { longLine } from './rigs/long-line.ts';
import { mixedPanels } from './rigs/mixed-panels.ts';
import { oneWash } from './rigs/one-wash.ts';
import { twoUniverses } from './rigs/two-universes.ts';

const sheets: Readonly<Record<RigId, RigSheet>> = {
	'one-wash': oneWash,
	'four-in-line': fourInLine,
	'leader-and-three': leaderAndThree,
	'two-universes': twoUniverses,
	'mixed-panels': mixedPanels,
	'long-line': longLine,
};

/** A bundled rig's sheet; the same object every time, so that what is worked out for it can be kept. */
export const bundledRig = (id: RigId): RigSheet => sheets[id];
