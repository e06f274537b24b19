import {
	isIdle,
	type KeyedPanel,
	lawOf,
	type MenuItem,
	type PanelKey,
	type Profile,
	type SettingKey,
	type Settings,
} from '../../shared/profile/index.ts';
import {
	actingSettings,
	displayOf,
	draftOf,
	driveOf,
	type FixtureEvent,
	type FixtureState,
	inputFrom,
	itemAt,
	nextDeadline,
	panelOf,
	startFixture,
	stepFixture,
} from '../fixture/index.ts';

/** One way in which a panel may act. */
export interface Reading {
	/** What it is called by whoever asks. */
	readonly answer: string;
	readonly profile: Profile;
}

/** One thing done at the panel: a tap, a key held so many ms, or nothing for so many. */
export type SettlePress =
	| { readonly do: 'tap'; readonly key: PanelKey }
	| { readonly do: 'hold'; readonly key: PanelKey; readonly ms: number }
	| { readonly do: 'wait'; readonly ms: number };

/** What is seen at the end of it, and of which readings. */
export interface Seen {
	readonly answers: readonly string[];
	/** The display, line by line, none where it is dark; without what only marks a value that is being set: panels differ in that. */
	readonly lines: readonly string[];
	/** Whether the light is on, by the fixture's own settings: no data is in it. */
	readonly light: 'dark' | { readonly held: string } | { readonly programme: string };
}

export interface Tell {
	readonly steps: readonly SettlePress[];
	readonly seen: readonly Seen[];
	/** Settings whose values the way begins from: what the real one must stand at for the display to read so. */
	readonly starts: readonly SettingKey[];
}

/** Milliseconds between one thing done and the next: too short for anything to happen by itself. */
const BETWEEN_MS = 200;
/** What a hold or a wait is longer than what it waits for: nobody counts to the second, and the real time is not known. */
const MARGIN = 2;
/** Joint states looked at before it is given up: some seconds of a phone. */
const MOST = 12_000;

interface Node {
	readonly states: readonly FixtureState[];
	readonly from: Node | null;
	readonly press: SettlePress | null;
}

/**
 * The fewest presses, from just after it is switched on and at its defaults, after which not all readings show the same.
 * @param readings two or more, of one panel with keys
 * @param most steps that it may take, from 1
 * @returns null where there are fewer than two, or none are told apart within the bound
 */
export function tellApart(readings: readonly Reading[], most: number): Tell | null {
	if (readings.length < 2 || readings.some(({ profile }) => profile.panel.kind === 'dip')) return null;
	const presses = pressesOf(readings);
	const profiles = readings.map(({ profile }) => profile);
	const start: Node = { states: profiles.map(begin), from: null, press: null };
	const met = new Set([keyOf(start.states)]);
	const queue: Node[] = [start];
	let best: { readonly node: Node; readonly seen: Seen[] } | null = null;
	let depth = most + 1;
	for (let at = 0; at < queue.length && met.size < MOST; at++) {
		const node = queue[at] as Node;
		if (stepsTo(node).length + 1 > Math.min(depth, most)) break;
		for (const press of presses) {
			if (node.states.some((state, i) => isBlind(profiles[i] as Profile, state, press))) continue;
			const states = node.states.map((state, i) => pressed(profiles[i] as Profile, state, press));
			const key = keyOf(states);
			if (met.has(key) || states.some((state, i) => isRisky(profiles[i] as Profile, state))) continue;
			met.add(key);
			const next: Node = { states, from: node, press };
			const seen = classes(readings, states);
			// of ways as short the one that tells the most apart
			if (seen.length > 1 && (!best || seen.length > best.seen.length)) {
				best = { node: next, seen };
				depth = stepsTo(next).length;
			}
			if (seen.length === 1) queue.push(next);
		}
	}
	return best && { steps: stepsTo(best.node), seen: best.seen, starts: startsOf(best.node, profiles[0] as Profile) };
}

const begin = (profile: Profile): FixtureState =>
	startFixture(profile, inputFrom(profile, { settings: {}, charge: 1, on: true }, true));

/** All that may be done: taps; and holds and waits only where some readings differ in what those do. */
function pressesOf(readings: readonly Reading[]): SettlePress[] {
	const panels = readings.map(({ profile }) => profile.panel as KeyedPanel);
	const laws = panels.map(lawOf);
	const differ = (of: (law: (typeof laws)[number]) => unknown): boolean =>
		new Set(laws.map((law) => JSON.stringify(of(law)))).size > 1;
	const keys = panels[0]?.keys ?? [];
	const taps = keys.map((key): SettlePress => ({ do: 'tap', key }));
	const holds: SettlePress[] = [];
	const waits: number[] = [];
	if (differ(({ long }) => long))
		for (const key of new Set(laws.flatMap(({ long }) => (long ? [long.key] : []))))
			holds.push({ do: 'hold', key, ms: MARGIN * Math.max(...laws.map(({ long }) => long?.after ?? 0)) });
	if (differ(({ stores }) => stores))
		waits.push(Math.max(...laws.map(({ stores }) => (stores === 'enter' ? 0 : stores.after))));
	if (differ(({ rests }) => rests)) waits.push(Math.max(...laws.map(({ rests }) => rests?.after ?? 0)));
	return [...taps, ...holds, ...waits.map((ms): SettlePress => ({ do: 'wait', ms: MARGIN * ms }))];
}

function pressed(profile: Profile, state: FixtureState, press: SettlePress): FixtureState {
	let at = state;
	const tell = (event: FixtureEvent): void => {
		at = stepFixture(profile, at, event);
	};
	/** Time goes by from one thing that is due to the next. */
	const wait = (ms: number): void => {
		const end = at.context.now + ms;
		for (let due = nextDeadline(profile, at); at.context.now < end; due = nextDeadline(profile, at))
			tell({ type: 'clock.advance', now: due === null || due <= at.context.now ? end : Math.min(end, due) });
	};
	if (press.do === 'wait') wait(press.ms);
	else {
		tell({ type: 'key.down', key: press.key });
		if (press.do === 'hold') wait(press.ms);
		tell({ type: 'key.up', key: press.key });
		wait(BETWEEN_MS);
	}
	return at;
}

/**
 * What nobody should do to find out how a panel acts: lock it, ask it to set all back, have it flash, or set what nobody knows. A value
 * that only stands on the display counts as set: the real one may act on it as it comes by, and store it by itself.
 */
function isRisky(profile: Profile, state: FixtureState): boolean {
	const panel = profile.panel as KeyedPanel;
	const is = panelOf(state);
	const item = itemAt(panel, state.context.path);
	const isFlat = lawOf(panel).shape === 'flat';
	if (is === 'confirming' || is === 'locked' || actingSettings(state).lock === 'on') return true;
	// a function of a flat panel acts as soon as it is come to
	if (isFlat && isUnknown(item)) return true;
	const draft = draftOf(state);
	const shown = 'setting' in item && (draft !== null || isFlat) ? item.setting : null;
	const acting = actingSettings(state);
	if (shown === null) return mayFlash(profile, acting, null);
	const value = draft ?? acting[shown];
	if (isIdle(value) || (shown === 'lock' && value === 'on')) return true;
	return mayFlash(profile, { ...acting, [shown]: value }, shown);
}

/** Whether nobody knows what an item does: on the real one it may do anything. */
const isUnknown = (item: MenuItem): boolean => item.kind === 'info' && item.shows === 'nothing';

/** Whether a press goes into what nobody knows. */
const isBlind = ({ panel }: Profile, { context: { path } }: FixtureState, press: SettlePress): boolean =>
	press.do !== 'wait' && press.key === 'set' && isUnknown(itemAt(panel as KeyedPanel, path));

/**
 * Whether the real one may flash with these settings. Its strobe rate and its programme may stand elsewhere than here: what would bring
 * out either is kept off whole.
 * @param shown the setting that stands on the display, null where none does
 */
function mayFlash({ programmes, panel }: Profile, { work, strobe, loss }: Settings, shown: SettingKey | null): boolean {
	const flashes = programmes.some(({ kind, answer }) => kind === 'strobe' || answer === 'flash');
	if (strobe > 0 || shown === 'strobe' || (flashes && (work === 'programme' || shown === 'programme'))) return true;
	if (flashes && shown === 'loss' && loss === 'programme') return true;
	return shown === 'work' && (work === 'held' || work === 'programme') && hasStrobe(panel as KeyedPanel);
}

const hasStrobe = ({ menu }: KeyedPanel): boolean =>
	menu
		.flatMap((item) => (item.kind === 'menu' ? item.items : [item]))
		.some((item) => 'setting' in item && item.setting === 'strobe');

/** All that may come of further presses: time is left out, since each press ends as long after the last. */
const keyOf = (states: readonly FixtureState[]): string =>
	JSON.stringify(
		states.map((state) => [
			panelOf(state),
			state.context.path,
			draftOf(state),
			state.context.settings,
			state.context.acting !== null,
			state.context.now - state.context.touchedAt > BETWEEN_MS,
		]),
	);

function classes(readings: readonly Reading[], states: readonly FixtureState[]): Seen[] {
	const by = new Map<string, Omit<Seen, 'answers'> & { answers: string[] }>();
	for (const [i, { answer, profile }] of readings.entries()) {
		const seen = seenOf(profile, states[i] as FixtureState);
		const key = JSON.stringify(seen);
		const same = by.get(key);
		if (same) same.answers.push(answer);
		else by.set(key, { ...seen, answers: [answer] });
	}
	return [...by.values()];
}

function seenOf(profile: Profile, state: FixtureState): Omit<Seen, 'answers'> {
	const display = displayOf(profile, state, state.context.now);
	const light = lightOf(state);
	if (display.kind !== 'keyed' || !display.lit) return { lines: [], light };
	const lines = display.lines.map((line) => line.replace(/^> /, '').trim()).filter((line) => line !== '');
	return { lines, light };
}

function lightOf(state: FixtureState): Seen['light'] {
	const drive = driveOf(state);
	const { work, held, programme, level } = actingSettings(state);
	if (drive === 'unpowered' || drive === 'line' || drive === 'following' || level === 0) return 'dark';
	return work === 'programme' ? { programme } : { held };
}

function stepsTo(node: Node): SettlePress[] {
	const steps: SettlePress[] = [];
	for (let at: Node | null = node; at?.press; at = at.from) steps.unshift(at.press);
	return steps;
}

/** Settings that are opened on the way: their values are read off the display, or moved from. */
function startsOf(node: Node, profile: Profile): SettingKey[] {
	const found = new Set<SettingKey>();
	for (let at: Node | null = node; at; at = at.from) {
		const [state] = at.states;
		if (!state) continue;
		const item = itemAt(profile.panel as KeyedPanel, state.context.path);
		if ('setting' in item && (draftOf(state) !== null || at === node)) found.add(item.setting);
		if (lightOf(state) !== 'dark') found.add('work');
	}
	return [...found].reverse();
}
