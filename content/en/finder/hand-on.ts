/** Handing a walk on to somebody else. */
export const handOnWords = {
	title: 'Hand this walk on',
	label: 'Link to this walk',
	says: 'Whoever opens it goes on from this check, with the same rig and the same answers. It can be pasted on the finder’s first screen as well.',
	copy: 'Copy the link',
	copied: 'Link copied.',
	copyFailed: 'This browser won’t copy. Select the link and copy it by hand.',
	taken:
		'You have the walk that was handed on. The one that stood here was set aside: see the page ‘Kept on this device’.',
} as const;
