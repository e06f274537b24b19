/** A rig sheet of one's own. */
export const sheetWords = {
	bundled: 'Rigs of Lantern Row Hall',
	own: 'A sheet of your own',
	file: 'Open a file',
	paste: 'Paste a sheet, or a link to a bench',
	open: 'Open what is pasted',
	empty: 'There is nothing to open. Paste the text of a rig sheet, or a link that a bench made.',
	notJson: 'That is no rig sheet and no link to a bench. A sheet begins with { and is JSON.',
	unreadable: 'That file cannot be read. Choose the file of a rig sheet.',
	long: 'That is longer than any rig sheet. Choose another file.',
	none: 'There is no fixture on this sheet, so there is nothing to find fault with. Put one on it first.',
	crowded: (count: number, most: number) =>
		`This sheet has ${count} fixtures and the finder works with ${most} at most. Cut it down to the line in question.`,
} as const;
