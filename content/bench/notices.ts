/** What the free bench says of where it came from, and of what became of the one before. */
export const noticeWords = {
	ownAside: 'A link took the place of your own bench, which is kept.',
	bringBack: 'Bring mine back',
	damagedStore: 'The bench kept on this device was damaged. It has been set aside, and this is a fresh one.',
	notKept: 'This device keeps nothing for this page, so the bench is gone when the page closes. Share it to keep it.',
	badLink: (sentence: string) => `${sentence} The bench is empty meanwhile.`,
	noFit: 'This link holds no rig that fits together, so the bench is empty. Ask for a new link.',
} as const;
