import type { Term } from './types.ts';

/** What a crew does with a rig, and the papers it works from. */
export const crew: readonly Term[] = [
	{
		id: 'plot',
		term: 'Plot',
		everyday: true,
		forms: ['light plot', 'lighting plot'],
		says: 'The drawing, seen from above, of where each light goes, with a number beside each.',
		from: 'trade',
		see: ['patch-sheet', 'rig'],
	},
	{
		id: 'patch-sheet',
		term: 'Patch sheet',
		forms: ['channel hookup'],
		says: 'A list with a row for each light: its number, what it is, mode, universe, start address, and where its power comes from. In the US it is often called a hookup.',
		from: 'trade',
		see: ['patch', 'plot', 'start-address'],
	},
	{
		id: 'focus',
		term: 'Focus',
		everyday: true,
		says: 'To aim a light and set its size, edge and level, so that it lands where it should and nowhere else.',
		from: 'trade',
		see: ['spill', 'glare', 'hot-spot'],
	},
	{
		id: 'glare',
		term: 'Glare',
		says: 'Light that lands in somebody’s eyes and makes it hard to see. It can dazzle on stairs, on stages and on roads.',
		from: 'CIE',
		see: ['spill', 'focus'],
	},
	{
		id: 'hot-spot',
		term: 'Hot spot',
		forms: ['hotspot'],
		says: 'A part of a pool that is far brighter than the rest. Most often the light stands too close, or too square on.',
		from: 'trade',
		see: ['uniformity', 'inverse-square'],
	},
	{
		id: 'tint',
		term: 'Tint',
		says: 'How far a white leans to pink or to green. Two whites with the same colour temperature can differ in it.',
		from: 'trade',
		see: ['colour-temperature', 'chromaticity'],
	},
	{
		id: 'point-load',
		term: 'Point load',
		says: 'Weight that hangs at one point. You add up what hangs there; the person in charge of rigging says what that point may take.',
		from: 'trade',
		see: ['rigging', 'rated'],
	},
	{
		id: 'over-under',
		term: 'Over-under',
		forms: ['over and under', 'over/under'],
		says: 'A way to coil a cable: one loop laid over, the next turned under, so that each twist takes out the last and it runs out flat.',
		from: 'trade',
		see: ['data-cable', 'cable-drum'],
	},
	{
		id: 'quarantine',
		term: 'Quarantine',
		says: 'Keeping a damaged battery apart: tagged, away from people, exits and what burns, watched from a distance. One that smokes, smells, hisses or is hot by itself is left where it is: people get out, and the alarm is raised. The maker’s and the place’s fire rules come first.',
		from: 'trade',
		see: ['battery', 'charge'],
	},
];
