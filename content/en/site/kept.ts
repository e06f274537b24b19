/**
 * What the page says of how much of the site is kept on the device. `{kept}` and `{all}` are megabytes; `{all}` alone is the whole.
 */
export const keptWords = {
	heading: 'Kept on this device',
	/** Before anything is known. */
	looking: 'Looking at what is kept.',
	whole: 'All of Prep Bay is on this device ({all} MB fetched). It works with no network.',
	part: '{kept} MB of {all} MB is on this device. The rest comes while you aren’t busy. With no network, lessons and some parts may not open yet.',
	partSaving:
		'{kept} MB of {all} MB is on this device. This browser is set to save data, so the rest isn’t fetched unless you ask.',
	noneSaving:
		'Nothing is kept yet, as this browser is set to save data. The site needs a network until you keep it: {all} MB to fetch.',
	stuck:
		'{kept} MB of {all} MB is on this device. The rest couldn’t be fetched. Check the network and the free space, then try again.',
	never: 'This browser can’t keep the site, so it needs a network. Private windows often can’t.',
	keep: 'Keep all of it',
	keepRest: 'Keep the rest now',
} as const;
