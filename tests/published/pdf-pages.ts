import type { PrintedMode } from '../../shared/stock/index.ts';
import { DIMMER, FINE_RED, LONG_WORDS, slot } from '../shared/stock/page/charts.ts';
import { laidOut, PLAIN } from '../shared/stock/page/lay.ts';
import type { MadePage } from '../shared/stock/page/pdf.ts';

const CHART: PrintedMode = {
	name: '4 channel mode',
	slots: [DIMMER, slot(2, 'Shutter', [0, 9, 'open'], [10, 255, LONG_WORDS]), FINE_RED],
};

/** Pages that another extractor read as well: upright, and turned by a viewer one quarter and three. */
export const ORACLE_PAGES: readonly MadePage[] = [0, 1, 3].map((quarters) => ({
	items: laidOut(CHART, { ...PLAIN, wrapAt: 24 }),
	quarters,
}));
