import { type Port, splitPort } from '../../shared/sheet/index.ts';
import type { Wiring } from './types.ts';

/**
 * As much of a wiring as hangs together with some fixtures: nothing else can reach them or spoil what does. Devices between are taken
 * as joined with each other; each output of a desk is a line of its own.
 */
export function nearTo(wiring: Wiring, fixtures: readonly string[]): Wiring {
	const { receivers, talkers, cables, boxes, terminators } = wiring;
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
	const isNear = (port: Port | null): boolean => port !== null && met.has(nodeOf(port));
	return {
		receivers: receivers.filter(({ fixture }) => met.has(fixture)),
		talkers: talkers.filter((talker) => (talker.kind === 'leader' ? met.has(talker.fixture) : isNear(talker.port))),
		cables: cables.filter(({ from, to }) => isNear(from) || isNear(to)),
		boxes,
		terminators: terminators.filter(isNear),
	};
}
