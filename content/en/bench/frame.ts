/** Words of the bench as a whole: its bar and its parts. */
export const benchWords = {
	loading: 'Setting up the bench…',
	empty: 'There is nothing on the bench. Lay one out, or add a fixture.',
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
	layOut: 'Lay out',
	keptBenches: (count: number) => `Kept benches: ${count}`,
	undo: 'Undo',
	share: 'Share',
	dismiss: 'Dismiss',
	coming: 'One moment…',
	failed: 'This part could not be loaded. Check the network and try again.',
	again: 'Try again',
} as const;
