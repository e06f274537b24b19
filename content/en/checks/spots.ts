/** Where to look or to put a hand, for a small picture: on a fixture's back, on the line, at the desk, in the hall. */
export const SPOTS = [
	'display',
	'keys',
	'switches',
	'slides',
	'power-lamp',
	'data-lamp',
	'battery-lamp',
	'sensor-lamp',
	'lens',
	'socket-in',
	'socket-out',
	'mains',
	'power-switch',
	'cable',
	'desk-screen',
	'desk-output',
	'remote',
	'hall',
	'wall',
	'row',
] as const;
export type CheckSpot = (typeof SPOTS)[number];
