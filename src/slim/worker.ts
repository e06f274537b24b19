import type { Plugin } from 'vite';
import { bundledRig, RIG_IDS } from '../../shared/sheet/index.ts';

/** Opens the reason trails of a rig, with all that words them. */
const TRAIL = /[\\/]sim[\\/]rig[\\/]why\.ts$/;

const NEVER = `export const whyOf = () => { throw new Error('a rig in a worker tells no reasons'); };`;

/** A worker that asks a rig why all the same: papers word what a fixture does by it. */
const TELLS = /[\\/]src[\\/]features[\\/]papers[\\/]worker\.ts/;

/** The bundled rigs, each read and checked when it is first asked for. */
const RIGS = /[\\/]shared[\\/]sheet[\\/]bundled[\\/]index\.ts$/;

/** The same, read and checked as the site is built. */
const rigsAsRead =
	(): string => `const sheets = ${JSON.stringify(Object.fromEntries(RIG_IDS.map((id) => [id, bundledRig(id)])))};
export const RIG_IDS = Object.keys(sheets);
export const bundledRig = (id) => sheets[id];`;

/**
 * For workers alone. A rig there is only looked at: what says why a fixture looks as it does is for a page that shows it. And the
 * bundled rigs stand in it as they have been read, so that what reads a sheet comes only with a sheet of somebody's own.
 */
export function leanWorker(): Plugin {
	let tells = false;
	return {
		name: 'prep-bay-lean-worker',
		enforce: 'pre',
		buildStart({ input }) {
			tells = Object.values(input).some((entry) => TELLS.test(entry));
		},
		load(id) {
			if (TRAIL.test(id)) return tells ? null : NEVER;
			return RIGS.test(id) ? rigsAsRead() : null;
		},
	};
}
