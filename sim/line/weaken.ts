import type { Port } from '../../shared/sheet/index.ts';
import type { One } from './drives.ts';
import { LINE_LIMITS, LINE_RATES, ramp } from './limits.ts';
import { type Drive, type FrameTrouble, type Plant, root, type Tap, thousandths } from './parts.ts';
import { ringOf, troublesOf } from './stretches.ts';
import type { LineCause } from './types.ts';
import { along, type FrameWay, type WaysToTaps } from './ways.ts';

const NONE: readonly FrameTrouble[] = Object.freeze([]);

/** All that weakens or stops the frames of a single drive between its socket and this tap: first on the way, then on the whole line. */
export function weaken(way: FrameWay, what: One, ways: WaysToTaps, plant: Plant): readonly FrameTrouble[] {
	const wires = wiresOf(way, what, plant);
	const length = lengthOf(way);
	const whole = troublesOf(what.drive, ways, plant);
	return wires.length + length.length === 0 ? whole : [...wires, ...length, ...whole];
}

/** Wires lost, crossed or shorted on the way. Shares of 1 stand for no frame at all. */
function wiresOf(way: FrameWay, what: One, plant: Plant): readonly FrameTrouble[] {
	const { tap } = way;
	const home = homeByCommon(tap, what.drive);
	if (what.pair === 'straight' && home) return NONE;
	const wrong = blame(way);
	const found: FrameTrouble[] = [];
	if (what.lost !== null) {
		const worse = what.loose !== null && root(what.loose).terminated;
		found.push({
			cause: { cause: 'one-wire-open', wire: what.lost, cables: wrong.open },
			rate: worse ? LINE_RATES.oneWireTerminated : LINE_RATES.oneWire,
		});
	}
	if (what.pair === 'crossed' || what.pair === 'half-crossed') {
		found.push({ cause: { cause: 'swapped', cables: wrong.swapped }, rate: 1 });
	}
	if (what.pair === 'shorted') {
		const its = what.lost === null ? what.drive.tap.stretch : tap.stretch;
		const cables = its === null ? [] : ringOf(its, plant);
		found.push({ cause: { cause: 'swapped', cables: swappedAmong(cables, plant) }, rate: 1 });
		// A ring at the drive is among the whole line's troubles already.
		if (what.lost !== null) found.push({ cause: { cause: 'ring', cables }, rate: 1 });
	}
	if (!home) found.push({ cause: { cause: 'common-open', cables: wrong.common }, rate: LINE_RATES.commonOpen });
	return found;
}

function lengthOf(way: FrameWay): readonly FrameTrouble[] {
	const { dataMetres, dataMetresHopeless, microphoneMetres, microphoneMetresWorst } = LINE_LIMITS;
	if (way.metres <= dataMetres && way.microphone <= microphoneMetres) return NONE;
	const found: FrameTrouble[] = [];
	const long = ramp(way.metres, dataMetres, dataMetresHopeless, LINE_RATES.tooLong);
	if (long > 0) found.push({ cause: { cause: 'too-long', metres: thousandths(way.metres) }, rate: long });
	const rate = ramp(way.microphone, microphoneMetres, microphoneMetresWorst, LINE_RATES.microphone);
	if (rate > 0) {
		const cables = blame(way).microphone;
		found.push({ cause: { cause: 'microphone-cable', cables, metres: thousandths(way.microphone) }, rate });
	}
	return found;
}

function swappedAmong(cables: readonly string[], plant: Plant): string[] {
	const those = new Set(cables);
	return plant.legs.flatMap(({ cable }) => (cable?.swapped && those.has(cable.id) ? [cable.id] : []));
}

/** Whether the two commons touch, or both find earth through mains. */
function homeByCommon(tap: Tap, drive: Drive): boolean {
	const here = root(tap.common);
	const there = root(drive.tap.common);
	return here === there || (here.earthed && there.earthed);
}

/** What is wrong with the conductors along one way, from its source on. Wires go by their name at the source. */
export interface Blame {
	readonly sockets: readonly Port[];
	readonly minus: readonly string[];
	readonly plus: readonly string[];
	readonly common: readonly string[];
	readonly swapped: readonly string[];
	readonly microphone: readonly string[];
	/** Cables with any data wire open, in order. */
	readonly open: readonly string[];
}

/**
 * Follows each conductor along a way. A cable's `minus` is the wire on the minus pin of its `from` end; where the
 * cable is swapped it comes out on the plus pin, and keeps its name: turning a cable round never moves a break to the other wire.
 */
export function blame(way: FrameWay): Blame {
	const found = {
		sockets: [] as Port[],
		minus: [] as string[],
		plus: [] as string[],
		common: [] as string[],
		swapped: [] as string[],
		microphone: [] as string[],
		open: [] as string[],
	};
	let crossed = false;
	for (const { before, leg } of along(way)) {
		if (before === null || leg === null) continue;
		const { cable } = leg;
		if (cable === null) {
			found.sockets.push(leg.fromPort);
			continue;
		}
		const forwards = before.tap === leg.from;
		const flipped = crossed !== (!forwards && cable.swapped);
		const minus = flipped ? cable.plus : cable.minus;
		const plus = flipped ? cable.minus : cable.plus;
		if (minus === 'open') found.minus.push(cable.id);
		if (plus === 'open') found.plus.push(cable.id);
		if (leg.joins.length < 2) found.open.push(cable.id);
		if (cable.common === 'open') found.common.push(cable.id);
		if (cable.swapped) found.swapped.push(cable.id);
		if (cable.kind === 'microphone') found.microphone.push(cable.id);
		crossed = crossed !== cable.swapped;
	}
	return found;
}

/** Why nothing at all comes along a way that some drive stands at the head of. */
export function stops(wrong: Blame): LineCause[] {
	const causes: LineCause[] = wrong.sockets.map((port) => ({ cause: 'bad-socket', port }));
	if (wrong.minus.length > 0 && wrong.plus.length > 0) causes.push({ cause: 'pair-open', cables: wrong.open });
	else if (wrong.minus.length > 0) causes.push({ cause: 'one-wire-open', wire: 'minus', cables: wrong.minus });
	else if (wrong.plus.length > 0) causes.push({ cause: 'one-wire-open', wire: 'plus', cables: wrong.plus });
	if (wrong.swapped.length % 2 === 1) causes.push({ cause: 'swapped', cables: wrong.swapped });
	return causes;
}
