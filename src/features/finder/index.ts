/**
 * The finder on screen: from what is wrong, to the cause, one check a screen. `Finder` is the whole of it, for its page. What is
 * kept is a walk: the rig, the complaint, the steps; everything shown is worked out from that in a worker (`work.ts`, words and
 * all), so that the page stays light and never stands still. The page's store (`store.ts`) sends a walk and draws the view that
 * comes back; a walk is written to the device at every step, and taken up again from there. What is shown is decided in the plain
 * `.ts` file beside each component.
 */

export { beginOn } from './begin.ts';
export { Cautions } from './Cautions.tsx';
export { Finder } from './Finder.tsx';
export type { Finding } from './findings.ts';
export { cautionsFirst, shareText, timeText } from './verdict.ts';

/** What walks begun from plans have found: fetched where a plan asks. @throws TypeError where it cannot be fetched */
export const findings = () => import('./findings.ts');
