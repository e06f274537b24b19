import { InputError, requireNumber, shown } from '../error/index.ts';

/** Hands a number back if it is more than 0 and finite. Throws `power.range`. */
export function requireAbove0(found: number, path: string, what: string): number {
	if (!(typeof found === 'number' && found > 0 && found < Number.POSITIVE_INFINITY)) {
		throw new InputError('power.range', path, `${what} is a number over 0; found ${shown(found)}.`);
	}
	return found;
}

/** Hands a number back if it is 0 or more and finite. Throws `power.range`. */
export function requireFrom0(found: number, path: string, what: string): number {
	if (!(typeof found === 'number' && found >= 0 && found < Number.POSITIVE_INFINITY)) {
		throw new InputError('power.range', path, `${what} is 0 or more; found ${shown(found)}.`);
	}
	return found;
}

/** Hands a share back if it is over 0 and at most 1. Throws `power.range`. */
export function requireShare(found: number, path: string, what: string): number {
	requireAbove0(found, path, what);
	return requireNumber(found, { lo: 0, hi: 1, code: 'power.range', path, what });
}
