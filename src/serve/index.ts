/**
 * A small static server for the built site, for `npm start` and for the tests: it does what the plainest host does and
 * no more. Build-time code: no page loads it.
 */
export { type Served, serve } from './server.ts';
