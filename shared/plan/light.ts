import { oncePer } from '../memo/index.ts';
import { type Beam, beamOf, candelaAt, illuminance, poolOnWall } from '../optics/index.ts';
import { profileOf, THROW } from './make.ts';
import type { Plan, PlanRow } from './types.ts';

/** Change of the light at a fixture's aim that is worth telling: a fifth is about what an eye sees (from memory). */
const WORTH_TELLING = 0.2;
/** Change of an overlap that is worth telling, metres (ours). */
const WORTH_METRES = 0.05;

/** What one fixture gives on the wall, by the sums of `shared/optics`; lengths in metres, all its light times tonight's look. */
export interface RowLight {
	readonly row: string;
	readonly throw: number;
	/** Whether nobody gave the throw; the tilt. Then it is as a new fixture has it: square on. */
	readonly assumed: { readonly throw: boolean; readonly tilt: boolean };
	/** Degrees up from square on; down is less than 0. */
	readonly tilt: number;
	/** Beam angle in degrees, and candela straight ahead. */
	readonly beam: number;
	readonly peak: number;
	/** Its pool to half the peak: across and up and down the wall. Infinity where it never ends. */
	readonly wide: number;
	readonly high: number;
	/** Height above the floor at which the middle of its beam lands; Infinity where it never does. */
	readonly aim: number;
	/** Whether that is off the wall: on the floor, or over its top. */
	readonly misses: boolean;
	/** Lux there of its own, and of all fixtures together; null where it never lands. */
	readonly own: number | null;
	readonly all: number | null;
	/** The next fixture to the right whose pool is at the same height, and how far the two run into each other: less than 0 for a gap. */
	readonly next: { readonly row: string; readonly overlap: number } | null;
}

const tiltOf = ({ tilt = 0 }: PlanRow): number => tilt;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Lux of one fixture at a point of the wall: `I(θ) cos i / r²` (CIE e-ILV 912), turned up or down about its lens. */
function luxOf({ place, tilt = 0 }: PlanRow, beam: Beam, x: number, y: number): number {
	const [aside, up, ahead] = [x - place.x, y - place.y, place.throw];
	const far = Math.hypot(aside, up, ahead);
	const turn = radians(tilt);
	const along = (up * Math.sin(turn) + ahead * Math.cos(turn)) / far;
	const angle = (Math.acos(Math.max(-1, Math.min(1, along))) * 180) / Math.PI;
	return illuminance(candelaAt(beam, angle), far, (Math.acos(ahead / far) * 180) / Math.PI);
}

function beamsOf(plan: Plan): ReadonlyMap<string, Beam> {
	const ids = [...new Set(plan.rows.map(({ profile }) => profile))];
	return new Map(
		ids.flatMap((id) => {
			const profile = profileOf(plan, id);
			return profile ? [[id, beamOf(profile)] as const] : [];
		}),
	);
}

/**
 * Lux at a point of the wall from all of a plan at tonight's look.
 * @param x metres along the wall @param y metres above the floor
 */
export function wallLux(plan: Plan, x: number, y: number, beams = beamsOf(plan)): number {
	const sum = plan.rows.reduce((lux, row) => {
		const beam = beams.get(row.profile);
		return beam ? lux + luxOf(row, beam, x, y) : lux;
	}, 0);
	return sum * plan.show.look;
}

/** What every fixture of a plan gives on the wall, in the order of the plan. A surface square to the throw; nothing off floor or ceiling. */
export const lightOf = oncePer((plan: Plan): RowLight[] => lightsOf(plan).map((light) => light.whole()));

/** A fixture's light by itself, and on demand what it comes to with all others: that takes a look at every one of them. */
export interface LoneLight extends Omit<RowLight, 'all' | 'next'> {
	whole(): RowLight;
}

/** As `lightOf`, each worked out whole only when it is asked for: of a large rig only a few are shown at once. */
export function lightsOf(plan: Plan): LoneLight[] {
	const beams = beamsOf(plan);
	const alone = plan.rows.flatMap((row) => {
		const beam = beams.get(row.profile);
		return beam ? [{ row, light: aloneOf(plan, row, beam) }] : [];
	});
	const order = alone.toSorted((a, b) => a.row.place.x - b.row.place.x);
	const places = new Map(order.map((each, i) => [each.row.id, i]));
	const whole = (row: PlanRow, light: (typeof alone)[number]['light']): RowLight => {
		const rest = order.slice((places.get(row.id) ?? 0) + 1);
		const next = rest.find((other) => Math.abs(other.light.aim - light.aim) < (other.light.high + light.high) / 2);
		const lands = light.own !== null;
		return {
			...light,
			all: lands ? wallLux(plan, row.place.x, light.aim, beams) : null,
			next: next
				? {
						row: next.row.id,
						overlap: (light.wide + next.light.wide) / 2 - (next.row.place.x - row.place.x),
					}
				: null,
		};
	};
	return alone.map(({ row, light }) => ({ ...light, whole: () => whole(row, light) }));
}

function aloneOf(plan: Plan, row: PlanRow, beam: Beam): Omit<RowLight, 'all' | 'next'> {
	const { place } = row;
	const tilt = tiltOf(row);
	const pool = poolOnWall(place.throw, beam.beam, Math.abs(tilt));
	const aim = place.y + Math.sign(tilt) * pool.aim;
	const lands = Number.isFinite(aim);
	return {
		row: row.id,
		throw: place.throw,
		assumed: { throw: place.throw === THROW, tilt: row.tilt === undefined },
		tilt,
		beam: beam.beam,
		peak: beam.peak,
		wide: pool.wide,
		high: pool.long,
		aim: tilt === 0 ? place.y : aim,
		misses: !lands || aim < 0 || aim > plan.hall.height,
		own: lands ? luxOf(row, beam, place.x, tilt === 0 ? place.y : aim) * plan.show.look : null,
	};
}

/** What is another at one fixture's aim once something moved. */
export interface LightChange {
	readonly row: string;
	/** Lux of all together at its aim; null where that is as good as the same. */
	readonly lux: { readonly was: number; readonly is: number } | null;
	/** Metres that its pool and the next run into each other, less than 0 for a gap; null where that is as good as the same. */
	readonly overlap: { readonly was: number; readonly is: number } | null;
}

/** What changes on the wall from one plan to another, for fixtures of both. */
export function lightChanges(before: Plan, now: Plan): LightChange[] {
	const was = new Map(lightOf(before).map((light) => [light.row, light]));
	return lightOf(now).flatMap((light): LightChange[] => {
		const old = was.get(light.row);
		if (!old) return [];
		const [a, b] = [old.all ?? 0, light.all ?? 0];
		const lux = Math.abs(b - a) >= WORTH_TELLING * Math.max(a, b) && a !== b ? { was: a, is: b } : null;
		const [gap, gapNow] = [old.next?.overlap, light.next?.overlap];
		const isKnown = gap !== undefined && gapNow !== undefined && Number.isFinite(gap) && Number.isFinite(gapNow);
		const overlap = isKnown && Math.abs(gapNow - gap) >= WORTH_METRES ? { was: gap, is: gapNow } : null;
		return lux || overlap ? [{ row: light.row, lux, overlap }] : [];
	});
}
