import { type ErrorFacts, InputError, type Limits, requireNumber, shown } from '../error/index.ts';

type Of<Expected extends string> = Extract<ErrorFacts['power.range'], { readonly expected: Expected }>['of'];

/** Hands a number back if it is more than 0 and finite. Throws `power.range`. */
export function requireAbove0(found: number, path: string, of: Of<'over-0'>): number {
	if (!(typeof found === 'number' && found > 0 && found < Number.POSITIVE_INFINITY)) {
		throw new InputError('power.range', path, { expected: 'over-0', of, found: shown(found) });
	}
	return found;
}

/** Hands a number back if it is 0 or more and finite. Throws `power.range`. */
export function requireFrom0(found: number, path: string, of: Of<'from-0'>): number {
	if (!(typeof found === 'number' && found >= 0 && found < Number.POSITIVE_INFINITY)) {
		throw new InputError('power.range', path, { expected: 'from-0', of, found: shown(found) });
	}
	return found;
}

/** Hands a share back if it is over 0 and at most 1. Throws `power.range`. */
export function requireShare(found: number, path: string, of: Exclude<Limits<'power.range'>['of'], 'output'>): number {
	requireAbove0(found, path, of);
	return requireNumber(found, { lo: 0, hi: 1, code: 'power.range', path, of });
}
