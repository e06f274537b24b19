/**
 * A small static server for the built site, for `npm start` and for the tests: it does what any host does that compresses what it
 * sends, and no more. What it sends beside a file is one table, which the build leaves as `headers.txt` for other hosts too.
 * Build-time code: no page loads it.
 */
export { hostHeaders } from './headers.ts';
export { type SiteServer, serve } from './server.ts';
