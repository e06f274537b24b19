import { poolDiameter } from '../../../shared/optics/index.ts';
import { profileFor, type RigSheet } from '../../../shared/sheet/index.ts';

/** Metres from the floor's edge to the bottom of the picture, and from the frieze to its top. */
const FLOOR = 0.95;
/** How high up the wall lamps are aimed, as a share of its height: from the floor, and from overhead. */
const AIM = { floor: 0.44, overhead: 0.52 } as const;
/** Width of a bar from its first cell to its last, metres. */
const BAR = 1;
/** Steepest ray that still counts as meeting the wall, degrees. */
const STEEPEST = 80;

/** One pool of light on the wall, in metres from its lower left corner: an ellipse to half the peak, and to a tenth. */
export interface Pool {
	readonly key: string;
	readonly fixture: string;
	/** Cell, from 0. */
	readonly cell: number;
	/** Where the lens is. */
	readonly lens: readonly [x: number, y: number];
	readonly x: number;
	/** Centre and half height to a tenth of the peak, and half width. */
	readonly y: number;
	readonly rx: number;
	readonly ry: number;
	/** How far out of the ellipse (0..1) half the peak lies. */
	readonly half: number;
	/** Height at which the middle of the beam meets the wall: where it is brightest. */
	readonly peak: number;
}

export interface WallLamp {
	readonly fixture: string;
	/** Its number in the row, from 1. */
	readonly number: number;
	readonly x: number;
	readonly y: number;
	readonly overhead: boolean;
	readonly shape: 'wash' | 'bar';
	readonly pools: readonly Pool[];
}

export interface WallPicture {
	/** Metres. */
	readonly width: number;
	readonly height: number;
	readonly floor: number;
	readonly lamps: readonly WallLamp[];
}

const degrees = (radians: number): number => (radians * 180) / Math.PI;
const radians = (angle: number): number => (angle * Math.PI) / 180;

/**
 * Half width and the lowest and highest point, metres, of the pool that a round beam makes on a wall it meets at a slant.
 * @param away metres from lens to wall
 * @param up degrees the lamp is tipped up
 * @param angle degrees from side to side of the beam
 */
export function slantedPool(away: number, up: number, angle: number): { half: number; low: number; high: number } {
	const ray = (at: number) => away * Math.tan(radians(Math.max(-STEEPEST, Math.min(STEEPEST, at))));
	const slant = away / Math.cos(radians(Math.min(STEEPEST, Math.abs(up))));
	return { half: poolDiameter(slant, angle) / 2, low: ray(up - angle / 2), high: ray(up + angle / 2) };
}

/** Where everything on the wall stands; how it shines is another matter. */
export function wallOf(sheet: RigSheet): WallPicture {
	const { width, height } = sheet.hall;
	const lamps = sheet.fixtures.map(({ id, profile: profileId, place }, at): WallLamp => {
		const profile = profileFor(sheet, profileId);
		const { beam, field } = profile.optics;
		const y = place.overhead ? place.y : place.y + 0.3;
		const target = height * (place.overhead ? AIM.overhead : AIM.floor);
		const up = degrees(Math.atan((target - y) / place.throw));
		const outer = slantedPool(place.throw, up, field);
		const inner = slantedPool(place.throw, up, beam);
		const step = profile.cells > 1 ? BAR / (profile.cells - 1) : 0;
		return {
			fixture: id,
			number: at + 1,
			x: place.x,
			y,
			overhead: place.overhead,
			shape: profile.shape,
			pools: Array.from({ length: profile.cells }, (_, cell) => {
				const x = place.x + (cell - (profile.cells - 1) / 2) * step;
				return {
					key: `${id}.${cell}`,
					fixture: id,
					cell,
					lens: [x, y],
					x,
					y: y + (outer.low + outer.high) / 2,
					rx: outer.half,
					ry: (outer.high - outer.low) / 2,
					half: inner.half / outer.half,
					peak: target,
				};
			}),
		};
	});
	return { width, height, floor: FLOOR, lamps };
}
