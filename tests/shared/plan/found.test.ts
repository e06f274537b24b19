import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	foundOff,
	isOff,
	type Plan,
	type PlanRow,
	packed,
	planSheet,
	rowFootprint,
	shortestWalk,
} from '../../../shared/plan/index.ts';
import { bundledProfile } from '../../../shared/profile/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import { runs } from '../../runs.ts';
import { plans } from './plans.ts';

function lengthOf(rows: readonly PlanRow[], from: number): number {
	let [sum, at] = [0, from];
	for (const { place } of rows) {
		sum += Math.abs(place.x - at);
		at = place.x;
	}
	return sum;
}

function ordersOf<T>(list: readonly T[]): T[][] {
	if (list.length < 2) return [[...list]];
	return list.flatMap((one, i) => ordersOf(list.toSpliced(i, 1)).map((rest) => [one, ...rest]));
}

/** A plan, and what some of its panels were found to show. */
const found = plans.chain((drawn) => {
	const plan = { ...packed(drawn).plan, source: 'desk' as const };
	const shows = plan.rows.map(({ profile, mode, address }) =>
		fc.oneof(
			fc.constant(null),
			fc.constant({ mode, address }),
			fc.record({
				mode: fc.constantFrom(...(bundledProfile(profile)?.modes ?? []).map(({ id }) => id)),
				address: fc.oneof(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 500, max: 512 })),
			}),
		),
	);
	return fc
		.tuple(...shows)
		.map((all): Plan => ({ ...plan, rows: plan.rows.map((row, i) => ({ ...row, shows: all[i] ?? null })) }));
});

describe('the walk along the room', () => {
	it('is as short as the shortest of all orders, and passes each once', () => {
		fc.assert(
			fc.property(plans, fc.integer({ min: -3, max: 45 }), ({ rows }, from) => {
				const some = rows.slice(0, 6);
				const walk = shortestWalk(some, from);
				expect(walk.map(({ id }) => id).toSorted()).toEqual(some.map(({ id }) => id).toSorted());
				expect(lengthOf(walk, from)).toBe(Math.min(...ordersOf(some).map((order) => lengthOf(order, from))));
			}),
			{ numRuns: runs(60) },
		);
	});
});

describe('the rig against the desk', () => {
	it('tells each light that stands otherwise, and channel by channel what moves it', () => {
		fc.assert(
			fc.property(found, (plan) => {
				const off = foundOff(plan);
				expect(off.map(({ row }) => row.id)).toEqual(plan.rows.filter(isOff).map(({ id }) => id));
				for (const { row, shows, own, movedBy, from, to, runsOut } of off) {
					const span = (address: number, mode: string, profile: string): number[] =>
						Array.from({ length: rowFootprint(plan, { profile, mode }) }, (_, i) => address + i);
					const heard = new Set(span(shows.address, shows.mode, row.profile));
					const its = span(row.address, row.mode, row.profile);
					const reached = its.filter((slot) => heard.has(slot)).length;
					expect(own).toBe(reached === 0 ? 'none' : reached === its.length ? 'all' : 'some');
					const others = plan.rows.filter(
						(other) =>
							other !== row &&
							other.universe === row.universe &&
							span(other.address, other.mode, other.profile).some((slot) => heard.has(slot)),
					);
					expect(movedBy).toEqual(others.map(({ id }) => id));
					expect([from, to, runsOut]).toEqual([
						shows.address,
						Math.min(512, Math.max(...heard)),
						Math.max(...heard) > 512,
					]);
				}
			}),
			{ numRuns: runs(100) },
		);
	});

	// a second way: on the simulated rig, with nothing up at the desk but one light's channels
	it('is what the lights do: one of which nothing reaches stays dark, one that another’s channels move may not', () => {
		fc.assert(
			fc.property(found, (plan) => {
				for (const { row, movedBy, own } of foundOff(plan).slice(0, 2)) {
					const stands = {
						...plan,
						rows: plan.rows.map((each) => (each.id === row.id ? { ...row, ...row.shows } : each)),
					};
					const { desk, ...sheet } = planSheet(stands);
					if (!desk) continue;
					for (const other of plan.rows) {
						const end = other.address + rowFootprint(plan, other) - 1;
						const levels = Array.from({ length: end - other.address + 1 }, (_, i) => other.address + i)
							.filter((slot) => slot <= 512)
							.map((slot) => ({ universe: other.universe, slot, level: 255 }));
						const rig = openRig({ ...sheet, desk: { ...desk, levels } });
						rig.wait(1500);
						const slots = rig.gear.receptions.get(row.id);
						if (slots?.quality !== 'clean') continue;
						const isLit = rig.look(row.id).light.whole.brightness > 0;
						const moves = other.id === row.id ? own !== 'none' : movedBy.includes(other.id);
						if (isLit && !moves) expect([row.id, other.id]).toBe('dark');
					}
				}
			}),
			{ numRuns: runs(8) },
		);
	});
});
