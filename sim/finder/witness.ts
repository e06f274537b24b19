import type { RigSheet } from '../../shared/sheet/index.ts';
import type { PlacedFault, RigEvent } from '../event/index.ts';
import { faultEvents } from '../fault/index.ts';
import { panelOf } from '../fixture/index.ts';
import { openRig, type Rig, type Sight, type Unit } from '../rig/index.ts';

/** Milliseconds a rig is left alone before anybody looks: longer than the loss of data takes to show. */
const SETTLE_MS = 3000;

/**
 * A rig that testifies: how it looks at rest and after each stimulus. Stimuli are done on forks and kept, since many checks
 * share one.
 */
export interface Witness {
	readonly rig: Rig;
	/** The rig after some events and a settling wait. `key` names them: the same key must always mean the same events. */
	after(key: string, events: (rig: Rig) => readonly RigEvent[], ms?: number): Rig;
	rest(fixture: string): Sight;
	/** What a fixture's checks depend on, as a number: see `signatureOf`. */
	signature(fixture: string): number;
	/** Lets go of what was kept, once nobody will ask again. */
	forget(): void;
}

/** The rig as its sheet has it, settled. */
export function meantWitness(sheet: RigSheet): Witness {
	const rig = openRig(sheet);
	rig.wait(SETTLE_MS);
	return witness(rig);
}

/** The same rig with some faults come about, settled. Forked, so that what no fault touched stays the very same object. */
export function faultyWitness(meant: Witness, faults: readonly PlacedFault[]): Witness {
	const rig = broken(meant, faults);
	rig.sendTogether(coldStart(rig));
	rig.wait(SETTLE_MS);
	return witness(rig);
}

function broken(meant: Witness, faults: readonly PlacedFault[]): Rig {
	const rig = meant.rig.fork();
	for (const fault of faults) rig.sendTogether(faultEvents(rig.sheet, fault));
	return rig;
}

/** Whether faults leave some fixtures wholly as they were, so that nothing about them can be complained of. */
export function leavesAlone(meant: Witness, faults: readonly PlacedFault[], fixtures: readonly string[]): boolean {
	const rig = broken(meant, faults);
	return fixtures.every((fixture) => numberFor(signatureOf(rig, fixture)) === meant.signature(fixture));
}

/** Off and on again for those that keep a look from before the fault came: a crew meets them as they came up that day. */
function coldStart(rig: Rig): RigEvent[] {
	return [...rig.gear.units].flatMap(([fixture, { kept, state }]): RigEvent[] =>
		kept && state.context.on
			? [
					{ type: 'power.switch', fixture, on: false },
					{ type: 'power.switch', fixture, on: true },
				]
			: [],
	);
}

export function witness(rig: Rig): Witness {
	const kept = new Map<string, Rig>();
	const sights = new Map<string, Sight>();
	const signatures = new Map<string, number>();
	return {
		rig,
		after(key, events, ms = SETTLE_MS) {
			let after = kept.get(key);
			if (!after) {
				after = rig.fork();
				after.sendTogether(events(rig));
				after.wait(ms);
				kept.set(key, after);
			}
			return after;
		},
		rest(fixture) {
			let sight = sights.get(fixture);
			if (!sight) {
				sight = rig.look(fixture);
				sights.set(fixture, sight);
			}
			return sight;
		},
		signature(fixture) {
			let number = signatures.get(fixture);
			if (number === undefined) {
				number = numberFor(signatureOf(rig, fixture));
				signatures.set(fixture, number);
			}
			return number;
		},
		forget() {
			kept.clear();
			sights.clear();
		},
	};
}

const texts = new Map<string, number>();

/** A number for a text: the same text, the same number. */
function numberFor(text: string): number {
	let number = texts.get(text);
	if (number === undefined) {
		number = texts.size;
		texts.set(text, number);
	}
	return number;
}

const names = new WeakMap<object, number>();
let last = 0;

/** A number for an object: the same object, the same number. */
export function nameOf(thing: object | null | undefined): number {
	if (!thing) return 0;
	let name = names.get(thing);
	if (name === undefined) {
		name = ++last;
		names.set(thing, name);
	}
	return name;
}

/** What a fixture's own state amounts to: the same text for states that no check could tell apart. */
const unitTexts = new WeakMap<Unit, string>();
function unitText(unit: Unit | undefined): string {
	if (!unit) return '-';
	let text = unitTexts.get(unit);
	if (text === undefined) {
		const { settings, on, live, data, switches, slides, battery } = unit.state.context;
		text = JSON.stringify([
			unit.placed.id,
			settings,
			on,
			live,
			data,
			switches,
			slides,
			battery && [battery.wattHours, battery.capacity, battery.takesCharge],
			unit.condition,
			unit.plug,
			unit.hidden,
			unit.kept && [...unit.kept],
			panelOf(unit.state),
		]);
		unitTexts.set(unit, text);
	}
	return text;
}

/** What hands could change on a fixture itself, as a text: the same text, nothing for a mend to put right. */
export function selfText(unit: Unit | undefined): string {
	if (!unit) return '-';
	const { settings, on, switches, slides, battery } = unit.state.context;
	return JSON.stringify([
		settings,
		on,
		switches,
		slides,
		battery && [battery.wattHours < 0.5 * battery.capacity, battery.capacity, battery.takesCharge],
		unit.condition,
		unit.plug,
		unit.hidden,
	]);
}

/**
 * A text on which everything depends that a fixture can be seen to do: itself, what reaches it, who sends that, the desk, the
 * remote and the hall. Two rigs with the same text for a fixture answer every check on it alike, so one need be asked.
 */
function signatureOf(rig: Rig, fixture: string): string {
	const { gear } = rig;
	const reception = gear.receptions.get(fixture);
	const leader = reception?.talker?.kind === 'leader' ? unitText(gear.units.get(reception.talker.fixture)) : '';
	// what weakened the signal cannot be seen, only how it fares
	const from = reception ? `${reception.quality}${reception.rate}${JSON.stringify(reception.talker)}` : '';
	return `${unitText(gear.units.get(fixture))}|${from}|${leader}|${nameOf(gear.desk)}|${gear.remote?.code ?? ''}${gear.remote?.battery ?? ''}|${gear.hallPower}`;
}
