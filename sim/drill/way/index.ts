/**
 * The shortest way: the fewest presses that a person's hand can be sure of, from where the learner stands to the drill's goal,
 * worked out part by part. The parts
 * share no hand: each fixture by its panel, the desk by its entries, the line by its plugs, mains, the remote. So the
 * fewest of the whole are the fewest of each, added up.
 *
 * For panels this is a second model, beside the fixture's machine: to search the machine itself for two settings picked from
 * lists takes some 14,000 steps, and far more with numbers and holds, while somebody waits for a hint. The fewest presses are reckoned
 * from the menu and the machine's own rules for a step, and the machine checks them: each press of a way is tried on it and must leave
 * one fewer (`sim/drill/way/script.ts`), and tests hold the two together by searching the machine, over every state of a small
 * menu and, seed after seed, on the bundled ones.
 */

import { InputError } from '../../../shared/error/index.ts';
import type { RigEvent } from '../../event/index.ts';
import { doesRepeat, isSwitchedOn } from '../../fixture/index.ts';
import type { Rig, Unit } from '../../rig/index.ts';
import { replayUnharmed } from '../../rig/trusted.ts';
import { findingName, findingsOf } from '../check.ts';
import { pressesOf, requireInHand } from '../hands.ts';
import type { Finding, Task } from '../types.ts';
import { type Wish, wishFor } from '../wish.ts';
import { dipWay } from './dip.ts';
import { deskWay, lineWay } from './line.ts';
import { mainsWay } from './mains.ts';
import { panelWay, viewOf } from './panel.ts';
import { type PanelPart, panelParts } from './parts.ts';
import { remoteWay } from './remote.ts';
import { panelScript, type Script, staticWay, type TimedEvent } from './script.ts';

export { dipWay } from './dip.ts';
export { menuMap, stepsBetween } from './tour.ts';
export { HAND } from './values.ts';

/**
 * Events that finish a drill from where a log leaves the learner: a list that, played after the log, makes it done, with the
 * fewest presses that a person's hand can be sure of (`hold.ts`). Its first event is the hint. Empty when the drill is done.
 *
 * A hold is three events: `key.down`, `clock.wait`, `key.up`; each ends where it is worst for what follows, since nobody lets
 * go on the very value. Panels are worked one after another where each stays
 * awake and open long enough, and otherwise all at once, so that none falls asleep on the way.
 * @param drill taken as it is
 * @throws InputError `drill.hands` for a log with events that are not in hand, as `replay` for a log that is none or an event that fits nothing, and `drill.stuck` where hands cannot finish it any more (no log of hands leads there in the drills made here)
 */
export function shortestWay(drill: Task, log: readonly RigEvent[] = []): RigEvent[] {
	requireInHand(drill, log);
	return wayOn(drill, replayUnharmed(drill.sheet, log));
}

/** The fewest presses that are sure to do from where a rig stands. @throws InputError `drill.stuck` */
export function fewestPresses(drill: Task, rig: Rig): number {
	const panels = panelParts(drill, rig).map(needsOf);
	const presses = panels.reduce((sum, each) => sum + each, pressesOf(elsewhere(drill, rig)));
	return presses === Number.POSITIVE_INFINITY ? stuck() : presses;
}

/** As {@link shortestWay}, from where a rig stands; the rig stays as it is. @throws InputError `drill.stuck` */
export function wayOn(drill: Task, rig: Rig): RigEvent[] {
	return inTime(partsOf(drill, rig));
}

/** The next step, and how it is done by hand. */
export interface Hint {
	readonly event: RigEvent;
	/** Where a key is held, or still is and is to be let go; null for all else. */
	readonly hold: {
		/** Milliseconds from now until the display shows what the key is let go at; null where it is held until the lock opens. */
		readonly letGoMs: number | null;
		/** From the key going down to where the value stands as it should, as events: this hold, and the presses of Up and Down after it. */
		readonly then: readonly RigEvent[];
	} | null;
}

/** The first step of {@link wayOn}, with what a hand needs to know of it; null where nothing is left. @throws InputError `drill.stuck` */
export function hintOn(drill: Task, rig: Rig): Hint | null {
	const timed = partsOf(drill, rig);
	const first = timed[0];
	if (!first) return null;
	const { event, letGoMs } = first;
	if (letGoMs === undefined || !('fixture' in event)) return { event, hold: null };
	const own = timed.filter((each) => 'fixture' in each.event && each.event.fixture === event.fixture);
	const end = own.findIndex(({ event: it }) => !('key' in it) || (letGoMs !== null && !doesRepeat(it.key)));
	// what opens a lock ends with the key coming up
	const then = inTime(letGoMs === null ? own.slice(0, 2) : own.slice(0, end < 0 ? own.length : end));
	return { event, hold: { letGoMs, then } };
}

/** What the next step is on the way to put right: the first finding that goes along the way from here; null where none does. @throws InputError `drill.stuck` */
export function hintAims(drill: Task, rig: Rig): Finding | null {
	const ahead = rig.fork();
	const before = findingsOf(drill, rig);
	for (const event of wayOn(drill, rig)) {
		if (event.type === 'clock.wait') ahead.wait(event.ms);
		else ahead.send(event);
		const still = new Set(findingsOf(drill, ahead).map(findingName));
		const gone = before.filter((finding) => !still.has(findingName(finding)));
		// the cause rather than what follows from it
		const aim = gone.find(({ what }) => what !== 'data' && what !== 'light') ?? gone[0];
		if (aim) return aim;
	}
	return null;
}

/**
 * All that is done, in order of time: first whatever harms others (a leader that talks into a running line garbles it for all),
 * then what is done away from panels and at switches, then what is done at other keys.
 */
function partsOf(drill: Task, rig: Rig): readonly TimedEvent[] {
	const harmful = garbling(rig);
	const events = elsewhere(drill, rig);
	const scripts: RankedScript[] = [];
	for (const { id, unit, wish } of panelParts(drill, rig)) {
		if (unit.profile.panel.kind === 'dip') {
			if (harmful.has(id)) events.unshift(...dipEvents(id, unit, wish));
			else events.push(...dipEvents(id, unit, wish));
		} else scripts.push({ ...panelScript(unit.profile, id, unit.state, rig.now, wish), isFirst: harmful.has(id) });
	}
	if (scripts.some(({ presses }) => presses === Number.POSITIVE_INFINITY)) stuck();
	const timed = together(scripts.filter(({ presses }) => presses > 0));
	const isFirst = ({ event }: TimedEvent): boolean => 'fixture' in event && harmful.has(event.fixture);
	const first = timed.filter(isFirst);
	const free = first.reduce((latest, { at }) => Math.max(latest, at), 0);
	return [
		...first,
		...events.map((event) => ({ at: free, event })),
		...timed.filter((each) => !isFirst(each)),
	].toSorted((a, b) => a.at - b.at);
}

/** Fixtures that lead on a line where another talks as well: nothing behind them gets whole data. */
function garbling({ gear }: Rig): ReadonlySet<string> {
	const found = new Set<string>();
	for (const { causes } of gear.receptions.values())
		for (const cause of causes)
			if (cause.cause === 'collision')
				for (const talker of cause.talkers) if (talker.kind === 'leader') found.add(talker.fixture);
	return found;
}

/** The same for the panel of one fixture alone; 0 where its panel is not in hand. */
export function panelNeeds(drill: Task, rig: Rig, fixture: string): number {
	const part = panelParts(drill, rig).find(({ id }) => id === fixture);
	return part ? needsOf(part) : 0;
}

function needsOf({ id, unit, wish }: PanelPart): number {
	const { profile, state } = unit;
	if (profile.panel.kind === 'dip') return pressesOf(dipEvents(id, unit, wish));
	return state.context.held ? staticWay(profile, state, wish).presses : panelWay(profile, viewOf(state), wish).presses;
}

function dipEvents(fixture: string, unit: Unit, wish: Wish): RigEvent[] {
	const { switches, slides } = unit.state.context;
	const moves = dipWay(unit.profile, fixture, switches, slides, wish) ?? stuck();
	return isSwitchedOn(unit.state) ? moves : [...moves, { type: 'power.switch', fixture, on: true }];
}

/** What is done away from the panels: mains, line, desk and remote. */
function elsewhere(drill: Task, rig: Rig): RigEvent[] {
	const events = [...mainsWay(drill, rig), ...lineWay(drill, rig), ...deskWay(drill, rig)];
	if (!drill.hands.includes('remote')) return events;
	const wishes = new Map([...rig.gear.units.keys()].map((id) => [id, wishFor(drill, id)]));
	return [...events, ...(remoteWay(rig, wishes) ?? stuck())];
}

/** A script, and whether its fixture harms others until it is through. */
interface RankedScript extends Script {
	readonly isFirst: boolean;
}

/**
 * Panels one after another, the harmful first and then the least patient; or, where one of them would sleep or lock before its turn, all from the
 * start, each with hands of its own.
 */
function together(scripts: readonly RankedScript[]): TimedEvent[] {
	const released = Math.max(0, ...scripts.map(({ release }) => release?.at ?? 0));
	const order = scripts.toSorted((a, b) => Number(b.isFirst) - Number(a.isFirst) || a.patience - b.patience);
	const starts = new Map<Script, number>();
	let next = released;
	for (const script of order) {
		starts.set(script, next);
		next += script.length;
	}
	const begun = (script: Script): number => script.release?.at ?? 0;
	const isPatient = order.every((script) => (starts.get(script) ?? 0) < begun(script) + script.patience);
	return order.flatMap((script) => {
		const start = isPatient ? (starts.get(script) ?? 0) : begun(script);
		const steps = script.steps.map((step) => ({ ...step, at: step.at + start }));
		return script.release ? [script.release, ...steps] : steps;
	});
}

/** Events that stand in order of time, with the waits between them. */
function inTime(timed: readonly TimedEvent[]): RigEvent[] {
	const events: RigEvent[] = [];
	let now = 0;
	for (const { at, event } of timed) {
		if (at > now) events.push({ type: 'clock.wait', ms: at - now });
		now = at;
		events.push(event);
	}
	return events;
}

function stuck(): never {
	throw new InputError('drill.stuck', 'log', { trouble: 'cannot-be-finished' });
}
