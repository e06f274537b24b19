/** Engraved on the small picture of a fixture's back: trade words, in small letters. */
export const pictureWords = {
	lamps: { 'power-lamp': 'power', 'data-lamp': 'data', 'sensor-lamp': 'sensor', 'battery-lamp': 'battery' },
	in: 'in',
	out: 'out',
	mains: 'mains',
	switch: 'on/off',
	outputs: ['A', 'B'],
} as const;
