/** A part of a page, as parts of its width and height from its top left: 0 to 1. */
export interface Box {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
}

export interface Point {
	readonly x: number;
	readonly y: number;
}

export const WHOLE: Box = { left: 0, top: 0, right: 1, bottom: 1 };

/** Least width and height: less is a slip of the hand. */
const LEAST = 0.02;
const within = (value: number, least = 0, most = 1): number => Math.min(most, Math.max(least, value));

/** The box between two corners, whichever they are. */
export function boxBetween(one: Point, other: Point): Box {
	const [left, right] = [within(Math.min(one.x, other.x), 0, 1 - LEAST), within(Math.max(one.x, other.x))];
	const [top, bottom] = [within(Math.min(one.y, other.y), 0, 1 - LEAST), within(Math.max(one.y, other.y))];
	return { left, top, right: Math.max(right, left + LEAST), bottom: Math.max(bottom, top + LEAST) };
}

/** The box as it stands after it was moved; it stops at the page's edges and keeps its size. */
function moved({ left, top, right, bottom }: Box, x: number, y: number): Box {
	const byX = within(x, -left, 1 - right);
	const byY = within(y, -top, 1 - bottom);
	return { left: left + byX, top: top + byY, right: right + byX, bottom: bottom + byY };
}

/** The box with its lower right corner moved. */
const sized = (box: Box, x: number, y: number): Box => ({
	...box,
	right: within(box.right + x, box.left + LEAST),
	bottom: within(box.bottom + y, box.top + LEAST),
});

/** How far an arrow key goes, as a part of the page. */
const STEP = 0.02;
const WAYS: Readonly<Record<string, readonly [number, number]>> = {
	ArrowLeft: [-STEP, 0],
	ArrowRight: [STEP, 0],
	ArrowUp: [0, -STEP],
	ArrowDown: [0, STEP],
};

/** What a key makes of the box: arrows move it, and with Shift they size it. Null for any other key. */
export function afterKey(box: Box, key: string, hasShift: boolean): Box | null {
	const way = WAYS[key];
	if (!way) return null;
	return hasShift ? sized(box, ...way) : moved(box, ...way);
}
