import fc from 'fast-check';

/**
 * In `npm test` every property is tried on the same runs each time, so that a clone is red only for what it changed; `npm run soak`
 * draws new ones. Change the number to try others.
 */
if (process.env['PREP_BAY_SOAK'] !== '1') fc.configureGlobal({ seed: 20_261_129 });
