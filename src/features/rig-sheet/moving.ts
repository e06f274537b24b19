import type { SVGAttributes } from 'preact';
import { labelWords } from '#words/plan/index.ts';
import type { Plan } from '../../../shared/plan/index.ts';
import { placeAt, pointOf } from './linePlan.ts';

/** Moves a fixture of a plan along the room. @param x m */
export type Move = (row: string, x: number) => void;

/** A fixture under a finger or the mouse, and the place that it is over, m. */
export interface Held {
	readonly row: string;
	readonly x: number;
}

interface Moving {
	readonly plan: Plan;
	readonly row: string;
	readonly name: string;
	readonly held: Held | null;
	readonly hold: (held: Held | null) => void;
	readonly onMove: Move;
}

/** Metres that a press of an arrow key moves a fixture, and with Page Up and Page Down. */
const BY_KEY: Readonly<Record<string, number>> = {
	ArrowLeft: -0.5,
	ArrowDown: -0.5,
	ArrowRight: 0.5,
	ArrowUp: 0.5,
	PageDown: -5,
	PageUp: 5,
};

/**
 * What makes a dot of the line plan one that is dragged along the room, or moved by keys: it goes with the finger in half metres, and
 * the plan changes once, when it is let go. Escape, or a touch that the browser takes for scrolling, leaves it where it was.
 */
export function moving({ plan, row, name, held, hold, onMove }: Moving): SVGAttributes<SVGGElement> {
	const from = plan.rows.find(({ id }) => id === row)?.place.x ?? 0;
	const isHeld = held?.row === row;
	return {
		role: 'slider',
		tabindex: 0,
		'aria-label': name,
		'aria-valuemin': 0,
		'aria-valuemax': placeAt(plan, Number.POSITIVE_INFINITY),
		'aria-valuenow': from,
		'aria-valuetext': labelWords.metres(from),
		onPointerDown(event) {
			if (event.button !== 0) return;
			event.currentTarget.setPointerCapture(event.pointerId);
			hold({ row, x: from });
		},
		onPointerMove(event) {
			const svg = event.currentTarget.ownerSVGElement;
			const matrix = svg?.getScreenCTM();
			if (!isHeld || !matrix) return;
			const { x: at } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
			// a tap that trembles moves nothing
			if (Math.abs(at - pointOf(plan, held.x)) < 1) return;
			hold({ row, x: placeAt(plan, at) });
		},
		onPointerUp() {
			if (!isHeld) return;
			hold(null);
			if (held.x !== from) onMove(row, held.x);
		},
		onPointerCancel: () => hold(null),
		onKeyDown(event) {
			if (event.key === 'Escape') hold(null);
			const by = BY_KEY[event.key];
			if (by === undefined) return;
			event.preventDefault();
			onMove(row, Math.min(placeAt(plan, Number.POSITIVE_INFINITY), Math.max(0, from + by)));
			// where the order of the line changes its dot is put elsewhere on the page
			const dot = event.currentTarget;
			requestAnimationFrame(() => dot.focus());
		},
	};
}
