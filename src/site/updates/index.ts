/**
 * The page's side of the offline site: registers the service worker, and says when a new version stands ready. The version changes
 * only when the person asks for it here or closes every page; asked for, it is taken when nothing is under way in any tab (each
 * says so by `useUnderWay`), and then all open pages of the site load again together.
 */
export { UNDER_WAY, type UnderWayNames, useUnderWay } from './underWay.ts';
export { type UpdateNews, type UpdateNotice, watchForUpdates } from './watch.ts';
