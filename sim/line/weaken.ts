import { blame } from './blame.ts';
import { LINE_LIMITS, LINE_RATES, ramp } from './limits.ts';
import { thousandths } from './order.ts';
import type { Drive, Plant, Tap, Trouble } from './parts.ts';
import type { One } from './reach.ts';
import { ringOf, troublesOf } from './stretches.ts';
import type { Way, Ways } from './ways.ts';
import { root } from './wires.ts';

const NONE: readonly Trouble[] = Object.freeze([]);

/** All that weakens or stops the frames of a single drive between its socket and this tap: first on the way, then on the whole line. */
export function weaken(way: Way, what: One, ways: Ways, plant: Plant): readonly Trouble[] {
	const wires = wiresOf(way, what, plant);
	const length = lengthOf(way);
	const whole = troublesOf(what.drive, ways, plant);
	return wires.length + length.length === 0 ? whole : [...wires, ...length, ...whole];
}

/** Wires lost, crossed or shorted on the way. Shares of 1 stand for no frame at all. */
function wiresOf(way: Way, what: One, plant: Plant): readonly Trouble[] {
	const { tap } = way;
	const home = homeByCommon(tap, what.drive);
	if (what.pair === 'straight' && home) return NONE;
	const wrong = blame(way);
	const found: Trouble[] = [];
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

function lengthOf(way: Way): readonly Trouble[] {
	const { dataMetres, dataMetresHopeless, microphoneMetres, microphoneMetresWorst } = LINE_LIMITS;
	if (way.metres <= dataMetres && way.microphone <= microphoneMetres) return NONE;
	const found: Trouble[] = [];
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
