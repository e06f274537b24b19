import { hasMains, powerOf } from '../fixture/index.ts';
import { meanWatts } from './emit.ts';
import type { Gear, Unit } from './gear.ts';
import { tell } from './step.ts';

/** Whether mains reaches a fixture's inlet: down its plug, through others' link sockets, to a live wall. A link passes power whatever its own switch says. */
function isLive(gear: Gear, unit: Unit): boolean {
	let at = unit.plug;
	for (let hops = 0; hops <= gear.units.size; hops++) {
		if (at === 'wall') return gear.hallPower;
		const feeder = gear.units.get(at);
		if (!feeder?.profile.power.link) return false;
		at = feeder.plug;
	}
	return false;
}

/** Tells each fixture whose mains has come or gone. */
export function settleMains(gear: Gear): void {
	for (const [id, unit] of gear.units) {
		const live = isLive(gear, unit);
		if (live !== hasMains(unit.state)) tell(gear, id, { type: 'mains.change', live });
	}
}

/** Smallest change of draw worth noting, watts. */
const SAME = 1e-9;

/** Brings what battery fixtures draw up to date: done before the clock moves, since nothing is drawn in no time. */
export function settleDraw(gear: Gear): void {
	// what others send changes what a follower draws, so one change asks after all that run on battery
	if (gear.stale.size === 0) return;
	gear.stale.clear();
	for (const [id, unit] of gear.units) {
		if (!unit.profile.power.battery || powerOf(unit.state) !== 'battery') continue;
		const watts = meanWatts(gear, unit);
		if (Math.abs(watts - unit.state.context.watts) > SAME) tell(gear, id, { type: 'draw.change', watts });
	}
	gear.stale.clear();
}
