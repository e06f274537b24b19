import { type Port, type SheetCable, splitPort } from '../../shared/sheet/index.ts';
import { LINE_LIMITS } from './limits.ts';
import { byText, sortedBy } from './order.ts';
import type { Leg, Plant, Tap, Wire } from './parts.ts';
import type { Receiver, Wiring } from './types.ts';
import { join, root, wireMaker } from './wires.ts';

/** Lays the wiring out: taps, legs between them, and each conductor joined to those it touches. */
export function lay(wiring: Wiring): Plant {
	const wire = wireMaker();
	const receivers = new Map<string, Receiver>();
	for (const receiver of wiring.receivers) receivers.set(receiver.fixture, receiver);
	const inputs = new Set<Port>();
	for (const splitter of wiring.splitters) inputs.add(`${splitter.id}:in`);

	const taps = new Map<string, Tap>();
	const all: Tap[] = [];
	const legs: Leg[] = [];
	const plugs = new Map<Port, number>();

	function make(kind: Tap['kind'], port: Port, device: string, receiver: Receiver | null): Tap {
		const input = inputs.has(port) && kind === 'socket';
		const tap: Tap = {
			kind,
			port,
			device,
			receiver,
			loads: receiver !== null ? receiver.unitLoads : input ? LINE_LIMITS.splitterLoads : 0,
			terminators: input ? LINE_LIMITS.splitterTerminators : 0,
			common: wire(),
			minus: wire(),
			plus: wire(),
			legs: [],
			stretch: null,
			degree: 0,
		};
		all.push(tap);
		return tap;
	}

	function link(leg: Leg): void {
		legs.push(leg);
		leg.from.legs.push(leg);
		if (leg.to !== leg.from) leg.to.legs.push(leg);
	}

	/** The tap a plug in this socket touches: for a bad contact, one of its own beside the fixture's. */
	function tapAt(port: Port): Tap {
		const { device, socket } = splitPort(port);
		const receiver = receivers.get(device);
		const bad = receiver !== undefined && receiver.badSocket === socket;
		const key = receiver !== undefined && !bad ? device : port;
		const known = taps.get(key);
		if (known !== undefined) return known;
		const tap = bad
			? make('contact', port, device, null)
			: receiver !== undefined
				? make('fixture', `${device}:in`, device, receiver)
				: make('socket', port, device, null);
		taps.set(key, tap);
		if (bad) {
			const core = taps.get(device) ?? tap;
			link({ cable: null, from: core, to: tap, fromPort: port, toPort: port, metres: 0, joins: [] });
		}
		return tap;
	}

	/** Plugs one end in, and says where; an end in the air gets a tap of its own. */
	function plug(port: Port | null, otherPort: Port): Tap {
		if (port === null) return make('loose', otherPort, '', null);
		plugs.set(port, (plugs.get(port) ?? 0) + 1);
		return tapAt(port);
	}

	for (const receiver of wiring.receivers) {
		taps.set(receiver.fixture, make('fixture', `${receiver.fixture}:in`, receiver.fixture, receiver));
	}
	for (const cable of sortedBy(wiring.cables, (one) => one.id)) {
		const fromPort = cable.from ?? cable.to;
		const toPort = cable.to ?? cable.from;
		if (fromPort === null || toPort === null) continue;
		const from = plug(cable.from, toPort);
		const to = plug(cable.to, fromPort);
		const joins = joinsOf(cable, from, to);
		link({ cable, from, to, fromPort, toPort, metres: cable.length, joins });
		if (cable.common === 'sound') join(from.common, to.common);
		for (const [here, there] of joins) join(here, there);
	}
	for (const talker of wiring.talkers) if (talker.kind === 'desk') tapAt(talker.port);
	const terminators = [...new Set(wiring.terminators)].sort(byText);
	for (const port of terminators) tapAt(port).terminators += 1;

	for (const tap of all) {
		if (tap.kind === 'socket' || tap.receiver?.earthed === true) root(tap.common).earthed = true;
		if (tap.terminators > 0) {
			root(tap.minus).terminated = true;
			root(tap.plus).terminated = true;
		}
	}
	const tapOf = (port: Port) => taps.get(port) ?? taps.get(splitPort(port).device);
	return { taps, tapOf, all, legs, plugs, terminators };
}

function joinsOf({ minus, plus, swapped }: SheetCable, from: Tap, to: Tap): [Wire, Wire][] {
	const joins: [Wire, Wire][] = [];
	if (minus === 'sound') joins.push([from.minus, swapped ? to.plus : to.minus]);
	if (plus === 'sound') joins.push([from.plus, swapped ? to.minus : to.plus]);
	return joins;
}

/** Where a terminator would go at a line's end: the last fixture's other socket than the one the line comes in by. */
export function farSocket(tap: Tap, leg: Leg): Port {
	if (tap.kind !== 'fixture') return tap.port;
	const entered = splitPort(leg.to === tap ? leg.toPort : leg.fromPort).socket;
	return `${tap.device}:${entered === 'in' ? 'out' : 'in'}`;
}
