/**
 * The site with no network. At the end of a build a service worker is written that keeps the whole site on the device
 * from the first visit on, every page and file, and answers from there. A new version is fetched beside the old one, each file checked
 * against the fingerprint it had when it was built, and takes over all at once: when the person says so, or when the last
 * page of the site is closed. So a page never runs with parts of another version. Build-time code: no page loads it.
 */
export { offline } from './integration.ts';
export { writeServiceWorker } from './worker.ts';
