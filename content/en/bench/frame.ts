/** Words of the bench as a whole: its bar and its parts. */
export const benchWords = {
	loading: 'Setting up the bench…',
	empty: 'There’s nothing on the bench. Set one up, or add a fixture.',
	parts: {
		row: 'The row',
		desk: 'Desk',
		cables: 'Cables',
		remote: 'Remote',
		sound: 'Sound',
		breaker: 'Break things',
		log: 'What was done',
		clock: 'Clock',
	},
	/** On a phone: what stands below the row, one at a time. */
	tabs: { panel: 'Panel', desk: 'Faders', more: 'More' },
	layOut: 'Set up',
	keptBenches: (count: number) => `Kept benches: ${count}`,
	undo: 'Undo',
	share: 'Share',
	dismiss: 'Dismiss',
	coming: 'One moment…',
	failed: 'This part couldn’t be loaded. Check the network and try again.',
	again: 'Try again',
} as const;
