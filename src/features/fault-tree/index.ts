/**
 * The printed fault tree: a bundled rig or the one in the finder, a fixture, a complaint, and the whole order of checks on a page for the lid of the flight
 * case. `Casefile` is the whole of it, for its page. The tree is `sim/finder`'s; `fit.ts` keeps its lightest branches together
 * until it fits the paper, `viewTree.ts` puts it in words, both in a worker; the page lays it out as nested lists, which are
 * their own text twin. The choice stands in the address, so that a tree can be linked to.
 */
export { Casefile } from './Casefile.tsx';
