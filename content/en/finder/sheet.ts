/** A rig sheet of one's own. */
export const sheetWords = {
	bundled: 'Rigs of Lantern Row Hall',
	own: 'A sheet of your own',
	file: 'Open a file',
	paste: 'Paste a sheet, or a link to a bench or a walk',
	open: 'Open what is pasted',
	unreadable: 'That file can’t be read. Choose the file of a rig sheet.',
	long: 'That is longer than any rig sheet. Choose another file.',
} as const;
