import type { PrintedMode } from '../../../../shared/stock/index.ts';

type PrintedSlot = PrintedMode['slots'][number];

/** A channel of a sample chart: where it stands, what it is called, and its bands as from, to and what is printed beside. */
export const slot = (
	at: number,
	name: string,
	...bands: readonly (readonly [from: number, to: number, words: string])[]
): PrintedSlot => ({ at, name, bands: bands.map(([from, to, words]) => ({ from, to, words })) });

export const DIMMER = slot(1, 'Dimmer');
/** A colour on two channels. */
export const FINE_RED: PrintedSlot = { ...slot(3, 'Red'), fine: 4 };
/** What is long enough to wrap in a narrow column. */
export const LONG_WORDS = 'strobe, slow to fast, with a pause at every second flash';

/** A chart with a bit of all: bands, a channel of two halves, words that wrap. */
export const SAMPLE: PrintedMode = {
	name: '5 channel mode',
	slots: [
		DIMMER,
		slot(2, 'Shutter', [0, 9, 'open'], [10, 200, LONG_WORDS], [201, 255, 'closed']),
		FINE_RED,
		slot(5, 'Programme', [0, 127, 'off'], [128, 255, 'fade']),
	],
};
