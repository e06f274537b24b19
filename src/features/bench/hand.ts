import { GOOD_WIRES, type Port, type SheetCable } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import type { Rig } from '../../../sim/rig/index.ts';
import { freeId } from '../rig/index.ts';

/** What a hand at the sockets holds: a new cable plugged in at one end, or an end pulled out of a socket. */
export type InHand =
	| { readonly kind: 'fresh'; readonly from: Port }
	| { readonly kind: 'end'; readonly cable: string; readonly end: 'from' | 'to' };

/** What is in a socket. */
export type InSocket =
	| { readonly kind: 'free' }
	| { readonly kind: 'terminator' }
	| { readonly kind: 'cable'; readonly cable: SheetCable; readonly end: 'from' | 'to' };

/** What is in a socket of the rig: one plug, though a sheet from elsewhere may have forced in more. */
export function inSocket(rig: Rig, port: Port): InSocket {
	for (const cable of rig.gear.cables) {
		if (cable.from === port) return { kind: 'cable', cable, end: 'from' };
		if (cable.to === port) return { kind: 'cable', cable, end: 'to' };
	}
	return rig.gear.terminators.includes(port) ? { kind: 'terminator' } : { kind: 'free' };
}

/** What a press on a socket does: an event for the rig, if any, what the hand holds then, or why it cannot be. */
export interface SocketPress {
	readonly event: RigEvent | null;
	readonly hand: InHand | null;
	readonly refused?: boolean;
}

/** @param next kind and length of a cable newly laid */
export function pressSocket(
	rig: Rig,
	hand: InHand | null,
	port: Port,
	next: Pick<SheetCable, 'kind' | 'length'>,
): SocketPress {
	const found = inSocket(rig, port);
	if (hand === null) {
		if (found.kind === 'free') return { event: null, hand: { kind: 'fresh', from: port } };
		if (found.kind === 'terminator') return { event: { type: 'terminator.remove', port }, hand: null };
		const { cable, end } = found;
		return {
			event: { type: 'cable.unplug', cable: cable.id, end },
			hand: { kind: 'end', cable: cable.id, end },
		};
	}
	if (hand.kind === 'fresh' && hand.from === port) return { event: null, hand: null };
	if (found.kind !== 'free') return { event: null, hand, refused: true };
	if (hand.kind === 'fresh') return { event: layEvent(rig, hand.from, port, next), hand: null };
	return { event: { type: 'cable.plug', cable: hand.cable, end: hand.end, port }, hand: null };
}

/** A new cable between two sockets, or with ends in the air. */
export function layEvent(
	rig: Rig,
	from: Port | null,
	to: Port | null,
	{ kind, length }: Pick<SheetCable, 'kind' | 'length'>,
): RigEvent {
	return {
		type: 'cable.lay',
		cable: {
			id: freeId(rig.gear.cables, 'cable'),
			kind,
			length,
			from,
			to,
			...GOOD_WIRES,
		},
	};
}

/** Whether what the hand holds is still there: the rig may have been changed or undone under it. */
export function stillHeld(rig: Rig, hand: InHand | null): boolean {
	if (hand === null) return true;
	if (hand.kind === 'fresh') return inSocket(rig, hand.from).kind === 'free';
	const cable = rig.gear.cables.find(({ id }) => id === hand.cable);
	return cable !== undefined && cable[hand.end] === null;
}
