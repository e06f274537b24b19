import type { Kind } from '../types.ts';
import { addressToDip } from './address-to-dip.ts';
import { bandEdge } from './band-edge.ts';
import { bandMiddle } from './band-middle.ts';
import { bandsInOrder } from './bands-in-order.ts';
import { coarseFine } from './coarse-fine.ts';
import { deskSlot } from './desk-slot.ts';
import { dipToAddress } from './dip-to-address.ts';
import { footprintKind } from './footprint.ts';
import { functionValues } from './function-values.ts';
import { hexOfValue } from './hex-of-value.ts';
import { howManyFitKind } from './how-many-fit.ts';
import { lastSlotKind } from './last-slot.ts';
import { matchSlots } from './match-slots.ts';
import { nextFree } from './next-free.ts';
import { nthAddressKind } from './nth-address.ts';
import { overlapsKind } from './overlaps.ts';
import { percentOfValue } from './percent-of-value.ts';
import { runsPastKind } from './runs-past.ts';
import { slotDoes } from './slot-does.ts';
import { valueFunction } from './value-function.ts';
import { valueOfHex } from './value-of-hex.ts';
import { valueOfPair } from './value-of-pair.ts';
import { valueOfPercent } from './value-of-percent.ts';

/** The kinds that are arithmetic on profiles and sheets alone, in the order of `PLAIN_KIND_IDS`. */
export const PLAIN_KINDS: readonly Kind[] = Object.freeze([
	valueFunction,
	functionValues,
	bandEdge,
	bandMiddle,
	percentOfValue,
	valueOfPercent,
	hexOfValue,
	valueOfHex,
	slotDoes,
	matchSlots,
	bandsInOrder,
	deskSlot,
	footprintKind,
	lastSlotKind,
	nextFree,
	nthAddressKind,
	overlapsKind,
	runsPastKind,
	howManyFitKind,
	dipToAddress,
	addressToDip,
	coarseFine,
	valueOfPair,
]);
