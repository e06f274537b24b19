import { shown } from './require.ts';

/** Set by the build that ships (a plain `define` in astro.config.mjs) and by nothing else. */
declare const SHIPPED: true | undefined;

/** Whether invariants are looked after: under Node, in tests and on a development server. In what ships it is false, and what stands under it goes. */
export const CHECKED: boolean = typeof SHIPPED === 'undefined';

/**
 * Holds a thing to what must always be so, whatever anybody does: not for what comes from outside, which gets an `InputError`.
 * Called under `if (CHECKED)`, so that a build that ships need not even work out whether it holds.
 * @param what what would then be, such as `a level past 255`
 * @param found what is looked at, to be shown
 * @throws Error naming what does not hold: a bug of this house, and of nobody's doing
 */
export function assert(holds: boolean, what: string, found?: unknown): asserts holds {
	if (!holds) throw new Error(`This can never be: ${what}${found === undefined ? '' : ` (${shown(found)})`}.`);
}
