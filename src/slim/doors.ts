import type { Plugin } from 'vite';

/** What holds the things handed to a rig, and to the marker of drills, to the schemas. */
const GUARD = /[\\/]sim[\\/](rig|drill)[\\/]guard\.ts$/;

/** What each of their doors does then: it hands on what it was given. */
const TRUSTING: Readonly<Record<string, readonly string[]>> = {
	rig: ['soundSheet', 'requireEvent', 'requireFaults'],
	drill: ['soundTask'],
};

/**
 * For pages and workers: rigs and drills that trust what they are handed. All that comes to them from outside is read through the schemas
 * where it comes in, and the schema library is for those places alone.
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
