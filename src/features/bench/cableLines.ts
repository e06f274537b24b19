import type { Port, SheetCable } from '../../../shared/sheet/index.ts';
import { driveOf } from '../../../sim/fixture/index.ts';
import type { Rig, Sight } from '../../../sim/rig/index.ts';

export interface PagePoint {
	readonly x: number;
	readonly y: number;
}

/** One cable as drawn: its way, and where an end hangs in the air. */
export interface CableLine {
	readonly id: string;
	readonly kind: SheetCable['kind'];
	readonly path: string;
	/** The middle of it. */
	readonly middle: PagePoint;
	/** Which way data goes there, degrees clockwise from the right: out of the end that is not an input. */
	readonly turn: number;
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
		const low = lowest(a, b);
		const turn = Math.round((Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI) + (isInput(to) ? 0 : 180);
		// the middle of a curve of the third degree: an eighth of its ends and three of what pulls it
		const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 8 + 0.75 * low };
		return [{ id, kind, path: hang(a, b, low), middle, turn, loose }];
	});
}

/** What goes through a cable, by the data indicators of the fixtures at its ends. */
export type Carried = 'steady' | 'flickering' | 'none' | 'stops';

/**
 * What goes through each cable, as who walks the row sees it: the fixture it leads to shows data, or waits for it. It `stops` where
 * what it comes from has data, or gives it. What has no indicator, or is switched off, says nothing: null.
 * @param lampOf what the data indicator of a fixture does
 */
export function carriedIn(
	{ cables, boxes, desk, units }: Pick<Rig['gear'], 'cables' | 'boxes' | 'desk' | 'units'>,
	lampOf: (fixture: string) => Sight['lamps']['data'],
): (Carried | null)[] {
	/** Whether data comes out of a socket. @param past boxes that were asked on the way: a ring of them gives none */
	const gives = (port: Port, past: readonly string[] = []): boolean => {
		const [owner = '', socket] = port.split(':');
		const unit = units.get(owner);
		if (unit) return HAS.includes(lampOf(owner)) || driveOf(unit.state) === 'leading';
		const box = boxes.find(({ id }) => id === owner);
		if (!box) return desk?.outputs.some(({ id, on }) => id === socket && on) ?? false;
		if (!box.on || past.includes(owner)) return false;
		const fed = cables.map(endsOf).find((ends) => ends?.into === `${owner}:in`);
		return fed !== undefined && fed !== null && gives(fed.outOf, [...past, owner]);
	};
	return cables.map((cable) => {
		const ends = endsOf(cable);
		const fixture = ends && ownerOf(ends.into);
		if (!ends || fixture === null || !units.has(fixture)) return null;
		const lamp = lampOf(fixture);
		if (lamp === 'out') return null;
		return lamp !== 'blinking' ? lamp : gives(ends.outOf) ? 'stops' : 'none';
	});
}

const HAS: readonly Sight['lamps']['data'][] = ['steady', 'flickering'];

/** The input a cable leads to, and what it comes from; null where it hangs loose, or joins what does not go together. */
function endsOf({ from, to }: SheetCable): { readonly into: Port; readonly outOf: Port } | null {
	if (from === null || to === null) return null;
	return isInput(to) ? { into: to, outOf: from } : isInput(from) ? { into: from, outOf: to } : null;
}

const isInput = (port: Port | null): port is Port => port?.endsWith(':in') ?? false;
const ownerOf = (port: Port): string => port.slice(0, port.indexOf(':'));

const lowest = (a: PagePoint, b: PagePoint): number =>
	Math.max(a.y, b.y) + Math.min(SAG.most, SAG.least + SAG.perPixel * Math.hypot(b.x - a.x, b.y - a.y));

function hang(a: PagePoint, b: PagePoint, low: number): string {
	const point = ({ x, y }: PagePoint) => `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`;
	return `M${point(a)}C${point({ x: a.x + (b.x - a.x) * 0.1, y: low })} ${point({ x: b.x - (b.x - a.x) * 0.1, y: low })} ${point(b)}`;
}
