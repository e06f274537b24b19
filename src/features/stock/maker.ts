import { stockNames } from '#words/stock/index.ts';
import { blankEntry, type StockEntry, type StockFixture, stockFixture } from '../../../shared/stock/index.ts';
import { newId } from './stock.ts';

/** The fixture that an entry describes. */
export const fixtureOf = (entry: StockEntry): StockFixture => stockFixture(entry, stockNames);

/** A new entry. @param now ms since 1970 */
export const newEntry = (name: string, now: number): StockEntry => blankEntry(newId(), name, now);
