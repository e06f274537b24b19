/**
 * What keeps the bench's script within its weight: build-time code that no page loads. `chunks` puts all that one page's islands
 * need at once into one file (many small files compress worse than one); `withoutColourText` leaves out the colour library's
 * reading of colours from text, which nothing here asks of it: colours go in as numbers.
 */
export { chunks } from './chunks.ts';
export { withoutColourText } from './colour.ts';
