/** The parts of the course, in the order to learn in: what a hand must know at the shop comes before the venue. Permanent ids. */
export const PART_IDS = ['prep', 'panel', 'line', 'ready', 'place', 'together', 'wrong', 'out'] as const;
export type PartId = (typeof PART_IDS)[number];

export const parts: Readonly<Record<PartId, { readonly title: string; readonly words: string }>> = {
	prep: {
		title: 'Prep',
		words: 'At the shop, the day before: open the case, look at what is in it, and charge.',
	},
	ready: {
		title: 'Ready for the van',
		words: 'Last thing at the shop: plan every address, test every colour, and label it all.',
	},
	place: {
		title: 'Hang and place',
		words: 'At the venue: where each light stands or hangs, how it is held, and how its light falls on the wall.',
	},
	panel: {
		title: 'Panel',
		words: 'At the back of a fixture: find your way on any panel, and make it give light by itself.',
	},
	line: {
		title: 'Line',
		words: 'Between desk and lights: channels, modes, addresses, bands, cables, and what happens when data stops.',
	},
	together: {
		title: 'Together',
		words: 'Many lights as one: by address, or by one that leads and others that follow.',
	},
	wrong: {
		title: 'When it goes wrong',
		words: 'A light is dark and doors are close: think, split in half, look before you swap.',
	},
	out: { title: 'Load-out', words: 'After the show: cool, coil, charge, and write down what was wrong.' },
};
