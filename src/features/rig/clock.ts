import { lookUnder } from '../../../sim/rig/index.ts';
import { backOf, type RigStore } from './store.ts';

/** Longest step of real time taken in one go while frames come, ms: a page that was held up does not leap. */
const LONGEST_STEP_MS = 250;
/** Longest a timer may be set for, ms. */
const LONGEST_REST_MS = 2_000_000_000;

/**
 * Called when the clock has moved; `atMs` is the page's own time and never falls. It hands back in how many ms it wants to be
 * called again though nothing happens: 0 for the next frame, nothing for not at all.
 */
export type OnFrame = (atMs: number) => number | undefined;

/** A running clock. */
export interface RigClock {
	/** Has a frame asked for: something new is to be drawn. */
	wake(): void;
	stop(): void;
}

/**
 * Runs a store's clock by real time while the page is in sight. Frames are asked for only while something moves or is still to be
 * drawn. Else it rests: no frame, and one timer at most, for the next moment at which something changes by itself; and what is
 * done to the rig meanwhile finds it brought up to that moment.
 */
export function runClock(store: RigStore, onFrame: OnFrame): RigClock {
	/** The page's time up to which the rig has been brought; null while the page is out of sight. */
	let last: number | null = null;
	// the rig's clock goes by whole milliseconds: what is over waits for the next time
	let over = 0;
	let frame = 0;
	let timer = 0;
	/** Longest step that may be taken from `last`. */
	let longest = LONGEST_STEP_MS;

	const bring = (at: number) => {
		if (last === null) return;
		const elapsed = Math.min(longest, Math.max(0, at - last)) + over;
		const whole = Math.floor(elapsed);
		over = elapsed - whole;
		longest = Math.max(LONGEST_STEP_MS, longest - Math.max(0, at - last));
		last = Math.max(last, at);
		store.tick(whole);
	};
	const wake = () => {
		window.clearTimeout(timer);
		timer = 0;
		if (frame === 0 && !document.hidden) frame = requestAnimationFrame(step);
	};
	const step = (at: number) => {
		frame = 0;
		if (last === null) last = at;
		else bring(at);
		longest = LONGEST_STEP_MS;
		const wanted = onFrame(at);
		const due = Math.min(wanted ?? Number.POSITIVE_INFINITY, nextChange(store) ?? Number.POSITIVE_INFINITY);
		// asked for already by what the step brought about
		if (frame !== 0) return;
		if (due <= 0) wake();
		else rest(due);
	};
	const rest = (due: number) => {
		longest = due + LONGEST_STEP_MS;
		if (due < Number.POSITIVE_INFINITY) timer = window.setTimeout(wake, Math.min(due, LONGEST_REST_MS));
	};
	// no time goes by for a page that nobody sees
	const hear = () => {
		if (document.hidden) {
			bring(performance.now());
			cancelAnimationFrame(frame);
			window.clearTimeout(timer);
			frame = 0;
			last = null;
		} else wake();
	};
	const letGo = store.timedBy(() => bring(performance.now()));
	const unsubscribe = store.subscribe(wake);
	document.addEventListener('visibilitychange', hear);
	wake();
	return {
		wake,
		stop() {
			cancelAnimationFrame(frame);
			window.clearTimeout(timer);
			letGo();
			unsubscribe();
			document.removeEventListener('visibilitychange', hear);
		},
	};
}

/** How closely it is found when a battery's lamp or figure turns, ms of real time; no closer than a store looks for it. */
const CLOSE_MS = 1000;

const NO_LEVELS: ReadonlyMap<number, Uint8Array> = new Map();

/**
 * In how many ms of real time something about the rig changes by itself, as its clock is set: 0 while light moves, flashes or
 * flickers, or a key is down; null where nothing will. Between what happens in fixtures (a display sleeps, data counts as lost,
 * a battery ends) only charge goes on, and the moment at which its lamp or its figure turns is looked for ahead.
 */
function nextChange(store: RigStore): number | null {
	const { rig, running, speed } = store;
	const { units, desk } = rig.gear;
	for (const [id, { state }] of units) {
		const { light } = store.look(id);
		if (light.moving || light.flashes > 0 || light.flicker || state.context.held) return 0;
	}
	if (!running) return null;
	let next = Number.POSITIVE_INFINITY;
	for (const { deadline } of units.values()) if (deadline !== null) next = Math.min(next, deadline - rig.now);
	// a battery that runs down or charges always has an end: without one, no charge goes on
	if (next === Number.POSITIVE_INFINITY) return null;
	const levels = desk?.levels ?? NO_LEVELS;
	for (const [id, { profile }] of units) {
		if (!profile.power.battery) continue;
		const now = backOf(store.look(id));
		const turned = (ms: number) => backOf(lookUnder(rig, id, levels, ms)) !== now;
		if (!turned(next - 1)) continue;
		let still = 0;
		while (next - still > CLOSE_MS * speed) {
			const middle = Math.floor((still + next) / 2);
			if (turned(middle)) next = middle;
			else still = middle;
		}
		next = Math.max(next, CLOSE_MS * speed);
	}
	return Math.max(1, Math.ceil(next / speed));
}
