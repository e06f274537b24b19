import type { Port } from '../../shared/sheet/index.ts';
import { reach, settle } from './drives.ts';
import { LINE_LIMITS } from './limits.ts';
import { type Plant, root, sortedBy, thousandths } from './parts.ts';
import { checkWiring, farSocket, lay, pluggedIn } from './plant.ts';
import { stretch } from './stretches.ts';
import type { Wiring } from './types.ts';
import { type FrameWay, grow, type WaysToTaps } from './ways.ts';
import { blame } from './weaken.ts';

/** What is not as it should be on the way to a receiver, and spoils nothing as the line stands. `harms`: metres from which it would. */
export type Harmless =
	| {
			readonly cause: 'no-terminator';
			readonly port: Port;
			readonly metres: number;
			/** Cables plugged in there by which the line gets no further, for a break or a loose end; empty at a free socket. */
			readonly plugged: readonly string[];
			readonly harms: number;
	  }
	| {
			readonly cause: 'microphone-cable';
			readonly cables: readonly string[];
			readonly metres: number;
			readonly harms: number;
	  }
	| { readonly cause: 'common-open'; readonly cables: readonly string[] };

/**
 * What is wrong on the way to one fixture and does no harm yet, from its source on: an open end without a terminator that is near
 * enough, a short stretch of microphone cable, a common lost where earth joins both ends. Empty where no one source reaches it.
 * What does harm is a cause of `receptions`, and never here too.
 * @param fixture id of a receiver of the wiring; for another, empty
 * @throws InputError as `receptions`
 */
export function harmless(wiring: Wiring, fixture: string): readonly Harmless[] {
	checkWiring(wiring);
	const plant = lay(wiring);
	const drives = settle(plant, wiring);
	stretch(plant);
	const tap = plant.taps.get(fixture);
	if (tap === undefined || reach(tap).kind !== 'one') return [];
	const ways = grow(drives.active);
	const lines: FrameWay[] = [];
	// back through any boxes, each line once
	for (let way = ways.get(tap); way !== undefined && !lines.includes(way); ) {
		lines.unshift(way);
		const { input } = way.source;
		way = input === null ? undefined : ways.get(input);
	}
	return lines.flatMap((way) => [...onTheWay(way), ...openEnds(way, ways, plant)]);
}

function onTheWay(way: FrameWay): Harmless[] {
	const found: Harmless[] = [];
	const wrong = blame(way);
	const here = root(way.tap.common);
	const there = root(way.source.tap.common);
	if (here !== there && here.earthed && there.earthed) found.push({ cause: 'common-open', cables: wrong.common });
	if (way.microphone > 0 && way.microphone <= LINE_LIMITS.microphoneMetres)
		found.push({
			cause: 'microphone-cable',
			cables: wrong.microphone,
			metres: thousandths(way.microphone),
			harms: LINE_LIMITS.microphoneMetres,
		});
	return found;
}

/** Ends of the line that a way runs along which are near enough to do without what belongs there. */
function openEnds(way: FrameWay, ways: WaysToTaps, plant: Plant): Harmless[] {
	const found: Harmless[] = [];
	for (const tap of way.source.tap.stretch?.taps ?? []) {
		const end = ways.get(tap);
		if (tap.degree !== 1 || end === undefined || end.leg === null) continue;
		if (end.open === 0 || end.openLoaded > LINE_LIMITS.openMetres) continue;
		const port = farSocket(tap, end.leg);
		found.push({
			cause: 'no-terminator',
			port,
			metres: thousandths(end.open),
			plugged: pluggedIn(plant, port),
			harms: thousandths(end.open + LINE_LIMITS.openMetres - end.openLoaded),
		});
	}
	return sortedBy(found, (each) => (each.cause === 'no-terminator' ? each.port : ''));
}
