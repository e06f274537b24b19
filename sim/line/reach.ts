import type { Drive, Tap, Wire } from './parts.ts';
import { root } from './wires.ts';

/**
 * Which drives a tap is joined to, by copper alone.
 * - `one`: a single drive. `pair` says how its two wires come in: straight, crossed (swapped), shorted together,
 *   half (one came, on its own pin) or half-crossed (one came, on the other's pin). `lost` is the wire that did not come,
 *   by its name at the talker; `loose` is this tap's conductor that hangs on nothing.
 */
export type Reach =
	| { readonly kind: 'none' }
	| { readonly kind: 'many'; readonly drives: readonly Drive[] }
	| {
			readonly kind: 'one';
			readonly drive: Drive;
			readonly pair: 'straight' | 'crossed' | 'shorted' | 'half' | 'half-crossed';
			readonly lost: 'minus' | 'plus' | null;
			readonly loose: Wire | null;
	  };

/** A reach of a single drive. */
export type One = Extract<Reach, { kind: 'one' }>;

const NONE: Reach = { kind: 'none' };

export function reach(tap: Tap): Reach {
	const minus = root(tap.minus);
	const plus = root(tap.plus);
	const drive = minus.drives?.[0] ?? plus.drives?.[0];
	if (drive === undefined) return NONE;
	if (isShared(minus, drive) || isShared(plus, drive)) {
		return { kind: 'many', drives: [...new Set([...(minus.drives ?? []), ...(plus.drives ?? [])])] };
	}
	const one = (pair: One['pair'], lost: One['lost'] = null, loose: Wire | null = null): One => {
		return { kind: 'one', drive, pair, lost, loose };
	};
	const sentMinus = root(drive.tap.minus);
	const sentPlus = root(drive.tap.plus);
	if (sentMinus === sentPlus) return one('shorted');
	if (minus === plus) return one('shorted', minus === sentMinus ? 'plus' : 'minus');
	if (minus === sentMinus) return plus === sentPlus ? one('straight') : one('half', 'plus', plus);
	if (plus === sentPlus) return one('half', 'minus', minus);
	if (minus === sentPlus) return plus === sentMinus ? one('crossed') : one('half-crossed', 'minus', plus);
	return one('half-crossed', 'plus', minus);
}

/** Whether anyone but this one drives the wire. */
function isShared(wire: Wire, drive: Drive): boolean {
	return wire.drives !== null && (wire.drives.length > 1 || wire.drives[0] !== drive);
}

/** Whether anything comes in that a receiver would take for frames, whole or spoiled. */
export function hearsSomething(tap: Tap): boolean {
	const what = reach(tap);
	if (what.kind === 'one') return what.pair === 'straight' || what.pair === 'half';
	return what.kind === 'many';
}
