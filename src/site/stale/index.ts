/**
 * Whether the build still is what the tree would make: each build leaves a digest of what it was made from, and `npm start` builds only
 * where that, or the build itself, is no longer as it was. Build-time code: no page loads it.
 */
export { stamp } from './integration.ts';
