/** What questions are about, by topic. */
export const topicNames = {
	levels: 'Levels',
	bands: 'Bands of values',
	modes: 'Modes and channels',
	addresses: 'Addresses',
	switches: 'Address switches',
	linking: 'Leader and followers',
	panel: 'Panel and display',
	faults: 'Finding faults',
	care: 'Cautions',
	power: 'Power and hours',
	lines: 'Data lines',
	light: 'Throw and pool',
} as const;

/** How hard. */
export const levelNames = { easy: 'Easy', middle: 'Medium', hard: 'Hard' } as const;
