import { isInputError } from '../../shared/error/index.ts';
import {
	askedOf,
	kindOf,
	type Plan,
	type PlanRow,
	planSheet,
	profileOf,
	settingsOf,
	sheetBefore,
} from '../../shared/plan/index.ts';
import {
	lawOf,
	type PanelKey,
	type Profile,
	SETTING_KEYS,
	type SettingKey,
	type SettingValue,
} from '../../shared/profile/index.ts';
import type { DrillCondition, Task } from '../drill/index.ts';
import { type Hint, hintOn, shortestWay } from '../drill/trusted.ts';
import type { RigEvent } from '../event/index.ts';
import { displayOf, panelOf } from '../fixture/index.ts';
import type { Rig } from '../rig/index.ts';
import { openUnharmed } from '../rig/trusted.ts';

/** One thing to do at a panel. `shows` is what its display then says, line by line. */
export type SlipStep =
	| { readonly do: 'tap'; readonly key: PanelKey; readonly times: number; readonly shows: readonly string[] }
	/** Hold a key until the display shows `until`, let go, then tap Up or Down to `shows`; where it is far, it is quicker held again (`again`). */
	| {
			readonly do: 'hold';
			readonly key: PanelKey;
			readonly until: readonly string[];
			readonly again: boolean;
			readonly shows: readonly string[];
	  }
	/** Hold a key until the lock opens, or for what a long press of it does. */
	| {
			readonly do: 'unlock' | 'long';
			readonly key: PanelKey;
			readonly seconds: number;
			readonly shows: readonly string[];
	  }
	/** All ten as they are to stand, true for up, and the numbers of those to move. */
	| { readonly do: 'switches'; readonly up: readonly boolean[]; readonly move: readonly number[] }
	| { readonly do: 'slide'; readonly slide: string; readonly title: string; readonly to: string }
	| { readonly do: 'power' };

/** What to press on one fixture. */
export interface Slip {
	/** Row id. */
	readonly row: string;
	/** In order; none where it stands as planned already. */
	readonly steps: readonly SlipStep[];
	/** Presses that a hand can be sure of, as drills count them. */
	readonly presses: number;
	/** Settings that the plan asks for and this panel has no way to. */
	readonly cannot: readonly SettingKey[];
}

/**
 * One fixture alone on the bench, at its defaults or as the plan knows it to show, and what it must come to; every other setting
 * stays as it is.
 * @param before a plan that it was set by, where it is the same fixture: it stands as that has it
 * @throws RangeError for a row without a profile
 */
export function slipTask(plan: Plan, row: PlanRow, before: Plan | null = null): Task {
	const profile = profileOf(plan, row.profile);
	if (!profile) throw new RangeError(`no profile '${row.profile}'`);
	const was = before?.rows.find((each) => each.id === row.id && kindOf(before, each) === kindOf(plan, row));
	const sheet = sheetBefore({ ...plan, rows: [row] }, before && was ? settingsOf(before, was) : null);
	const asked = Object.entries(settingsOf(plan, row)) as [SettingKey, SettingValue][];
	const fixture = row.id;
	const others = keptKeys(profile).filter((key) => asked.every(([its]) => its !== key));
	const goal: DrillCondition[] = [
		...asked.map(([key, value]): DrillCondition => ({ is: 'setting', fixture, key, value })),
		...(others.length > 0 ? [{ is: 'kept', fixture, keys: others } as const] : []),
		{ is: 'on', fixture },
	];
	return {
		scene: 'bench',
		sheet: { ...sheet, desk: null, cables: [], terminators: [], splitters: [] },
		goal,
		hands: ['panel', 'power'],
		cautions: [],
		disturbs: false,
	};
}

/** Switches mean one thing or another as a whole: of those only what the slides say can be kept. */
function keptKeys({ panel }: Profile): readonly SettingKey[] {
	if (panel.kind !== 'dip') return SETTING_KEYS;
	const slid = new Set(panel.slides.flatMap(({ positions }) => positions.flatMap(({ sets }) => Object.keys(sets))));
	return SETTING_KEYS.filter((key) => slid.has(key));
}

/**
 * The slip of one row of a plan.
 * @param before as in `slipTask`
 * @returns null where no presses lead there, and for a row without a profile
 */
export function slipFor(plan: Plan, row: PlanRow, before: Plan | null = null): Slip | null {
	const profile = profileOf(plan, row.profile);
	if (!profile) return null;
	const task = slipTask(plan, row, before);
	const rig = openUnharmed(task.sheet);
	const hand = new SlipHand(rig, profile, row.id);
	try {
		const way = shortestWay(task);
		for (let at = 0; at < way.length; ) at += hand.follow(way, at, () => hintOn(task, rig));
		return { row: row.id, steps: hand.steps(), presses: hand.presses, cannot: unreachable(plan, row, profile) };
	} catch (error) {
		if (isInputError(error) && error.code === 'drill.stuck') return null;
		throw error;
	}
}

/** Of all that is asked, what the panel cannot set and does not have at its defaults. */
function unreachable(plan: Plan, row: PlanRow, profile: Profile): SettingKey[] {
	const asked = askedOf(plan, row);
	const set = settingsOf(plan, row);
	return SETTING_KEYS.filter(
		(key) => asked[key] !== undefined && set[key] === undefined && profile.defaults[key] !== asked[key],
	);
}

/** One hand at one panel, and what it writes down. */
class SlipHand {
	presses = 0;
	readonly #steps: SlipStep[] = [];
	readonly #moved = new Set<number>();
	readonly #rig: Rig;
	readonly #profile: Profile;
	readonly #fixture: string;

	constructor(rig: Rig, profile: Profile, fixture: string) {
		this.#rig = rig;
		this.#profile = profile;
		this.#fixture = fixture;
	}

	/** Switches last moved stand as one step, in the place of the first. */
	steps(): readonly SlipStep[] {
		const { gear } = this.#rig;
		const up = gear.units.get(this.#fixture)?.state.context.switches ?? [];
		const move = [...this.#moved].sort((a, b) => a - b);
		return move.length > 0 ? [{ do: 'switches', up, move }, ...this.#steps] : this.#steps;
	}

	/**
	 * Does what comes next on the way.
	 * @param hint what a hand needs to know of it; asked for a hold alone, for it is most of the work
	 * @returns how many events of the way that was
	 */
	follow(way: readonly RigEvent[], at: number, hint: () => Hint | null): number {
		const event = way[at];
		if (!event) return 1;
		if (event.type !== 'key.down') {
			this.#send(event);
			this.#write(event);
			return 1;
		}
		const hold = hint()?.hold;
		if (!hold) throw new Error(`no hint says how long ${event.key} is held`);
		const isLocked = this.#isLocked();
		const ahead = this.#rig.fork();
		ahead.send(event);
		ahead.wait(hold.letGoMs ?? 0);
		const until = this.#shows(ahead);
		for (const each of hold.then) this.#send(each);
		const shows = this.#shows(this.#rig);
		const holds = hold.then.filter(({ type }) => type === 'key.down').length;
		this.#steps.push(
			hold.letGoMs === null
				? { do: isLocked ? 'unlock' : 'long', key: event.key, seconds: secondsOf(this.#profile, isLocked), shows }
				: { do: 'hold', key: event.key, until, again: holds > 1, shows },
		);
		return hold.then.length;
	}

	#isLocked(): boolean {
		const unit = this.#rig.gear.units.get(this.#fixture);
		return unit !== undefined && panelOf(unit.state) === 'locked';
	}

	#send(event: RigEvent): void {
		if (event.type === 'clock.wait') this.#rig.wait(event.ms);
		else this.#rig.send(event);
		if (event.type !== 'clock.wait' && event.type !== 'key.up') this.presses++;
	}

	#write(event: RigEvent): void {
		if (event.type === 'key.tap') {
			const last = this.#steps.at(-1);
			const shows = this.#shows(this.#rig);
			if (last?.do === 'tap' && last.key === event.key) this.#steps.pop();
			const times = last?.do === 'tap' && last.key === event.key ? last.times + 1 : 1;
			this.#steps.push({ do: 'tap', key: event.key, times, shows });
		} else if (event.type === 'switch.flip') this.#moved.add(event.switch);
		else if (event.type === 'slide.move') this.#steps.push(this.#slide(event.slide, event.to));
		else if (event.type === 'power.switch') this.#steps.push({ do: 'power' });
	}

	#slide(id: string, to: number): SlipStep {
		const { panel } = this.#profile;
		const slide = panel.kind === 'dip' ? panel.slides.find((each) => each.id === id) : undefined;
		return { do: 'slide', slide: id, title: slide?.title ?? id, to: slide?.positions[to]?.label ?? String(to + 1) };
	}

	#shows(rig: Rig): readonly string[] {
		const unit = rig.gear.units.get(this.#fixture);
		if (!unit) return [];
		const display = displayOf(this.#profile, unit.state, rig.now);
		return display.kind === 'keyed' ? display.lines.map((line) => line.trim()).filter((line) => line !== '') : [];
	}
}

/** Seconds a key is held: for the lock, or for a long press. */
function secondsOf({ panel }: Profile, isLocked: boolean): number {
	if (panel.kind === 'dip') return 0;
	return (isLocked ? panel.unlockHold : (lawOf(panel).long?.after ?? 0)) / 1000;
}

/** What a panel says of itself once it stands as planned and is left alone. */
export interface PanelAtRest {
	/** Lines of its display; none where it has none. */
	readonly lines: readonly string[];
	/** Ten switches, true for up; null for a panel with keys. */
	readonly up: readonly boolean[] | null;
	/** Whether it would look otherwise at another start address: only then is that read off it as it stands. */
	readonly tellsAddress: boolean;
}

/** Long enough for data to have come and a display to have gone back to what it shows at rest, ms. */
const AT_REST_MS = 1500;

/** Read off the simulated panel, with the desk on its line. @throws RangeError for a row without a profile */
export function panelAtRest(plan: Plan, row: PlanRow): PanelAtRest {
	const [own, other] = [row.address, row.address > 1 ? row.address - 1 : 2].map((address) =>
		faceAtRest(plan, { ...row, address }),
	) as [Face, Face];
	return { ...own, tellsAddress: JSON.stringify(own) !== JSON.stringify(other) };
}

type Face = Omit<PanelAtRest, 'tellsAddress'>;

function faceAtRest(plan: Plan, row: PlanRow): Face {
	const profile = profileOf(plan, row.profile);
	if (!profile) throw new RangeError(`no profile '${row.profile}'`);
	const rig = openUnharmed(planSheet({ ...plan, rows: [row] }));
	rig.wait(AT_REST_MS);
	const state = rig.gear.units.get(row.id)?.state;
	if (!state) return { lines: [], up: null };
	const display = displayOf(profile, state, rig.now);
	return {
		lines: display.kind === 'keyed' ? display.lines.map((line) => line.trim()).filter((line) => line !== '') : [],
		up: profile.panel.kind === 'dip' ? state.context.switches : null,
	};
}
