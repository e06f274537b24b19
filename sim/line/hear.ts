import { type Drives, type Reach, reach, settle, sourcesBehind } from './drives.ts';
import { LINE_RATES } from './limits.ts';
import { nearTo } from './near.ts';
import { type Drive, type Plant, sortedBy, type Tap } from './parts.ts';
import { checkWiring, lay } from './plant.ts';
import { stretch } from './stretches.ts';
import type { LineCause, Receiver, Reception, Wiring } from './types.ts';
import { grow, pathOf } from './ways.ts';
import { blame, stops, weaken } from './weaken.ts';

type LineQuality = Pick<Reception, 'quality' | 'rate' | 'talker' | 'causes'>;

const NO_CAUSES: readonly LineCause[] = Object.freeze([]);
const SILENT: LineQuality = {
	quality: 'nothing',
	rate: 1,
	talker: null,
	causes: Object.freeze([{ cause: 'no-talker' } as const]),
};
const UNPLUGGED: LineQuality = { ...SILENT, causes: Object.freeze([{ cause: 'no-cable' } as const]) };

/** Makes an ear for a plant whose drives are settled: it tells what any fixture gets. */
function listen(plant: Plant, drives: Drives): (receiver: Receiver) => Reception {
	// Where something sends, the ways start there; only lines where nothing does are walked from boxes that stand idle.
	const ways = grow(drives.idle, grow(drives.active));
	const inputs = new Map<Tap, LineQuality>();

	/** What an output of a box passes on. `asked` breaks the circle of boxes that feed only each other. */
	function upstream(drive: Drive, asked: readonly Drive[]): LineQuality | null {
		if (drive.box === null) return null;
		if (drive.input === null) return UNPLUGGED;
		if (asked.includes(drive)) return SILENT;
		const known = inputs.get(drive.input);
		if (known !== undefined) return known;
		const what = reach(drive.input);
		const heard = hear(drive.input, what, [...asked, drive]);
		// What an idle circle hears hangs on where one came into it, so only what is heard is kept.
		if (heard.quality !== 'nothing') inputs.set(drive.input, heard);
		return heard;
	}

	function hear(tap: Tap, what: Reach, asked: readonly Drive[]): LineQuality {
		if (what.kind === 'many') return collision(what.drives);
		const way = ways.get(tap);
		if (way === undefined) return leadsAnywhere(tap) ? SILENT : UNPLUGGED;
		const before = upstream(way.source, asked);
		const talker = before === null ? way.source.talker : before.talker;
		const earlier = before === null ? NO_CAUSES : before.causes;
		if (what.kind === 'none') {
			const { box } = way.source;
			const off = box === null || box.on ? NO_CAUSES : [box.off];
			return { quality: 'nothing', rate: 1, talker, causes: [...earlier, ...off, ...stops(blame(way))] };
		}
		const here = weaken(way, what, ways, plant);
		if (here.length === 0) return before ?? { quality: 'clean', rate: 0, talker, causes: NO_CAUSES };
		const causes = [...earlier, ...here.map((trouble) => trouble.cause)];
		if (what.pair !== 'straight' && what.pair !== 'half') return { quality: 'nothing', rate: 1, talker, causes };
		// Losses that do not know of each other: one of them, or the other, or both at once counted once.
		const rate = here.reduce((sum, trouble) => sum + trouble.rate - sum * trouble.rate, before?.rate ?? 0);
		return { quality: 'marginal', rate, talker, causes };
	}

	function collision(reaching: readonly Drive[]): LineQuality {
		const talkers = sourcesBehind(reaching);
		const sockets = sortedBy(reaching, (drive) => drive.port).map((drive) => drive.port);
		return {
			quality: 'marginal',
			rate: LINE_RATES.collision,
			talker: null,
			causes: [{ cause: 'collision', talkers, sockets }],
		};
	}

	return ({ fixture, dead }) => {
		const tap = plant.taps.get(fixture);
		if (tap === undefined) return { fixture, ...UNPLUGGED, path: [] };
		const what = reach(tap);
		const { quality, rate, talker, causes } = hear(tap, what, []);
		const path = pathOf(ways.get(tap), (input) => ways.get(input));
		if (!dead) return { fixture, quality, rate, talker, path, causes };
		return { fixture, quality: 'nothing', rate: 1, talker, path, causes: [...causes, { cause: 'receiver-dead' }] };
	};
}

/** Whether any cable leads from here to another socket. */
function leadsAnywhere(tap: Tap): boolean {
	return tap.legs.some((leg) => {
		const other = leg.from === tap ? leg.to : leg.from;
		if (other === tap || other.kind === 'loose') return false;
		return (
			leg.cable !== null ||
			other.legs.some((next) => next !== leg && next.from.kind !== 'loose' && next.to.kind !== 'loose')
		);
	});
}

/**
 * What reaches each receiver, by fixture id, in the order of `wiring.receivers`. Pure; time grows with the number of cables
 * (and with the length of the paths it hands back).
 *
 * - `quality` is `clean` exactly when `causes` is empty; `rate` is then 0. A harmless wrong (a common open between two earthed
 *   fixtures, a short microphone cable, no terminator on a short line) is no cause; `harmless` tells of it.
 * - `nothing`: no frame is taken in; `rate` is 1, and `talker` whose frames would come along `path`, if anyone's.
 * - `marginal` with `talker` null: a collision; every frame is garbage, though something is on the line.
 * - `causes` go from talker to receiver: what spoils a box's input comes before what is wrong on the line it feeds.
 *
 * @param of only these fixtures, for those who ask of many wirings; left out, all
 * @throws InputError `line.device-twice`, `line.cable-twice`, `line.talker-twice`, `line.leader-unknown`, `line.loads`, `line.length`.
 */
export function receptions(wiring: Wiring, of?: readonly string[]): ReadonlyMap<string, Reception> {
	checkWiring(wiring);
	const near = of ? nearTo(wiring, of) : wiring;
	const plant = lay(near);
	const drives = settle(plant, near);
	stretch(plant);
	const receive = listen(plant, drives);
	const all = new Map<string, Reception>();
	for (const receiver of near.receivers)
		if (!of || of.includes(receiver.fixture)) all.set(receiver.fixture, receive(receiver));
	return all;
}
