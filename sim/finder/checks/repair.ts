import type { RigSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../event/index.ts';
import { MENDS, type RepairId } from '../../fault/index.ts';
import { isSwitchedOn } from '../../fixture/index.ts';
import type { Rig } from '../../rig/index.ts';
import { COMPLAINTS, type Complaint } from '../complaints.ts';
import { isolatesFor, repairSeconds, standForRepair } from '../route.ts';
import { repairEvents, triesKind } from '../tried.ts';
import { selfOf, type Witness, witness } from '../witness.ts';
import { type Check, check, mayAct } from './types.ts';

const SWAPS = new Set<RepairId>([
	'fresh-battery',
	'remote-battery',
	'replace-cable',
	'swap-fixture',
	'fit-terminator',
	'replace-lead',
	'other-socket',
	'other-output',
]);

/** Done through a panel's menu. */
const SCROLLS = new Set<RepairId>(['set-panel', 'open-sensor']);

/** Doing a repair, and looking whether the complaint is gone. */
export function repairCheck(
	sheet: RigSheet,
	meant: Witness,
	complaint: Complaint,
	placed: { readonly id: RepairId; readonly place: string },
	standIn: boolean,
): Check {
	const { id, place } = placed;
	const repair = MENDS[id];
	const stand = standForRepair(sheet, placed);
	const profile = meant.rig.gear.units.get(place)?.profile;
	const eventsOn = (rig: Rig): RigEvent[] => repairEvents(sheet, rig, placed);
	const isIdle = (w: Witness): boolean =>
		isUntouched(w, meant, sheet, place) || eventsOn(w.rig).every((event) => changesNothing(w.rig, event));
	return check(
		{
			kind: triesKind(id),
			sort: SWAPS.has(id) ? 'swap' : 'mend',
			seconds: repairSeconds(sheet, placed),
			needs: [...repair.needs, ...stand.needs],
			cautions: [...new Set([...repair.cautions, ...stand.cautions, ...(isOnMains(sheet, placed) ? ['mains'] : [])])],
			disturbs:
				repair.disturbs ||
				isolatesFor(sheet, placed) ||
				(SCROLLS.has(id) && profile !== undefined && mayAct(profile, standIn)),
			place,
			at: stand.at,
		},
		(w) => {
			if (isIdle(w)) return 'still';
			const after = w.after(`mend ${id} ${place}`, eventsOn);
			return COMPLAINTS[complaint.kind].holds(witness(after), meant, complaint.fixture) ? 'still' : 'cleared';
		},
		(w) => (isIdle(w) ? 'untouched' : null),
	);
}

/** Whether a whole fixture is swapped that hangs on mains. */
const isOnMains = (sheet: RigSheet, { id, place }: { readonly id: RepairId; readonly place: string }): boolean =>
	id === 'swap-fixture' && sheet.fixtures.some((fixture) => fixture.id === place && fixture.plug !== 'none');

/** Whether a place is as the sheet has it, so that a repair there would change nothing. */
function isUntouched(w: Witness, meant: Witness, sheet: RigSheet, place: string): boolean {
	const [now, was] = [w.rig.gear, meant.rig.gear];
	if (place === 'rig')
		return (
			now.hallPower === was.hallPower &&
			now.cables === was.cables &&
			[...now.units.values()].every(({ condition }) => !condition.breakerOff)
		);
	if (was.boxes.some(({ id }) => id === place)) return now.boxes === was.boxes;
	if (place === 'remote') return now.remote === was.remote;
	if (place.includes(':')) return now.terminators === was.terminators;
	if (now.cables.length !== was.cables.length) return false;
	if (sheet.cables.some(({ id }) => id === place))
		return now.cables.find(({ id }) => id === place) === was.cables.find(({ id }) => id === place);
	const unit = was.units.get(place);
	// a fixture's own self and its strips at the desk are both named by the fixture
	if (unit) return now.desk === was.desk && selfOf(now.units.get(place)) === selfOf(unit);
	return now.desk === was.desk;
}

/** Whether the fields of `change` are what `thing` has already. */
function has(thing: object | undefined, change: object): boolean {
	return Object.entries(change).every(([key, value]) => {
		const now = (thing as Record<string, unknown> | undefined)?.[key];
		return now === value || (typeof value === 'object' && JSON.stringify(now) === JSON.stringify(value));
	});
}

/** Whether an event leaves a rig as it is: what it would set stands so already. False where that cannot be told. */
function changesNothing({ gear }: Rig, event: RigEvent): boolean {
	switch (event.type) {
		case 'cable.become':
			return has(
				gear.cables.find(({ id }) => id === event.cable),
				event.change,
			);
		case 'settings.become':
			return has(gear.units.get(event.fixture)?.state.context.settings, event.change);
		case 'condition.become':
			return has(gear.units.get(event.fixture)?.condition, event.change);
		case 'charge.become': {
			const battery = gear.units.get(event.fixture)?.state.context.battery;
			// what a rig has drawn since it opened is no more than a hair
			return battery != null && Math.abs(battery.wattHours - battery.capacity * event.charge) < 0.01 * battery.capacity;
		}
		case 'power.switch':
			return [...gear.units].some(([id, { state }]) => id === event.fixture && isSwitchedOn(state) === event.on);
		case 'mains.plug':
			return gear.units.get(event.fixture)?.plug === event.into;
		case 'sight.block':
			return gear.units.get(event.fixture)?.hidden === event.hidden;
		case 'hall.power':
			return gear.hallPower === event.on;
		case 'desk.level':
			return (gear.desk?.levels.get(event.universe)?.[event.slot - 1] ?? 0) === event.level;
		case 'desk.output':
			return gear.desk?.outputs.find(({ id }) => id === event.output)?.on === event.on;
		case 'desk.universe':
			return gear.desk?.outputs.find(({ id }) => id === event.output)?.universe === event.universe;
		case 'desk.master':
			return gear.desk?.master === event.level;
		case 'desk.hold':
			return (gear.desk?.held?.by ?? null) === event.by;
		case 'desk.start-code':
			return gear.desk?.outputs.find(({ id }) => id === event.output)?.startCode === event.code;
		case 'box.switch':
			return gear.boxes.find(({ id }) => id === event.box)?.on === event.on;
		case 'box.output':
			return (gear.boxes.find(({ id }) => id === event.box)?.dead?.includes(event.socket) ?? false) === event.dead;
		default:
			return false;
	}
}
