import { InputError, shown } from '../../shared/error/index.ts';
import { onceUnder } from '../../shared/memo/index.ts';
import { type FixtureEvent, nextDeadline, stepFixture } from '../fixture/index.ts';
import type { Gear, Unit } from './gear.ts';

/** The unit of that id. @throws InputError `rig.fixture`. */
export function unitOf(gear: Gear, id: string): Unit {
	const unit = gear.units.get(id);
	if (!unit)
		throw new InputError('rig.fixture', 'fixture', {
			trouble: 'no-such-fixture',
			found: shown(id),
			known: [...gear.units.keys()].slice(0, 12),
		});
	return unit;
}

const heirs = onceUnder<Unit, string, Unit>();

/**
 * What a unit becomes by something that happens to it, worked out once for that very unit: forks of one rig share units, and the
 * same things happen to many of them. An heir is held no longer than the unit it comes from.
 * @param what a text of all that decides what it becomes
 */
export function heirOf(unit: Unit, what: string, make: () => Unit): Unit {
	return heirs(unit, what, make);
}

/** Tells a fixture something, its clock brought up to the rig's first. */
export function tell(gear: Gear, id: string, event: FixtureEvent): void {
	const unit = unitOf(gear, id);
	replace(
		gear,
		id,
		heirOf(unit, `${gear.now}${JSON.stringify(event)}`, () => told(gear, unit, event)),
	);
}

function told(gear: Gear, unit: Unit, event: FixtureEvent): Unit {
	const { profile } = unit;
	let { state } = unit;
	if (event.type !== 'clock.advance' && state.context.now < gear.now)
		state = stepFixture(profile, state, { type: 'clock.advance', now: gear.now });
	state = stepFixture(profile, state, event);
	return { ...unit, state, deadline: nextDeadline(profile, state) };
}

/** Puts a unit's new self in its place, and marks what it draws as out of date. */
export function replace(gear: Gear, id: string, unit: Unit): void {
	gear.units.set(id, unit);
	gear.stale.add(id);
}
