import type { Port, SheetCable } from '../../../shared/sheet/index.ts';

export interface PagePoint {
	readonly x: number;
	readonly y: number;
}

/** One cable as drawn: its way, and where an end hangs in the air. */
export interface CableLine {
	readonly id: string;
	readonly kind: SheetCable['kind'];
	readonly path: string;
	readonly loose: readonly PagePoint[];
}

/** How deep a cable hangs between two sockets: more the farther they are apart, within what there is room for. */
const SAG = { least: 8, perPixel: 0.08, most: 40 } as const;
/** Where an end with no socket hangs, from the other end, pixels. */
const LOOSE: PagePoint = { x: 30, y: 26 };

/**
 * Cables as curves between sockets.
 * @param spots centres of the sockets that are drawn, pixels
 */
export function cableLines(cables: readonly SheetCable[], spots: ReadonlyMap<Port, PagePoint>): CableLine[] {
	return cables.flatMap(({ id, kind, from, to }) => {
		const start = from === null ? undefined : spots.get(from);
		const end = to === null ? undefined : spots.get(to);
		const anchor = start ?? end;
		// lying on the floor: the list alone tells of it
		if (!anchor) return [];
		const loose = start && end ? [] : [{ x: anchor.x + (start ? LOOSE.x : -LOOSE.x), y: anchor.y + LOOSE.y }];
		const a = start ?? loose[0] ?? anchor;
		const b = end ?? loose[0] ?? anchor;
		return [{ id, kind, path: hang(a, b), loose }];
	});
}

function hang(a: PagePoint, b: PagePoint): string {
	const sag = Math.min(SAG.most, SAG.least + SAG.perPixel * Math.hypot(b.x - a.x, b.y - a.y));
	const low = Math.max(a.y, b.y) + sag;
	const point = ({ x, y }: PagePoint) => `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`;
	return `M${point(a)}C${point({ x: a.x + (b.x - a.x) * 0.1, y: low })} ${point({ x: b.x - (b.x - a.x) * 0.1, y: low })} ${point(b)}`;
}
