import type { Says } from '../rig/index.ts';

/** Places that have no name of their own on a sheet. */
export const places = { remote: 'the remote', rig: 'the rig' } as const;

/** Bits that the words of checks, faults and mends are filled with. */
export const checkParts = {
	fader: '{name} at {level as level}',
	/** The faders that are not listed: all of them, or what is left. */
	others: [{ when: { some: true }, says: 'the others' }, { says: '' }],
	plug: '{cable as cable} in {output as output}',
	slide: '{title} at {label}',
	/** Where in a menu something stands, by what the display shows. */
	menu: [{ when: { menu: null }, says: '“{item}”' }, { says: '“{menu}”, then “{item}”' }],
	leads: 'Set it to lead.',
} as const satisfies Record<string, Says>;
