/** What was lost, in groups: the first is what may flash. */
export const leftGroups = {
	care: 'The real one acts here, and may flash',
	modes: 'Modes',
	channels: 'Channels',
	bands: 'Bands',
	colours: 'Colours',
	light: 'Light and beam',
	rest: 'Other parts of the file',
} as const;
