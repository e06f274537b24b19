/** Handing a walk on to somebody else. */
export const handOnWords = {
	title: 'Hand this walk on',
	label: 'Link to this walk',
	says: 'Whoever opens it goes on from this check, with the same rig and the same answers. Only one goes on: stop once it’s sent. Tell them what is unplugged, switched off or brought down, and whose hands are on it. The link can be pasted on the finder’s first screen as well.',
	copy: 'Copy the link',
	copied: 'Link copied.',
	copyFailed: 'This browser won’t copy. Select the link and copy it by hand.',
	/** Said whenever a walk comes by a link. */
	taken:
		'You have the walk that was handed on. Before you touch anything, ask who sent this what is unplugged, off or down. Take every lead as live. Look at ‘At this gig’ before the first check: is a show running now, and are you alone? If hours have passed, start again. If it began on a planned rig, the ticks are on the phone that sent this. Tell them what you did: clamp, second fixing and supply are looked at and ticked again there.',
	/** Said where the walk that stands here can't be set aside. */
	noRoom:
		'The walk that was handed on hasn’t come in: this device has no room to set your own aside, and yours still stands. First write down what you’ve unplugged, switched off or brought down. Then make room on the page ‘Kept on this device’, or start again here, and try the link again.',
	again: 'Try the link again',
	/** Said once the walk that stood in its way was given up. */
	waits: 'The walk that was handed on can come in now.',
	/** Said where no link can be made. */
	noLink: 'This browser can’t make the link. Print or copy the walk so far and hand that on.',
	/** Said where the link would be longer than the finder reads. */
	tooLong: 'This walk is too long for a link. Print or copy the walk so far and hand that on.',
	/** Said with it where a walk stood there before. */
	aside: 'The one that stood here was set aside: see the page ‘Kept on this device’.',
} as const;
