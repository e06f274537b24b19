/**
 * A small static server for the built site, for `npm start` and for the tests: it does what any host does that
 * compresses what it sends, and no more. Build-time code: no page loads it.
 */
export { type Served, serve } from './server.ts';
