import type { PrintedMode } from '../../shared/stock/index.ts';
import { laidOut, PLAIN } from '../shared/stock/page/lay.ts';
import type { MadePage } from '../shared/stock/page/pdf.ts';

const CHART: PrintedMode = {
	name: '4 channel mode',
	slots: [
		{ at: 1, name: 'Dimmer', bands: [] },
		{
			at: 2,
			name: 'Shutter',
			bands: [
				{ from: 0, to: 9, words: 'open' },
				{ from: 10, to: 255, words: 'strobe, slow to fast, with a pause at every second flash' },
			],
		},
		{ at: 3, fine: 4, name: 'Red', bands: [] },
	],
};

/** Pages that another extractor read as well: upright, and turned by a viewer one quarter and three. */
export const ORACLE_PAGES: readonly MadePage[] = [0, 1, 3].map((quarters) => ({
	items: laidOut(CHART, { ...PLAIN, wrapAt: 24 }),
	quarters,
}));
