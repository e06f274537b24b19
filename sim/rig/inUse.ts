import { TIMING } from '../../shared/dmx/index.ts';
import { type FixtureEvent, hasMains, inputFrom, nextDeadline, startFixture, stepFixture } from '../fixture/index.ts';
import type { Gear, Unit } from './gear.ts';
import { settleMains } from './power.ts';
import { apply } from './send.ts';
import { replace } from './step.ts';

/** Takes over what a sheet says of a rig that is in use already: sound in the hall, worn batteries, data that was lost. For gear fresh from its sheet. */
export function takeOver(gear: Gear): void {
	const isUsed = ({ placed }: Unit): boolean => placed.condition !== undefined || placed.lost !== undefined;
	if ([...gear.units.values()].some(isUsed)) settleMains(gear);
	for (const [id, unit] of gear.units) if (isUsed(unit)) replace(gear, id, usedUnit(unit));
	const { sound } = gear.sheet.hall;
	if (sound) apply(gear, { type: 'sound.play', level: sound });
}

/** The unit as it is after what its sheet says has happened to it: data came, went, and was gone for the loss time at 0 on the clock. */
function usedUnit(unit: Unit): Unit {
	const { placed, profile, condition } = unit;
	const input = inputFrom(profile, placed, hasMains(unit.state));
	const since = placed.lost === undefined ? 0 : -TIMING.lossOfDataMs;
	let state = startFixture(profile, {
		...input,
		now: since,
		battery: input.battery && { ...input.battery, at: since },
	});
	const events: FixtureEvent[] = [];
	if (placed.lost !== undefined)
		events.push(
			{ type: 'data.change', present: true },
			{ type: 'data.change', present: false },
			{ type: 'clock.advance', now: 0 },
		);
	// its panel is left alone from now on, and not from when the data went
	if (placed.lost !== undefined && profile.panel.kind !== 'dip') events.push({ type: 'key.up', key: 'back' });
	const { battery } = profile.power;
	if (battery)
		events.push({
			type: 'battery.become',
			capacity: battery.wattHours * condition.batteryHealth,
			takesCharge: !condition.chargerDead,
			wattHours: battery.wattHours * placed.charge,
		});
	for (const event of events) state = stepFixture(profile, state, event);
	return {
		...unit,
		state,
		kept: placed.lost ? frameOf(placed.lost) : null,
		deadline: nextDeadline(profile, state),
	};
}

function frameOf(levels: readonly { readonly slot: number; readonly level: number }[]): Uint8Array {
	const frame = new Uint8Array(512);
	for (const { slot, level } of levels) frame[slot - 1] = level;
	return frame;
}
