import { useEffect, useRef, useState } from 'preact/hooks';
import { isInputError } from '../../../shared/error/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import type { Rig, Sight } from '../../../sim/rig/index.ts';
import { openUnharmed } from '../../../sim/rig/trusted.ts';
import { errorTextLater } from '../../wording/index.ts';
import type { BenchRecord } from './kept.ts';
import { pastOf, playBack } from './play.ts';

/** How fast a bench's clock may run: as it is, a minute a second, ten minutes a second. */
export const SPEEDS = [1, 60, 600] as const;
export type Speed = (typeof SPEEDS)[number];

/** A sentence to be shown; `turn` goes up each time, so that the same words twice are seen to be said twice. */
export interface Announcement {
	readonly words: string;
	readonly turn: number;
}

/**
 * One rig and its history, as a page holds it. Everything goes in by `send`, `edit`, `tick` and their like; what is to be seen
 * is read from `rig` and `look` whenever `version` has gone up. Nonsense never throws here: it becomes a sentence in `said`.
 */
export interface RigStore {
	readonly rig: Rig;
	/** Goes up when something a person could see may have changed. */
	readonly version: number;
	readonly said: Announcement | null;
	readonly speed: Speed;
	readonly running: boolean;
	readonly canUndo: boolean;
	/** Calls back when `version`, `said` or the clock's setting changes. Returns the way to stop. */
	subscribe(listener: () => void): () => void;
	/** Returns whether the rig took it. */
	send(event: RigEvent): boolean;
	/** As `send`, for a slider on the move: takes the place of the value before, so that one move is one step. `rest` ends the move. */
	slide(event: RigEvent): boolean;
	rest(): void;
	/** What is seen of a fixture, looked at once a version; the very same object for as long as nothing of it has changed. */
	look(fixture: string): Sight;
	/** Has whoever keeps the page's time bring the rig's clock up, by `tick`, before anything is done. Returns the way to stop. */
	timedBy(bring: () => void): () => void;
	/** The rig's clock brought up to this moment: for who reads the log, or the time, of a bench that has been left alone. */
	upToNow(): void;
	/** Lets real time go by, whole milliseconds; the rig's clock moves by it times `speed`, unless it stands. */
	tick(milliseconds: number): void;
	setClock(running: boolean, speed: Speed): void;
	/** Changes the sheet and plays the log onto it again, as far as it still fits. */
	edit(change: (sheet: RigSheet) => RigSheet): boolean;
	/** Puts another rig in the place of this one. */
	open(kept: BenchRecord): boolean;
	/** The sheet as it was laid out, with nothing done yet. */
	restart(): void;
	undo(): void;
	say(words: string | null): void;
}
/** Milliseconds after which what changes by itself is looked at again: batteries, and light that moves. */
const SLOW_LOOK_MS = 1000;

/** What a fixture's back shows, as one text to compare. */
export const backOf = ({ display, lamps }: Sight): string => JSON.stringify([display, lamps]);

const isSame = (a: Sight, b: Sight): boolean => JSON.stringify(a) === JSON.stringify(b);

/** A store on a sheet, with a log played onto it at once. @throws InputError where the log does not fit the sheet, as `playBack` does */
export const rigStore = (sheet: RigSheet, log: readonly RigEvent[] = []): RigStore => storeOf(playBack(sheet, log));

/** A store around a rig that is open. */
export function storeOf(open: Rig): RigStore {
	let sliding: string | null = null;
	const past = pastOf(open);
	const shown = showing();
	const clock = clockOf(() => past.rig, shown);
	const put = (next: () => Rig) =>
		shown.attempt(() => {
			past.put(next());
			sliding = null;
		});

	const store: RigStore = {
		get rig() {
			return past.rig;
		},
		get version() {
			return shown.version;
		},
		get said() {
			return shown.said;
		},
		get speed() {
			return clock.speed;
		},
		get running() {
			return clock.running;
		},
		get canUndo() {
			return past.canUndo;
		},
		subscribe: shown.subscribe,
		say: shown.say,
		look: (fixture) => shown.look(past.rig, fixture),
		timedBy: clock.timedBy,
		upToNow: clock.upToNow,
		tick: clock.tick,
		setClock: clock.setClock,
		send(event) {
			clock.upToNow();
			sliding = null;
			return shown.attempt(() => past.send(event));
		},
		slide(event) {
			clock.upToNow();
			const what = JSON.stringify({ ...event, level: 0 });
			const before = sliding === what ? past.before : undefined;
			if (before) return shown.attempt(() => past.sendAnew(before, event));
			const took = store.send(event);
			if (took) sliding = what;
			return took;
		},
		rest() {
			sliding = null;
		},
		edit: (change) => put(() => playBack(change(past.rig.sheet), past.rig.log, { whatFits: true })),
		open: ({ sheet, log }) => put(() => playBack(sheet, log)),
		restart() {
			put(() => openUnharmed(past.rig.sheet));
		},
		undo() {
			shown.attempt(() => {
				past.undo();
				sliding = null;
			});
		},
	};
	return store;
}

/** What a store shows, and those it tells of it. */
interface Showing extends Pick<RigStore, 'version' | 'said' | 'subscribe' | 'say'> {
	look(rig: Rig, fixture: string): Sight;
	tell(): void;
	/** Something a person could see may have changed. */
	changed(): void;
	/** Does something that may be nonsense; a bug is let through. */
	attempt(act: () => void): boolean;
}

function showing(): Showing {
	let version = 1;
	let said: Announcement | null = null;
	let attempts = 0;
	const seen = new Map<string, { readonly sight: Sight; readonly at: number }>();
	const listeners = new Set<() => void>();
	const tell = () => {
		for (const listener of [...listeners]) listener();
	};
	const changed = () => {
		version++;
		tell();
	};
	const say = (words: string | null) => {
		said = words === null ? null : { words, turn: (said?.turn ?? 0) + 1 };
		tell();
	};
	return {
		get version() {
			return version;
		},
		get said() {
			return said;
		},
		subscribe(listener) {
			listeners.add(listener);
			return () => listeners.delete(listener);
		},
		look(rig, fixture) {
			const before = seen.get(fixture);
			if (before?.at === version) return before.sight;
			const now = rig.look(fixture);
			const sight = before && isSame(before.sight, now) ? before.sight : now;
			seen.set(fixture, { sight, at: version });
			return sight;
		},
		tell,
		changed,
		say,
		attempt(act) {
			try {
				act();
			} catch (error) {
				if (!isInputError(error)) throw error;
				const turn = ++attempts;
				// its words come a moment later: what was done meanwhile has made them old
				void errorTextLater(error).then((words) => turn === attempts && say(words));
				return false;
			}
			attempts++;
			said = null;
			changed();
			return true;
		},
	};
}

type StoreClock = Pick<RigStore, 'speed' | 'running' | 'timedBy' | 'upToNow' | 'tick' | 'setClock'>;

/** The clock of a store: how real time becomes the rig's, and when what that changed is looked at. */
function clockOf(rigNow: () => Rig, shown: Showing): StoreClock {
	let bringUp: (() => void) | null = null;
	let speed: Speed = 1;
	let running = true;
	/** Milliseconds since the last look at what changes by itself, and the version that was looked at. */
	let unseen = 0;
	let lookedAt = shown.version;
	const upToNow = () => bringUp?.();
	return {
		get speed() {
			return speed;
		},
		get running() {
			return running;
		},
		upToNow,
		timedBy(bring) {
			bringUp = bring;
			return () => {
				if (bringUp === bring) bringUp = null;
			};
		},
		tick(milliseconds) {
			if (!running || milliseconds <= 0) return;
			const rig = rigNow();
			const before = [...rig.gear.units.values()];
			rig.wait(milliseconds * speed);
			if (shown.version !== lookedAt) unseen = 0;
			lookedAt = shown.version;
			unseen += milliseconds;
			let at = 0;
			for (const unit of rig.gear.units.values()) if (unit !== before[at++]) return shown.changed();
			if (unseen < SLOW_LOOK_MS) return;
			unseen = 0;
			for (const [id, unit] of rig.gear.units) {
				const { light } = shown.look(rig, id);
				// a battery runs down with nothing else happening: its lamp and its display tell
				const spent = unit.profile.power.battery && backOf(shown.look(rig, id)) !== backOf(rig.look(id));
				if (spent || light.moving || light.flicker) return shown.changed();
			}
		},
		setClock(nextRunning, nextSpeed) {
			upToNow();
			running = nextRunning;
			speed = nextSpeed;
			shown.tell();
		},
	};
}

/** Draws the component again whenever the store has something new to show. Returns its version. */
export function useRig(store: RigStore): number {
	const [version] = useWatched(store, () => [store.version, store.said, store.running, store.speed]);
	return version;
}

/**
 * What a component reads of something that tells of its changes; it is drawn again only when any of it is another than it was.
 * @param read plain values, or objects that stay the same for as long as nothing in them changes
 */
export function useWatched<const T extends readonly unknown[]>(
	source: { subscribe(listener: () => void): () => void },
	read: () => T,
): T {
	const [, turn] = useState(0);
	const drawn = read();
	const latest = useRef({ read, drawn });
	latest.current = { read, drawn };
	useEffect(() => {
		const hear = () => {
			const { read: readNow, drawn: before } = latest.current;
			const now = readNow();
			if (now.length !== before.length || now.some((each, i) => each !== before[i])) turn((n) => n + 1);
		};
		// what happened between the drawing and now is heard of too
		hear();
		return source.subscribe(hear);
	}, [source]);
	return drawn;
}
