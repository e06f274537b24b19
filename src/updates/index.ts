/**
 * The page's side of the offline site: registers the service worker, and says when a new version stands ready. The version changes
 * only when the person asks for it here or closes every page; then all open pages of the site load again together.
 */
export { watchForUpdates } from './watch.ts';
