/**
 * The crew's own fixtures: a list kept on the device, an editor where a chart is pasted and checked, fixture files in and out, and ways
 * onto the bench. What reads charts and files and makes fixtures of them is fetched when it is asked for (`maker.ts`, `Editor.tsx`,
 * `FileRead.tsx`); the list needs none of it. Wherever else fixtures are chosen, they are offered from `ownFixtures`.
 */
export { type OwnFixture, ownFixtures, useOwnFixtures } from './own.ts';
export { Stock } from './Stock.tsx';
