import type { Plugin } from 'vite';

/** What holds the things handed to a rig, to the marker of drills and to the chooser of checks to what they must be. */
const GUARD = /[\\/]sim[\\/](rig|drill|sequence)[\\/]guard\.ts$/;

/** What each of their doors does then: it hands on what it was given. */
const TRUSTING: Readonly<Record<string, readonly string[]>> = {
	rig: ['soundSheet', 'requireEvent', 'requireFaults'],
	drill: ['soundTask'],
	sequence: ['requireAsking'],
};

/**
 * For pages and workers: rigs, drills and a chooser that trust what they are handed. All that comes to them from outside is read
 * through the schemas where it comes in, and the schema library is for those places alone.
 */
export function leanDoors(): Plugin {
	return {
		name: 'prep-bay-lean-doors',
		enforce: 'pre',
		load(id) {
			const [, room = ''] = GUARD.exec(id) ?? [];
			return TRUSTING[room]?.map((door) => `export const ${door} = (given) => given;`).join('\n') ?? null;
		},
	};
}
