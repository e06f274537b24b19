import { InputError, shown } from '../../shared/error/index.ts';
import { splitPort } from '../../shared/sheet/index.ts';
import { byText, type Leg, type Plant, type Tap, thousandths } from './parts.ts';
import { farSocket, lay } from './plant.ts';
import type { Segment, Talker, Wiring } from './types.ts';

/**
 * The lines as they are plugged, whatever is broken inside the cables: all that hangs together without going through a
 * box. Sorted by `id`; devices and cables within one go outwards from its first driving socket. A fixture with no cable
 * in it is on no line.
 *
 * @throws InputError as `receptions` does.
 */
export function segments(wiring: Wiring): Segment[] {
	checkWiring(wiring);
	const plant = lay(wiring);
	const heads = headsOf(wiring, plant);
	const starts = [...heads.keys()].sort((a, b) => byText(a.port, b.port));
	const ends = plant.all.filter((tap) => onlyLeg(tap) !== null).sort((a, b) => byText(a.port, b.port));
	const rest = [...plant.all].sort((a, b) => byText(a.port, b.port));
	const inputs = new Map(wiring.boxes.flatMap(({ id, inputs: its }) => its.map(({ port }) => [port, id] as const)));
	const seen = new Set<Tap>();
	const found: Segment[] = [];
	for (const start of [...starts, ...ends, ...rest]) {
		if (seen.has(start) || start.legs.length === 0) continue;
		const { taps, legs } = walk(start, seen);
		if (legs.every((leg) => leg.cable === null)) continue;
		found.push(segmentOf(taps, legs, plant, heads, inputs));
	}
	return found.sort((a, b) => byText(a.id, b.id));
}

interface Head {
	readonly port: string;
	readonly talker: Talker | null;
}

/** Sockets from which a line is, or could be, driven: talkers and outputs of boxes. */
function headsOf(wiring: Wiring, plant: Plant): Map<Tap, Head> {
	const heads = new Map<Tap, Head>();
	for (const { outputs } of wiring.boxes) {
		for (const { port } of outputs) {
			const tap = plant.taps.get(port);
			if (tap !== undefined) heads.set(tap, { port, talker: null });
		}
	}
	for (const talker of wiring.talkers) {
		const tap = plant.taps.get(talker.kind === 'leader' ? talker.fixture : talker.port);
		if (tap !== undefined) heads.set(tap, { port: talker.port, talker });
	}
	return heads;
}

function walk(start: Tap, seen: Set<Tap>): { taps: Tap[]; legs: Leg[] } {
	const taps = [start];
	const legs = new Set<Leg>();
	seen.add(start);
	for (const tap of taps) {
		for (const leg of tap.legs) {
			legs.add(leg);
			const other = leg.from === tap ? leg.to : leg.from;
			if (seen.has(other)) continue;
			seen.add(other);
			taps.push(other);
		}
	}
	return { taps, legs: [...legs] };
}

function segmentOf(
	taps: readonly Tap[],
	legs: readonly Leg[],
	plant: Plant,
	heads: ReadonlyMap<Tap, Head>,
	inputs: ReadonlyMap<string, string>,
): Segment {
	const ports = new Set<string>();
	for (const leg of legs) {
		if (leg.cable?.from) ports.add(leg.cable.from);
		if (leg.cable?.to) ports.add(leg.cable.to);
	}
	const devices = new Set(taps.flatMap((tap) => (tap.receiver === null ? [] : [tap.device])));
	const own = new Set(taps);
	const terminators = plant.terminators.filter((port) => {
		const tap = plant.tapOf(port);
		return tap !== undefined && own.has(tap);
	});
	const talkers: Talker[] = [];
	const drives: string[] = [];
	for (const tap of taps) {
		const head = heads.get(tap);
		if (head === undefined) continue;
		drives.push(head.port);
		if (head.talker !== null) talkers.push(head.talker);
	}
	const sorted = [...ports].sort(byText);
	const farEnds = taps.flatMap((tap) => {
		const only = onlyLeg(tap);
		return only === null || heads.has(tap) ? [] : [farSocket(tap, only)];
	});
	return {
		id: drives[0] ?? sorted[0] ?? '',
		ports: sorted,
		cables: legs.flatMap((leg) => (leg.cable === null ? [] : [leg.cable.id])),
		talkers,
		drives,
		receivers: [...devices],
		feeds: taps.flatMap((tap) => inputs.get(tap.port) ?? []),
		metres: thousandths(legs.reduce((sum, leg) => sum + leg.metres, 0)),
		unitLoads: thousandths(taps.reduce((sum, tap) => sum + tap.loads, 0)),
		terminators,
		farEnds,
	};
}

/** The one leg that ends here, where the line goes no further. */
function onlyLeg(tap: Tap): Leg | null {
	const [leg, ...more] = tap.legs;
	return leg === undefined || more.length > 0 || leg.from === leg.to ? null : leg;
}

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
