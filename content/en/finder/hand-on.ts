/** Handing a walk on to somebody else. */
export const handOnWords = {
	title: 'Hand this walk on',
	label: 'Link to this walk',
	says: 'Whoever opens it goes on from this check, with the same rig and the same answers. Only one goes on: stop once it’s sent. Tell them what is unplugged, switched off or brought down, and whose hands are on it.',
	copy: 'Copy the link',
	copied: 'Link copied.',
	copyFailed: 'This browser won’t copy. Select the link and copy it by hand.',
	arrived:
		'Before you touch anything, ask who sent this what is unplugged, switched off or brought down. Take every lead as live. Any ticks are on the phone that sent it: tell them what you did, and clamp, second fixing and supply are looked at and ticked again there.',
	taken: 'The walk that stood here was set aside: see the page ‘Kept on this device’.',
} as const;
