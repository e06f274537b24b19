import { byText, type Leg, type Plant, type Tap, thousandths } from './parts.ts';
import { checkWiring, farSocket, lay } from './plant.ts';
import type { DataSource, Segment, Wiring } from './types.ts';

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
	readonly talker: DataSource | null;
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
	const talkers: DataSource[] = [];
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
