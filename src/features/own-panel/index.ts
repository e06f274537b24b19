/**
 * The page of the crew's own fixtures with a panel of the bench in it, to be pressed as it is written down. The bench offers those
 * fixtures, and so they can't ask it for its panel themselves: it is handed to them here, and fetched with the first panel.
 */
export { StockPage } from './StockPage.tsx';
