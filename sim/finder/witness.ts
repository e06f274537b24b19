import { oncePer } from '../../shared/memo/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { PlacedFault, RigEvent } from '../event/index.ts';
import { faultEvents } from '../fault/index.ts';
import { hasDataIn, hasMains, isSwitchedOn, panelOf, signalOf } from '../fixture/index.ts';
import type { Reception } from '../line/index.ts';
import type { Desk, Rig, Sight, Unit } from '../rig/index.ts';
import { openRig } from '../rig/trusted.ts';

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

/**
 * When a fault came: `cold`, it was there when the rig was switched on; `warm`, it came while the rig ran, so that fixtures keep what
 * they hold; `either`, the rig is the same both ways.
 */
export type Came = 'cold' | 'warm' | 'either';

/** The same rig with some faults come about, settled. Forked, so that what no fault touched stays the very same object. */
export function faultyWitness(
	meant: Witness,
	faults: readonly PlacedFault[],
	came: Exclude<Came, 'either'> = 'cold',
): Witness {
	const rig = broken(meant, faults);
	return settled(rig, came === 'cold' ? coldStart(rig) : []);
}

function settled(rig: Rig, restart: readonly RigEvent[]): Witness {
	if (restart.length > 0) rig.sendTogether(restart);
	rig.wait(SETTLE_MS);
	return witness(rig);
}

function broken(meant: Witness, faults: readonly PlacedFault[]): Rig {
	const rig = meant.rig.fork();
	for (const fault of faults) rig.sendTogether(faultEvents(rig.sheet, fault));
	return rig;
}

/**
 * The rig with some faults, by when they came: one where it is the same both ways, and none where the faults leave some fixtures wholly
 * as they were, so that nothing about them can be complained of.
 */
export function witnessesAt(
	meant: Witness,
	faults: readonly PlacedFault[],
	fixtures: readonly string[],
): { readonly came: Came; readonly witness: Witness }[] {
	const rig = broken(meant, faults);
	if (fixtures.every((fixture) => signatureOf(rig, fixture) === meant.signature(fixture))) return [];
	const restart = coldStart(rig);
	if (restart.length === 0) return [{ came: 'either', witness: settled(rig, []) }];
	const cold = settled(rig.fork(), restart);
	const warm = settled(rig, []);
	const isSame = restart.every(
		(event) => !('fixture' in event) || cold.signature(event.fixture) === warm.signature(event.fixture),
	);
	if (isSame) return [{ came: 'either', witness: cold }];
	return [
		{ came: 'cold', witness: cold },
		{ came: 'warm', witness: warm },
	];
}

/** Off and on again for those that keep a look from before the fault came: so they would have come up with the fault there. */
function coldStart(rig: Rig): RigEvent[] {
	return [...rig.gear.units].flatMap(([fixture, { kept, state }]): RigEvent[] =>
		kept && isSwitchedOn(state)
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
				number = signatureOf(rig, fixture);
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

const contents = oncePer((thing: object) => numberFor(ArrayBuffer.isView(thing) ? `${thing}` : JSON.stringify(thing)));

/** A number for what an object that is never written into holds: the same content, the same number. Each object is read once. */
export const contentOf = (thing: object | null | undefined): number => (thing ? contents(thing) : 0);

/** A number for what each thing is worked out to be: worked out once. */
function numberPer<T extends object>(work: (thing: T) => string): (thing: T | null | undefined) => number {
	const number = oncePer((thing: T) => numberFor(work(thing)));
	return (thing) => (thing ? number(thing) : 0);
}

/** What a fixture's own state amounts to: the same number for states that no check could tell apart. */
const stateOf = numberPer((unit: Unit) => {
	const { settings, switches, slides, battery } = unit.state.context;
	const charge = battery ? `${battery.wattHours},${battery.capacity},${battery.takesCharge}` : '';
	const panel = JSON.stringify(panelOf(unit.state));
	// one that has gone dark without data is as one that never had any
	const signal = signalOf(unit.state) === 'dark' ? 'none' : signalOf(unit.state);
	return `${unit.placed.id}|${contentOf(settings)}|${isSwitchedOn(unit.state)}${hasMains(unit.state)}${hasDataIn(unit.state)}|${contentOf(switches)}|${contentOf(slides)}|${charge}|${contentOf(unit.condition)}|${unit.plug}|${unit.hidden}|${contentOf(unit.kept)}|${panel}|${signal}`;
});

/** What hands could change on a fixture itself, as a number: the same, nothing for a repair to put right. */
export const selfOf = numberPer((unit: Unit) => {
	const { settings, switches, slides, battery } = unit.state.context;
	const charge = battery
		? `${battery.wattHours < 0.5 * battery.capacity},${battery.capacity},${battery.takesCharge}`
		: '';
	return `${contentOf(settings)}|${isSwitchedOn(unit.state)}|${contentOf(switches)}|${contentOf(slides)}|${charge}|${contentOf(unit.condition)}|${unit.plug}|${unit.hidden}`;
});

/** What a desk sends and shows: two of the same are one, however often a rig was broken the same way. */
export const deskOf = numberPer(
	({ outputs, patch, levels, master, held }: Desk) =>
		`${contentOf(outputs)}|${contentOf(patch)}|${textOfLevels(levels)}|${master}|${held ? `${held.by}${textOfLevels(held.levels)}${held.master}` : ''}`,
);

const textOfLevels = (levels: Desk['levels']): string =>
	`${[...levels].map(([universe, frame]) => `${universe}:${contentOf(frame)}`)}`;

/** What reaches a fixture: what weakened the signal cannot be seen, only how it fares. */
const arrivalOf = numberPer(
	(reception: Reception) => `${reception.quality}${reception.rate}${contentOf(reception.talker)}`,
);

/**
 * A number on which everything depends that a fixture can be seen to do: itself, what reaches it, who sends that, the desk, the
 * remote and the hall. Two rigs with the same number for a fixture answer every check on it alike, so one need be asked.
 */
function signatureOf({ gear }: Rig, fixture: string): number {
	const reception = gear.receptions.get(fixture);
	const leader = reception?.talker?.kind === 'leader' ? stateOf(gear.units.get(reception.talker.fixture)) : 0;
	return numberFor(
		`${stateOf(gear.units.get(fixture))}|${arrivalOf(reception)}|${leader}|${deskOf(gear.desk)}|${gear.remote?.code ?? ''}${gear.remote?.battery ?? ''}|${gear.hallPower}`,
	);
}

/** Whether any light comes out, ultraviolet alone included. A light that jumps is lit, dark as it may be for a moment. */
export const isLit = ({ light }: Sight): boolean =>
	light.flicker || light.whole.brightness > 0 || light.whole.ultraviolet > 0;

/** Whether an eye sees it lit: ultraviolet alone does not count in a lit hall, and one that moves is lit however dark at a moment. */
export const looksLit = ({ light }: Sight): boolean => light.flicker || light.moving || light.whole.brightness > 0.03;

/** Smallest change of a level that an eye beside the lamp sees (common practice, no source). */
const SEEN = 0.04;

/** Whether two sights of one fixture are the same light to an eye. */
export function sameLight(a: Sight, b: Sight): boolean {
	if (a.light.flicker !== b.light.flicker || a.light.moving !== b.light.moving) return false;
	if (a.light.flashes > 0 !== b.light.flashes > 0) return false;
	// what moves or jumps cannot be held to one colour
	if (a.light.moving || a.light.flicker) return true;
	return sameLevels(a, b);
}

/** Whether two sights are the same light at their moments, whatever it does before and after. */
export function sameLevels(a: Sight, b: Sight): boolean {
	return a.light.cells.every((cell, i) => {
		const other = b.light.cells[i];
		return other !== undefined && cell.levels.every((level, e) => Math.abs(level - (other.levels[e] ?? 0)) <= SEEN);
	});
}

/** Smallest step between two colours that an eye sees which has only one of them before it, in CIE 1976 u', v' (ours, no source). */
const ANOTHER_COLOUR = 0.025;

/** CIE 1976 u', v' of a chromaticity (CIE 015: u' = 4x / (−2x + 12y + 3), v' = 9y / (−2x + 12y + 3); from memory). */
function evenly([x, y]: readonly [number, number]): readonly [number, number] {
	const below = -2 * x + 12 * y + 3;
	return [(4 * x) / below, (9 * y) / below];
}

/** Whether two sights have one colour, brightness aside. One that moves has none that could be held to it. */
export function sameColour(a: Sight, b: Sight): boolean {
	if (a.light.moving || b.light.moving) return a.light.moving === b.light.moving;
	const [one, two] = [a.light.whole, b.light.whole];
	if (one.ultraviolet > 0 !== two.ultraviolet > 0) return false;
	if (!one.xy || !two.xy) return one.xy === two.xy;
	const [[u1, v1], [u2, v2]] = [evenly(one.xy), evenly(two.xy)];
	return Math.hypot(u1 - u2, v1 - v2) <= ANOTHER_COLOUR;
}

/** How a brightness stands against what is meant: within a fifth is the same to an eye (common practice, no source). */
export function brightnessAgainst(seen: Sight, meant: Sight): 'dark' | 'dimmer' | 'as-meant' | 'brighter' {
	const a = seen.light.whole.brightness;
	const b = meant.light.whole.brightness;
	// how bright a moving light is depends on when one looks
	if (seen.light.moving || meant.light.moving) {
		if (looksLit(seen) === looksLit(meant)) return 'as-meant';
		return looksLit(seen) ? 'brighter' : 'dark';
	}
	if (a <= 0.03) return b <= 0.03 ? 'as-meant' : 'dark';
	if (a < 0.8 * b) return 'dimmer';
	return a > 1.25 * b ? 'brighter' : 'as-meant';
}
