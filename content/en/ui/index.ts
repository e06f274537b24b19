export { CREW_PANEL } from './crew-panel.ts';

/** Words of the parts that all pages share. */
export const partWords = {
	caution: 'Caution',
	off: 'Off',
	on: 'On',
	/** Of a chosen file that the device doesn't hand over. */
	unread: 'The device wouldn’t let this file be read. Copy it elsewhere and choose it again.',
	/** Of a number that could be in thousands or have a fraction. */
	grouped:
		'Write it with no comma or dot for thousands, such as 1500. Give a fraction two places at most, such as 1.25.',
} as const;
