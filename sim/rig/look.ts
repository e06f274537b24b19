import { TOP_LEVEL } from '../../shared/dmx/index.ts';
import type { RigEvent } from '../event/index.ts';
import { chargeOf, displayOf, driveOf, hasDataIn, hasMains, powerOf, sensorOf } from '../fixture/index.ts';
import { cellLight, wholeLight } from '../light/index.ts';
import { receptions } from '../line/index.ts';
import type { Gear, Rig, Sight, Unit } from './gear.ts';
import { isByLine, outputsOf, planAt } from './plan.ts';
import { hasData, isLit, wiringOf } from './settle.ts';
import { unitOf } from './step.ts';
import { isLineEvent, lineEvent } from './wiring.ts';

/** Share of damaged frames from which a person sees a light jump (common practice, no source: about one a second). */
export const SEEN_DAMAGE = 0.02;

/** What a person standing there sees of a fixture now. */
export function lookAt(gear: Gear, id: string): Sight {
	const unit = unitOf(gear, id);
	const { profile, state, condition } = unit;
	const display = displayOf(profile, state, gear.now);
	const lit = isLit(unit);
	const plan = planAt(gear, unit, gear.now);
	// what it does as time goes on is told from frames as sent: a damaged one is gone in a moment
	const sent = damageOf(gear, unit) > 0 ? planAt(gear, unit, gear.now, true) : plan;
	const outputs = outputsOf(unit, plan);
	const emitters = profile.emitters.length;
	const cells = Array.from({ length: profile.cells }, (_, cell) =>
		cellLight(profile, outputs.subarray(cell * emitters, (cell + 1) * emitters), condition.covered),
	);
	const whole = profile.cells === 1 && cells[0] ? cells[0] : wholeLight(profile, outputs, condition.covered);
	const shows = whole.brightness > 0 || whole.ultraviolet > 0;
	return {
		fixture: id,
		display:
			condition.displayDead && display.kind === 'keyed'
				? { ...display, lit: false, lines: display.lines.map((line) => ' '.repeat(line.length)) }
				: display,
		lamps: {
			power: lit || powerOf(state) === 'charging' ? 'lit' : 'out',
			data: lit ? dataIndicator(gear, unit) : 'out',
			battery: batteryIndicator(unit, gear.now),
			sensor: profile.sensor
				? sensorOf(profile, state) === 'listening' && !condition.sensorDead
					? 'lit'
					: 'out'
				: null,
		},
		light: {
			cells,
			whole,
			flashes: shows ? sent.strobe : 0,
			flicker: lit && isByLine(driveOf(state)) && damageOf(gear, unit) >= SEEN_DAMAGE && !condition.covered,
			// a programme at no brightness moves nothing
			moving: lit && sent.moving && outputsOf(unit, planAt(gear, unit, 'mean'), 'mean').some((output) => output > 0),
		},
	};
}

/**
 * What a person sees of a fixture a moment after other levels stand at the desk. Nothing is told of it and no time passes for
 * anything else: for those who ask of many rigs. The rig stays as it is.
 * @param levels 512 a universe, slot 1 first; taken as they are
 * @param milliseconds from now, too few for anything to happen by itself
 */
export function lookUnder(
	{ gear }: { readonly gear: Readonly<Gear> },
	fixture: string,
	levels: ReadonlyMap<number, Uint8Array>,
	milliseconds: number,
): Sight {
	return lookAt({ ...gear, now: gear.now + milliseconds, desk: gear.desk && { ...gear.desk, levels } }, fixture);
}

/** Share of frames that reach a fixture damaged, 0 where it has none. */
export function damageOf(gear: Gear, unit: Unit): number {
	const reception = gear.receptions.get(unit.placed.id);
	return hasDataIn(unit.state) && reception?.quality === 'marginal' ? reception.rate : 0;
}

function dataIndicator(gear: Gear, unit: Unit): Sight['lamps']['data'] {
	return indicatorFor(unit, hasDataIn(unit.state), damageOf(gear, unit));
}

/** What a running fixture's data lamp does, by whether it has data and the share of it that is damaged. */
function indicatorFor(unit: Unit, data: boolean, damage: number): Sight['lamps']['data'] {
	if (data) return damage >= SEEN_DAMAGE ? 'flickering' : 'steady';
	return isByLine(driveOf(unit.state)) ? 'blinking' : 'out';
}

function batteryIndicator({ profile, state }: Unit, now: number): Sight['lamps']['battery'] {
	const { battery } = profile.power;
	const own = state.context.battery;
	if (!battery || !own) return null;
	const share = chargeOf(profile, state, now) / battery.wattHours;
	const charging = hasMains(state) && own.takesCharge && share * battery.wattHours < own.capacity;
	return { bars: Math.min(4, Math.ceil(share * 4)) as 0 | 1 | 2 | 3 | 4, charging };
}

/** What rounding of numbers may add to a level. */
const NOTHING = 0.001;

/**
 * The level a fixture's light was asked for, 0 to 255: its intensity over the strongest of its colours, as the desk or a leader
 * sent it or as its own panel holds it, before dim curve, limit and all that may be wrong inside.
 * @returns null where nothing is asked for, or where it changes by itself and no one level is
 */
export function askedOf({ gear }: Pick<Rig, 'gear'>, fixture: string): number | null {
	const unit = unitOf(gear, fixture);
	const { levels, intensity, moving } = planAt(gear, unit, gear.now, true);
	if (moving) return null;
	const emitters = unit.profile.emitters.length;
	let most = 0;
	for (const [i, level] of levels.entries()) most = Math.max(most, level * (intensity[Math.floor(i / emitters)] ?? 0));
	// rounded up: a level of two slots whose fine one stands at 0 is a little less, and still that level
	const asked = Math.ceil(most * TOP_LEVEL - NOTHING);
	return asked === 0 ? null : asked;
}

/**
 * What a fixture's data lamp would do if plugs were moved so. Only the line is worked out anew and no fixture told of it: for
 * those who ask of many rigs. The rig stays as it is.
 * @param events of cables and terminators alone; others are passed over
 * @throws InputError as `send` does
 */
export function dataIndicatorAfter(rig: Rig, fixture: string, events: readonly RigEvent[]): Sight['lamps']['data'] {
	const gear = { ...rig.gear };
	const unit = unitOf(gear, fixture);
	if (!isLit(unit)) return 'out';
	for (const event of events) if (isLineEvent(event)) lineEvent(gear, event);
	const reception = receptions(wiringOf(gear), [fixture]).get(fixture);
	return indicatorFor(unit, hasData(gear, reception), reception?.quality === 'marginal' ? reception.rate : 0);
}
