import { InputError, requireWhole, shown } from '../error/index.ts';
import { requireAddress } from './address.ts';

/** What switches 1 to 9 are worth when up, in that order. Source: address tables of the trade (read). */
export const DIP_WEIGHTS: readonly number[] = Object.freeze([1, 2, 4, 8, 16, 32, 64, 128, 256]);

/**
 * Two usual ways in which nine switches are read, and the off-by-one between them; there are others.
 * - `sum`: the address is the plain sum of what is up. All down would be 0, which is no address: what a fixture makes of it is
 *   its maker's (1, stand-alone, or nothing: read in tables of the trade). Those of this house read it as 1. 512 cannot be set.
 * - `sum-plus-one`: the switches count from zero, so the address is the sum and one more. All down is 1, all up 512.
 *
 * The same switches give addresses one apart, so a fixture wired the other way answers to its neighbour's slots.
 */
export type DipWiring = 'sum' | 'sum-plus-one';

/** The addresses a wiring can set. `allDown` is what the fixtures of this house read with no switch up. */
export const DIP_REACH: Readonly<
	Record<DipWiring, { readonly lowest: number; readonly highest: number; readonly allDown: number }>
> = Object.freeze({
	sum: Object.freeze({ lowest: 1, highest: 511, allDown: 1 }),
	'sum-plus-one': Object.freeze({ lowest: 1, highest: 512, allDown: 1 }),
});

function requireNine(switches: readonly boolean[]): void {
	if (switches.length !== DIP_WEIGHTS.length) {
		throw new InputError('dip.count', 'switches', {
			expected: 'length',
			of: 'switches',
			length: DIP_WEIGHTS.length,
			found: shown(switches.length),
		});
	}
}

/**
 * The nine switches, 1 first, true for up, that set a start address. By the plain sum, address 1 is given as switch 1
 * up, though all down reads the same.
 * @throws InputError `address.range`, or `dip.unreachable` for 512 by the plain sum.
 */
export function switchesFor(address: number, wiring: DipWiring): boolean[] {
	requireAddress(address);
	const { highest } = DIP_REACH[wiring];
	if (address > highest) {
		throw new InputError('dip.unreachable', 'start', { trouble: 'past-the-switches', address, highest });
	}
	const sum = wiring === 'sum' ? address : address - 1;
	return DIP_WEIGHTS.map((weight) => (sum & weight) !== 0);
}

/**
 * The start address (1 to 512) nine switches set, 1 first, true for up.
 * A tenth switch has another job (a mode, or none): hand over the first nine.
 * @throws InputError `dip.count` when there are not nine.
 */
export function addressOf(switches: readonly boolean[], wiring: DipWiring): number {
	requireNine(switches);
	const sum = DIP_WEIGHTS.reduce((total, weight, i) => total + (switches[i] === true ? weight : 0), 0);
	if (wiring === 'sum-plus-one') return sum + 1;
	return sum === 0 ? DIP_REACH.sum.allDown : sum;
}

/** The numbers, from 1, of the switches that are up: address 10 by the plain sum is 2 and 4. Takes any count. */
export function upSwitches(switches: readonly boolean[]): number[] {
	return switches.flatMap((up, i) => (up ? [i + 1] : []));
}

/**
 * The nine switches with these ones up, each number from 1 to 9; the other way round from `upSwitches`.
 * @throws InputError `dip.switch` for any other number.
 */
export function switchesUp(numbers: readonly number[]): boolean[] {
	const switches = DIP_WEIGHTS.map(() => false);
	numbers.forEach((number, i) => {
		requireWhole(number, {
			lo: 1,
			hi: DIP_WEIGHTS.length,
			code: 'dip.switch',
			path: `[${i}]`,
			of: 'address-switch',
		});
		switches[number - 1] = true;
	});
	return switches;
}
