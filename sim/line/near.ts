import { type Port, splitPort } from '../../shared/sheet/index.ts';
import type { Wiring } from './types.ts';

/**
 * Whether a port hangs together with some fixtures by cables: nothing else can reach them or spoil what does. Devices between are taken
 * as joined with each other; each output of a desk is a line of its own.
 */
export function joinedTo(
	{ cables, boxes }: Pick<Wiring, 'cables'> & { readonly boxes: readonly { readonly id: string }[] },
	fixtures: readonly string[],
): (port: Port) => boolean {
	const between = new Set(boxes.map(({ id }) => id));
	const nodeOf = (port: Port): string => {
		const { device } = splitPort(port);
		if (between.has(device)) return ' between';
		return device === 'desk' ? port : device;
	};
	const plugged = new Map<string, string[]>();
	for (const { from, to } of cables) {
		if (from === null || to === null) continue;
		const [one, other] = [nodeOf(from), nodeOf(to)];
		plugged.set(one, [...(plugged.get(one) ?? []), other]);
		plugged.set(other, [...(plugged.get(other) ?? []), one]);
	}
	const met = new Set(fixtures);
	for (const node of met) for (const next of plugged.get(node) ?? []) met.add(next);
	return (port) => met.has(nodeOf(port));
}

/** As much of a wiring as hangs together with some fixtures (see `joinedTo`). */
export function nearTo(wiring: Wiring, fixtures: readonly string[]): Wiring {
	const { receivers, talkers, cables, boxes, terminators } = wiring;
	const isJoined = joinedTo(wiring, fixtures);
	const isNear = (port: Port | null): boolean => port !== null && isJoined(port);
	const isIn = (fixture: string): boolean => isJoined(`${fixture}:in`);
	return {
		receivers: receivers.filter(({ fixture }) => isIn(fixture)),
		talkers: talkers.filter((talker) => (talker.kind === 'leader' ? isIn(talker.fixture) : isNear(talker.port))),
		cables: cables.filter(({ from, to }) => isNear(from) || isNear(to)),
		boxes,
		terminators: terminators.filter(isNear),
	};
}
