import { InputError } from '../../shared/error/index.ts';
import { type FixtureEvent, nextDeadline, panelOf, signalOf, stepFixture } from '../fixture/index.ts';
import type { Gear, Unit } from './gear.ts';

/** The unit of that id. @throws InputError `rig.fixture`. */
export function unitOf(gear: Gear, id: string): Unit {
	const unit = gear.units.get(id);
	if (!unit)
		throw new InputError(
			'rig.fixture',
			'fixture',
			`There is no fixture '${id}' on this rig. Its fixtures: ${[...gear.units.keys()].slice(0, 12).join(', ') || 'none'}.`,
		);
	return unit;
}

/** Tells a fixture something, its clock brought up to the rig's first. */
export function tell(gear: Gear, id: string, event: FixtureEvent): void {
	const unit = unitOf(gear, id);
	const { profile } = unit;
	let { state } = unit;
	if (event.type !== 'clock.advance' && state.context.now < gear.now)
		state = stepFixture(profile, state, { type: 'clock.advance', now: gear.now });
	state = stepFixture(profile, state, event);
	replace(gear, id, {
		...unit,
		state,
		deadline: nextDeadline(profile, panelOf(state), signalOf(state) === 'overdue', state.context),
	});
}

/** Puts a unit's new self in its place, and marks what it draws as out of date. */
export function replace(gear: Gear, id: string, unit: Unit): void {
	gear.units.set(id, unit);
	gear.stale.add(id);
}
