import { chargeOf, displayOf, driveOf, hasDataIn, hasMains, powerOf, sensorOf } from '../fixture/index.ts';
import { cellLight, wholeLight } from '../light/index.ts';
import { outputsOf } from './emit.ts';
import type { Gear, Unit } from './gear.ts';
import { isByLine, planAt } from './plan.ts';
import { isLit } from './settle.ts';
import { unitOf } from './step.ts';
import type { Sight } from './types.ts';

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
			data: lit ? dataLamp(gear, unit) : 'out',
			battery: batteryLamp(unit, gear.now),
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

function dataLamp(gear: Gear, unit: Unit): Sight['lamps']['data'] {
	return lampFor(unit, hasDataIn(unit.state), damageOf(gear, unit));
}

/** What a running fixture's data lamp does, by whether it has data and the share of it that is damaged. */
export function lampFor(unit: Unit, data: boolean, damage: number): Sight['lamps']['data'] {
	if (data) return damage >= SEEN_DAMAGE ? 'flickering' : 'steady';
	return isByLine(driveOf(unit.state)) ? 'blinking' : 'out';
}

function batteryLamp({ profile, state }: Unit, now: number): Sight['lamps']['battery'] {
	const { battery } = profile.power;
	const own = state.context.battery;
	if (!battery || !own) return null;
	const share = chargeOf(profile, state, now) / battery.wattHours;
	const charging = hasMains(state) && own.takesCharge && share * battery.wattHours < own.capacity;
	return { bars: Math.min(4, Math.ceil(share * 4)) as 0 | 1 | 2 | 3 | 4, charging };
}
