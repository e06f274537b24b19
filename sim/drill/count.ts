import type { KeyedPanel, Settings } from '../../shared/profile/index.ts';
import type { RigEvent } from '../event/index.ts';
import { type PanelState, panelOf } from '../fixture/index.ts';
import type { Rig } from '../rig/index.ts';
import { openUnharmed } from '../rig/trusted.ts';
import { isPress, pressesOf } from './hands.ts';
import type { Task } from './types.ts';
import { panelNeeds, stepsBetween } from './way/index.ts';

/** Presses of a log: those that did something or were on the way, and those that only looked. */
export interface PressCount {
	readonly presses: number;
	readonly looked: number;
}

/** How one fixture's panel has been pressed since a setting of it last changed. */
interface Tally {
	/** Where its menu stood then, and presses needed before it could move at all: to wake it, to open its lock. */
	readonly from: readonly number[];
	readonly shut: number;
	/** The fewest presses it needed then. */
	readonly needs: number;
	/** Presses since, but for those of an edit or a question that is open now. */
	browsed: number;
	open: number;
}

/**
 * Presses of a log told apart, by what each did on the rig, so that it is right for any panel. A press of a key that changed neither
 * setting nor light is a look, unless it was on the way to one that did: as many as lead there straight from the last change, and
 * all presses of an edit that was kept. All other presses count as they are.
 * @param log one that fits the task's rig
 */
export function countPresses(task: Task, log: readonly RigEvent[]): PressCount {
	const rig = openUnharmed(task.sheet);
	const tallies = new Map<string, Tally>();
	let presses = 0;
	for (const [i, event] of log.entries()) {
		if (event.type !== 'key.tap' && event.type !== 'key.down') {
			play(rig, event);
			if (isPress(event)) presses++;
			continue;
		}
		const { fixture } = event;
		const before = standOf(rig, fixture);
		const tally = tallies.get(fixture) ?? tallyFrom(task, before, fixture);
		tallies.set(fixture, tally);
		play(rig, event);
		const after = settled(rig, log, i, fixture);
		if (after.settings !== before.settings || after.light !== before.light) {
			presses +=
				Math.min(tally.browsed, tally.shut + stepsBetween(before.panel, tally.from, before.path)) + tally.open + 1;
			tallies.set(fixture, tallyFrom(task, after, fixture));
		} else if (opens(after.state)) tally.open++;
		else {
			tally.browsed += tally.open + 1;
			tally.open = 0;
		}
	}
	// what is not finished yet counts as far as it led on
	for (const [fixture, { needs, browsed, open }] of tallies)
		presses += Math.min(browsed + open, Math.max(0, needs - panelNeeds(task, rig, fixture)));
	return { presses, looked: pressesOf(log) - presses };
}

function tallyFrom(task: Task, { rig, state, settings, path }: PanelStand, fixture: string): Tally {
	const isAsleep = state === 'asleep';
	const isLocked = state === 'locked' || (isAsleep && settings.lock === 'on');
	return {
		from: path,
		shut: Number(isAsleep) + Number(isLocked),
		needs: panelNeeds(task, rig, fixture),
		browsed: 0,
		open: 0,
	};
}

const opens = (state: PanelState): boolean => state === 'editing' || state === 'confirming';

interface PanelStand {
	readonly rig: Rig;
	readonly panel: KeyedPanel;
	readonly state: PanelState;
	readonly path: readonly number[];
	readonly settings: Settings;
	/** What it shows, as text; of a light that moves by itself only its flashes, since the rest is nobody's doing. */
	readonly light: string;
}

function standOf(rig: Rig, fixture: string): PanelStand {
	const unit = rig.gear.units.get(fixture);
	if (!unit) throw new RangeError(`no fixture '${fixture}' on the drill's rig`);
	const { path, settings } = unit.state.context;
	const { light } = rig.look(fixture);
	const isStill = !light.moving && !light.flicker;
	const cells = isStill ? light.cells.map(({ levels }) => levels) : [];
	return {
		rig,
		panel: unit.profile.panel as KeyedPanel,
		state: panelOf(unit.state),
		path,
		settings,
		light: JSON.stringify([cells, light.flashes]),
	};
}

/** How it stands once the press is over: a key that was put down has come up again, or the log ends. */
function settled(rig: Rig, log: readonly RigEvent[], at: number, fixture: string): PanelStand {
	if (log[at]?.type !== 'key.down') return standOf(rig, fixture);
	const ahead = rig.fork();
	for (const event of log.slice(at + 1)) {
		const isOwn = 'fixture' in event && event.fixture === fixture;
		if (isOwn && event.type !== 'key.up') break;
		play(ahead, event);
		if (isOwn) break;
	}
	return standOf(ahead, fixture);
}

function play(rig: Rig, event: RigEvent): void {
	if (event.type === 'clock.wait') rig.wait(event.ms);
	else rig.send(event);
}
