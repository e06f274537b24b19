/**
 * A small static server for the built site, for `npm start` and for the tests: it does what any host does that
 * compresses what it sends, and no more. Build-time code: no page loads it.
 */
export { HEADERS_FILE, headersText } from './headers.ts';
export { type Served, serve } from './server.ts';
