import type { RigStore } from './store.ts';

/** Longest step of real time taken in one go, ms: a page that was held up does not leap. */
const LONGEST_STEP_MS = 250;

/** Called once a frame after the clock has moved; `atMs` is the page's own time and never falls. */
export type OnFrame = (atMs: number) => void;

/**
 * Runs a store's clock by real time while the page is in sight (browsers give no frames to a page that is not).
 * @returns the way to stop it
 */
export function runClock(store: RigStore, onFrame: OnFrame): () => void {
	let last: number | null = null;
	// the rig's clock goes by whole milliseconds: what is over waits for the next frame
	let over = 0;
	let frame = 0;
	const step = (at: number) => {
		if (last !== null) {
			const elapsed = Math.min(LONGEST_STEP_MS, Math.max(0, at - last)) + over;
			const whole = Math.floor(elapsed);
			over = elapsed - whole;
			store.tick(whole);
		}
		last = at;
		onFrame(at);
		frame = requestAnimationFrame(step);
	};
	frame = requestAnimationFrame(step);
	return () => cancelAnimationFrame(frame);
}
