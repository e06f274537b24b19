import { lookUnder } from '../../../sim/rig/index.ts';
import { backOf, type RigStore } from './store.ts';

/** How closely it is found when a battery's lamp or figure turns, ms of real time; no closer than a store looks for it. */
const CLOSE_MS = 1000;

const NO_LEVELS: ReadonlyMap<number, Uint8Array> = new Map();

/**
 * In how many ms of real time something about the rig changes by itself, as its clock is set: 0 while light moves, flashes or
 * flickers, or a key is down; null where nothing will. Between what happens in fixtures (a display sleeps, data counts as lost,
 * a battery ends) only charge goes on, and the moment at which its lamp or its figure turns is looked for ahead.
 */
export function nextChange(store: RigStore): number | null {
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
