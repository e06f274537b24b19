import type { Plugin } from 'vite';

/** Opens the reason trails of a rig, with all that words them. */
const TRAIL = /[\\/]sim[\\/]rig[\\/]why\.ts$/;

const NEVER = `export const whyOf = () => { throw new Error('a rig in a worker tells no reasons'); };`;

/** For workers alone: a rig that is only looked at. What says why a fixture looks as it does is for a page that shows it. */
export function leanWorker(): Plugin {
	return {
		name: 'prep-bay-lean-worker',
		enforce: 'pre',
		load: (id) => (TRAIL.test(id) ? NEVER : null),
	};
}
