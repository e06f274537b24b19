/**
 * What keeps the bench's script within its weight: build-time code that no page loads. `leanChunks` puts all that one page's
 * islands need at once into one file (many small files compress worse than one); `leanColour` leaves out parts of
 * the colour library that its colour spaces name and nothing here reaches.
 */
export { leanChunks } from './chunks.ts';
export { leanColour } from './colour.ts';
