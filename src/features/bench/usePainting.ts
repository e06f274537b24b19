import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Rig, Sight } from '../../../sim/rig/index.ts';
import { useBench } from './view.ts';
import { BLANK, beatAt, colourAt, isJumpy, isRestless, paint, type WallPicture, withJump } from './wall.ts';

/** How the wall is drawn: as it is within the flash limit, at the real rate, or standing still. */
export type Pace = 'limited' | 'real' | 'still';

/** Least time between two pictures of a wall that moves, ms: smooth enough for a fade, and half the work. */
const LEAST_MS = 30;

/**
 * Paints the wall's pools frame by frame, past Preact: only a pool whose colour changed is touched, and only lamps that change
 * by themselves are looked at again. While something is still to be shown it asks for the next frame. Elements to paint carry `data-pool` and take their colour from the attribute `color`.
 */
export function usePainting(box: RefObject<SVGSVGElement>, picture: WallPicture, pace: Pace): void {
	const { store, onFrame } = useBench();
	const painting = useRef(BLANK);
	const jumped = useRef<readonly number[]>([]);
	useEffect(() => {
		const { sheet } = store.rig;
		const shown = new Map<Element, string>();
		const elements = [...(box.current?.querySelectorAll('[data-pool]') ?? [])];
		const stills = new Map<string, readonly unknown[]>();
		let drawn = -1;
		let pending = false;
		let paintedAt = Number.NEGATIVE_INFINITY;
		let lastBeat = Number.NaN;

		/** Asks for the next frame where what is wanted is not shown yet. */
		const paintNow = (): number | undefined => {
			// the frame's own time may be well past when the page is held up
			const atMs = performance.now();
			const { rig } = store;
			// laid out anew: the picture of it comes with the next draw
			if (rig.sheet !== sheet) return undefined;
			const fresh = drawn !== store.version;
			const restless = picture.lamps.filter(({ fixture }) => isRestless(store.look(fixture)));
			if (!fresh && !pending && (restless.length === 0 || pace === 'still')) return undefined;
			if (!fresh && pace === 'limited' && atMs - paintedAt < LEAST_MS) return 0;
			paintedAt = atMs;
			drawn = store.version;
			const beat = beatAt(atMs);
			const jump = beat === lastBeat ? null : withJump(jumped.current, atMs);
			let anyJumps = false;
			const wanted = new Map<string, string>();
			for (const { fixture, pools } of picture.lamps) {
				const seen = store.look(fixture);
				const jumps = isJumpy(seen) && pace === 'limited';
				// between beats what jumps stays as it is drawn
				anyJumps ||= jumps;
				const sight = jumps && !jump ? null : sightFor(rig, fixture, seen, pace, stills);
				for (const { key, cell } of pools) {
					const colour =
						pace === 'still'
							? sight?.light.cells[cell]?.colour
							: sight && colourAt(sight, cell, jumps ? beat : atMs, pace === 'real');
					wanted.set(key, colour ?? painting.current.pools.get(key)?.shown ?? '#000000');
				}
			}
			if (jump && anyJumps) jumped.current = jump;
			if (jump) lastBeat = beat;
			if (pace === 'real') {
				painting.current = BLANK;
				for (const element of elements) show(element, wanted.get(keyOf(element)));
				return undefined;
			}
			painting.current = paint(painting.current, atMs, wanted);
			pending = false;
			for (const [key, { shown: colour }] of painting.current.pools) pending ||= colour !== wanted.get(key);
			for (const element of elements) show(element, painting.current.pools.get(keyOf(element))?.shown);
			return pending ? 0 : undefined;
		};
		const show = (element: Element, colour = '#000000') => {
			if (shown.get(element) === colour) return;
			shown.set(element, colour);
			element.setAttribute('color', colour);
		};
		paintNow();
		return onFrame(paintNow);
	}, [store, onFrame, picture, pace, box]);
}

const keyOf = (element: Element): string => element.getAttribute('data-pool') ?? '';

/** What to draw of a lamp; null where a lamp that moves stands still and nothing but time has changed for it. */
function sightFor(
	rig: Rig,
	fixture: string,
	seen: Sight,
	pace: Pace,
	stills: Map<string, readonly unknown[]>,
): Sight | null {
	if (!isRestless(seen)) {
		stills.delete(fixture);
		return seen;
	}
	if (pace !== 'still') return rig.look(fixture);
	const { units, desk, receptions } = rig.gear;
	const now = [units.get(fixture), desk, receptions];
	const before = stills.get(fixture);
	stills.set(fixture, now);
	return before?.every((part, i) => part === now[i]) ? null : seen;
}

/** Whether the person's device asks for less motion; follows it when that changes. */
export function useLessMotion(): boolean {
	const [less, set] = useState(() => matchMedia('(prefers-reduced-motion: reduce)').matches);
	useEffect(() => {
		const query = matchMedia('(prefers-reduced-motion: reduce)');
		const hear = () => set(query.matches);
		hear();
		query.addEventListener('change', hear);
		return () => query.removeEventListener('change', hear);
	}, []);
	return less;
}
