import { carriesLevels } from '../../shared/dmx/index.ts';
import { driveOf, type FixtureState, hasDataIn, hasMains, isPowered, powerOf } from '../fixture/index.ts';
import {
	type DataSource,
	deskSource,
	leaderSource,
	lineBox,
	type Reception,
	receptions,
	type Wiring,
} from '../line/index.ts';
import type { Gear, Unit } from './gear.ts';
import { frameOfDesk, frameOfLeader, meanWatts } from './plan.ts';
import { heirOf, replace, tell } from './step.ts';

/** Whether a fixture is sending its own light down the line. */
function isLeading(state: FixtureState): boolean {
	return driveOf(state) === 'leading';
}

/** Leaders as they stand, so that what they last sent is known after they have stopped. */
export function leadersOf(gear: Gear): ReadonlyMap<string, Unit> {
	const leaders = new Map<string, Unit>();
	for (const [id, unit] of gear.units) if (isLeading(unit.state)) leaders.set(id, unit);
	return leaders;
}

/**
 * Follows the consequences of a change until nothing more changes: mains, then who talks, then what reaches whom,
 * then who has data. One pass is enough: what a fixture receives never changes what it sends.
 * @param before leaders as they stood before the change
 */
export function settle(gear: Gear, before: ReadonlyMap<string, Unit>): void {
	settleMains(gear);
	const old = gear.receptions;
	const key = wiringKeyOf(gear);
	if (key !== gear.wiringKey) {
		gear.wiringKey = key;
		gear.receptions = receptions(wiringOf(gear));
	}
	for (const [id, unit] of gear.units) {
		const present = hasData(gear, gear.receptions.get(id));
		if (present === hasDataIn(unit.state)) continue;
		const lost = old.get(id);
		const kept = present || !lost ? null : lastFrame(gear, lost, before);
		if (kept !== unit.kept)
			replace(
				gear,
				id,
				heirOf(unit, `kept ${kept && numberOf(kept)}`, () => ({ ...unit, kept })),
			);
		tell(gear, id, { type: 'data.change', present });
	}
}

/** What the line can carry now, as `sim/line` takes it. */
export function wiringOf(gear: Gear): Wiring {
	const talkers: DataSource[] = [];
	if (gear.desk && gear.hallPower) {
		for (const output of gear.desk.outputs) if (output.on) talkers.push(deskSource(output));
	}
	const receivers = [];
	for (const [fixture, unit] of gear.units) {
		if (isLeading(unit.state)) talkers.push(leaderSource(fixture));
		receivers.push({
			fixture,
			unitLoads: unit.profile.unitLoads + unit.condition.extraLoads,
			earthed: unit.plug !== 'none',
			dead: unit.condition.receiverDead,
			badSocket: unit.condition.badSocket,
		});
	}
	const boxes = gear.boxes.map((box) => lineBox(box, gear.hallPower));
	return { receivers, talkers, cables: gear.cables, boxes, terminators: gear.terminators };
}

const numbers = new WeakMap<object, number>();
let last = 0;

/** A number for an object that is never written into: the same object, the same number. */
function numberOf(thing: object): number {
	let number = numbers.get(thing);
	if (number === undefined) {
		number = ++last;
		numbers.set(thing, number);
	}
	return number;
}

/** A short text of all that `wiringOf` looks at: while it stays the same, so does what reaches whom. */
function wiringKeyOf(gear: Gear): string {
	let key = `${numberOf(gear.cables)},${numberOf(gear.terminators)},${numberOf(gear.boxes)},${gear.hallPower}`;
	for (const output of gear.hallPower ? (gear.desk?.outputs ?? []) : [])
		if (output.on) key += `,${output.id}${output.universe}`;
	for (const { state, condition, plug } of gear.units.values()) {
		key += isLeading(state) ? ';L' : ';';
		if (plug !== 'none') key += 'e';
		if (condition.receiverDead) key += 'd';
		if (condition.badSocket) key += condition.badSocket;
		if (condition.extraLoads > 0) key += condition.extraLoads;
	}
	return key;
}

/** Whether what a receiver gets is data it can use: frames of levels, at least some of them whole. */
export function hasData(gear: Gear, reception: Reception | undefined): boolean {
	if (!reception || reception.quality === 'nothing') return false;
	const { talker } = reception;
	if (talker?.kind !== 'desk') return true;
	return carriesLevels(gear.desk?.outputs.find((output) => output.id === talker.output)?.startCode ?? 0);
}

/** The frame that was there just before data went. */
function lastFrame(gear: Gear, reception: Reception, before: ReadonlyMap<string, Unit>): Uint8Array | null {
	const { talker } = reception;
	if (!talker) return null;
	if (talker.kind === 'desk') return frameOfDesk(gear, talker.universe);
	const leader = before.get(talker.fixture);
	return leader ? frameOfLeader(leader, gear.now) : null;
}

/** Whether the unit runs at all. */
export const isLit = (unit: Unit): boolean => isPowered(unit.state);

/** Whether mains reaches a fixture's inlet: down its plug, through others' link sockets, to a live wall. A link passes power whatever its own switch says, and whatever its fuse or supply does. */
function isLive(gear: Gear, unit: Unit): boolean {
	const { fuseBlown, supplyDead } = unit.condition;
	if (fuseBlown || supplyDead) return false;
	let { plug: at, condition } = unit;
	for (let hops = 0; hops <= gear.units.size; hops++) {
		if (condition.leadDead) return false;
		if (at === 'wall') return gear.hallPower && !condition.socketDead && !condition.breakerOff;
		const feeder = gear.units.get(at);
		if (!feeder?.profile.power.link) return false;
		({ plug: at, condition } = feeder);
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
