/**
 * The site with no network. At the end of a build a service worker is written that keeps the site on the device and answers from
 * there: the pages and what they need to start with from the first visit on, lessons and heavy parts as they are used or once a page
 * asks for the rest (`src/site/updates` does, when the device is idle and nobody asked it to save data). A new version is fetched
 * beside the old one, as much of it as there was of the old, each file checked against the digest it had when it was built, and takes
 * over all at once: when the person says so, or when the last page of the site is closed. So a page never runs with parts of another
 * version. `Kept.astro` says how much is kept. The rest is build-time code: no page loads it.
 */
export { offline } from './integration.ts';
export { type Kept, writeServiceWorker } from './write.ts';
