/** Titles of the stages, by the first part of a reason’s id, from what feeds the lamp to what is seen of it. */
export const stages = {
	power: 'Power',
	drive: 'What decides',
	source: 'Where it comes from',
	line: 'The line',
	signal: 'Data',
	address: 'Address',
	slots: 'Channels',
	level: 'Brightness',
	lamp: 'The fixture itself',
	light: 'Light',
} as const;

/** A slot that is up, and how far. */
export const slotRaised = '{slot} at {level as level}';
