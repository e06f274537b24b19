import type { Kind } from '../types.ts';
import { addressToDip } from './address-to-dip.ts';
import { lastSlotKind } from './last-slot.ts';
import { matchSlots } from './match-slots.ts';
import { nthAddressKind } from './nth-address.ts';
import { percentOfValue } from './percent-of-value.ts';
import { valueFunction } from './value-function.ts';

/** The kinds that are arithmetic on profiles and sheets alone, in the order of `PLAIN_KIND_IDS`. */
export const PLAIN_KINDS: readonly Kind[] = Object.freeze([
	valueFunction,
	percentOfValue,
	matchSlots,
	lastSlotKind,
	nthAddressKind,
	addressToDip,
]);
