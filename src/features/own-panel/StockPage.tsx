import type { JSX } from 'preact';
import { stockPage } from '#words/stock/index.ts';
import { laterWith } from '../../ui/index.ts';
import { Stock } from '../stock/index.ts';

const LivePanel = laterWith(stockPage, 'coming')(() => import('./LivePanel.tsx'));

/** The crew's own fixtures, each with its panel live where it was written down. */
export const StockPage = (): JSX.Element => <Stock panel={LivePanel} />;
