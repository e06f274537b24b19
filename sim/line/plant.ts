import { InputError, shown } from '../../shared/error/index.ts';
import { type Port, type SheetCable, splitPort } from '../../shared/sheet/index.ts';
import { byText, join, type Leg, type Plant, root, sortedBy, type Tap, type Wire, wireMaker } from './parts.ts';
import type { Box, Receiver, Wiring } from './types.ts';

/** What is laid so far, and what is looked up while laying. */
interface Site {
	readonly wire: () => Wire;
	readonly receivers: ReadonlyMap<string, Receiver>;
	readonly inputs: ReadonlyMap<Port, Box['inputs'][number]>;
	/** Devices whose commons find no earth by themselves, fixtures aside. */
	readonly floating: ReadonlySet<string>;
	readonly taps: Map<string, Tap>;
	readonly all: Tap[];
	readonly legs: Leg[];
	readonly plugs: Map<Port, number>;
}

/** Lays the wiring out: taps, legs between them, and each conductor joined to those it touches. */
export function lay(wiring: Wiring): Plant {
	const site: Site = {
		wire: wireMaker(),
		receivers: new Map(wiring.receivers.map((receiver) => [receiver.fixture, receiver])),
		inputs: new Map(wiring.boxes.flatMap(({ inputs }) => inputs.map((input) => [input.port, input] as const))),
		floating: new Set(wiring.boxes.flatMap(({ id, earthed }) => (earthed ? [] : [id]))),
		taps: new Map(),
		all: [],
		legs: [],
		plugs: new Map(),
	};
	const { taps, all, legs, plugs } = site;
	for (const receiver of wiring.receivers)
		taps.set(receiver.fixture, make(site, 'fixture', `${receiver.fixture}:in`, receiver.fixture, receiver));
	for (const cable of sortedBy(wiring.cables, (one) => one.id)) layCable(site, cable);
	for (const talker of wiring.talkers) if (talker.kind === 'desk') tapAt(site, talker.port);
	const terminators = [...new Set(wiring.terminators)].sort(byText);
	for (const port of terminators) tapAt(site, port).terminators += 1;
	for (const tap of all) mark(site, tap);
	const tapOf = (port: Port) => taps.get(port) ?? taps.get(splitPort(port).device);
	return { taps, tapOf, all, legs, plugs, terminators };
}

function make(site: Site, kind: Tap['kind'], port: Port, device: string, receiver: Receiver | null = null): Tap {
	const input = kind === 'socket' ? site.inputs.get(port) : undefined;
	const tap: Tap = {
		kind,
		port,
		device,
		receiver,
		loads: receiver?.unitLoads ?? input?.loads ?? 0,
		terminators: input?.terminators ?? 0,
		common: site.wire(),
		minus: site.wire(),
		plus: site.wire(),
		legs: [],
		stretch: null,
		degree: 0,
	};
	site.all.push(tap);
	return tap;
}

function link(site: Site, leg: Leg): void {
	site.legs.push(leg);
	leg.from.legs.push(leg);
	if (leg.to !== leg.from) leg.to.legs.push(leg);
}

/** The tap a plug in this socket touches: for a bad contact, one of its own beside the fixture's. */
function tapAt(site: Site, port: Port): Tap {
	const { taps } = site;
	const { device, socket } = splitPort(port);
	const receiver = site.receivers.get(device);
	const bad = receiver !== undefined && receiver.badSocket === socket;
	const key = receiver !== undefined && !bad ? device : port;
	const known = taps.get(key);
	if (known !== undefined) return known;
	const tap = bad
		? make(site, 'contact', port, device)
		: receiver !== undefined
			? make(site, 'fixture', `${device}:in`, device, receiver)
			: make(site, 'socket', port, device);
	taps.set(key, tap);
	if (bad) {
		const core = taps.get(device) ?? tap;
		link(site, { cable: null, from: core, to: tap, fromPort: port, toPort: port, metres: 0, joins: [] });
	}
	return tap;
}

/** Plugs one end in, and says where; an end in the air gets a tap of its own. */
function plug(site: Site, port: Port | null, otherPort: Port): Tap {
	if (port === null) return make(site, 'loose', otherPort, '');
	site.plugs.set(port, (site.plugs.get(port) ?? 0) + 1);
	return tapAt(site, port);
}

function layCable(site: Site, cable: SheetCable): void {
	const fromPort = cable.from ?? cable.to;
	const toPort = cable.to ?? cable.from;
	if (fromPort === null || toPort === null) return;
	const from = plug(site, cable.from, toPort);
	const to = plug(site, cable.to, fromPort);
	const joins = joinsOf(cable, from, to);
	link(site, { cable, from, to, fromPort, toPort, metres: cable.length, joins });
	if (cable.common === 'sound') join(from.common, to.common);
	for (const [here, there] of joins) join(here, there);
}

/** Marks earth and terminators, once all that touches is joined. */
function mark({ floating }: Site, tap: Tap): void {
	const earthed = tap.kind === 'socket' ? !floating.has(tap.device) : tap.receiver?.earthed === true;
	if (earthed) root(tap.common).earthed = true;
	if (tap.terminators > 0) {
		root(tap.minus).terminated = true;
		root(tap.plus).terminated = true;
	}
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

/** Cables with a plug in this socket, sorted: where a line ends at one all the same, it gets no further by them. */
export const pluggedIn = ({ legs }: Pick<Plant, 'legs'>, port: Port): readonly string[] =>
	sortedBy(
		legs.flatMap(({ cable }) => (cable !== null && (cable.from === port || cable.to === port) ? [cable.id] : [])),
		(id) => id,
	);

function twice(code: 'line.device-twice' | 'line.cable-twice', path: string, id: string): InputError {
	return new InputError(code, path, { trouble: 'id-twice', id });
}

/** Refuses wiring that cannot be: the schema of a sheet sees to shapes, this to how the parts fit. */
export function checkWiring(wiring: Wiring): void {
	const devices = new Set<string>(['desk']);
	wiring.receivers.forEach((receiver, i) => {
		if (devices.has(receiver.fixture)) throw twice('line.device-twice', `receivers[${i}].fixture`, receiver.fixture);
		devices.add(receiver.fixture);
		if (!(receiver.unitLoads >= 0 && receiver.unitLoads < Number.POSITIVE_INFINITY)) {
			throw new InputError('line.loads', `receivers[${i}].unitLoads`, {
				expected: 'from-0',
				fixture: receiver.fixture,
				found: shown(receiver.unitLoads),
			});
		}
	});
	wiring.boxes.forEach(({ id }, i) => {
		if (devices.has(id)) throw twice('line.device-twice', `boxes[${i}].id`, id);
		devices.add(id);
	});
	const cables = new Set<string>();
	wiring.cables.forEach((cable, i) => {
		if (cables.has(cable.id)) throw twice('line.cable-twice', `cables[${i}].id`, cable.id);
		cables.add(cable.id);
		if (!(cable.length > 0 && cable.length < Number.POSITIVE_INFINITY)) {
			throw new InputError('line.length', `cables[${i}].length`, {
				expected: 'over-0',
				cable: cable.id,
				found: shown(cable.length),
			});
		}
	});
	const sockets = new Set<string>();
	wiring.talkers.forEach((talker, i) => {
		const socket = talker.kind === 'leader' ? talker.fixture : talker.port;
		if (sockets.has(socket)) {
			throw new InputError('line.talker-twice', `talkers[${i}]`, { trouble: 'source-twice', socket });
		}
		sockets.add(socket);
		if (
			talker.kind === 'leader' &&
			(talker.fixture === 'desk' || !devices.has(talker.fixture) || splitPort(talker.port).device !== talker.fixture)
		) {
			throw new InputError('line.leader-unknown', `talkers[${i}]`, {
				trouble: 'no-such-leader',
				fixture: talker.fixture,
				port: talker.port,
			});
		}
	});
}
