import { stockNames } from '#words/stock/index.ts';
import {
	blankEntry,
	type ChartEntry,
	fileFixture,
	NO_OPEN_ROWS,
	type OpenRows,
	openRows,
	readChart,
	type StockEntry,
	type StockFixture,
	stockFixture,
} from '../../../shared/stock/index.ts';
import { newId } from './stock.ts';

/** The fixture that an entry describes; without a profile where its chart has to be put right first. */
export const fixtureOf = (entry: StockEntry): Pick<StockFixture, 'profile' | 'figures' | 'own'> =>
	entry.kind === 'file' ? fileFixture(entry, stockNames) : chartFixture(entry);

/** The same, with what was read of the chart. */
export const chartFixture = (entry: ChartEntry): StockFixture => stockFixture(entry, stockNames);

/** The rows of its charts that nobody has held against the manual yet. */
export const openRowsOf = (entry: StockEntry): OpenRows =>
	entry.kind === 'file' ? NO_OPEN_ROWS : openRows(readChart(entry.chart));

/** A new entry. @param now ms since 1970 */
export const newEntry = (name: string, now: number): ChartEntry => blankEntry(newId(), name, now);
