/**
 * Chance that can be repeated. Nothing in `shared/` or `sim/` may call `Math.random`: drills, papers and the line's
 * corrupted frames draw from here, so the same seed always gives the same thing, on every machine.
 * `makeRandom` is a stream to draw from; `hash01` answers "does this one frame go wrong?" with no stream at all, so
 * that the answer does not hang on how many questions were asked before. `murmur3Text` is a short digest of a text, for ids.
 * None is fit for secrets.
 */
export { hash01, murmur3Text } from './murmur3.ts';
export { makeRandom, type Random } from './random.ts';
