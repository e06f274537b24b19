import { expect, it } from 'vitest';
import { alongRoom, emptyPlan, type Plan, packed, stepsOf, withRows } from '../../shared/plan/index.ts';
import { BUNDLED } from '../../shared/profile/index.ts';
import { makeRandom, type Random } from '../../shared/random/index.ts';
import { strangerPresses } from '../../sim/drill/index.ts';
import { openRig } from '../../sim/rig/index.ts';
import { slipFor, slipTask } from '../../sim/slip/index.ts';

/*
 * Lit before doors: how long one hand takes to set a row of lights from the stack, with prep slips and ticks and without. Presses are
 * the simulator's own: of a slip the fewest there are, without one those of a careful stranger who reads the panel. All else is
 * assumed, with no source, and printed beside the result: it is a sum about a model of a crew, no measurement of one.
 */
const RIGS = 12;
const NIGHTS = 200;
const FIXTURES = 24;

const ASSUMED = {
	/** Metres a second in the dark with hands full. */
	walk: 1,
	/** Seconds to read a slip, or to find a line of a patch list and hold it against the light. */
	readSlip: 5,
	readList: 8,
	/** Seconds for a press that is read off a slip, and for one that is looked for on the panel. */
	pressSlip: 0.8,
	pressRead: 1.2,
	/** Seconds to tick a step. */
	tick: 1.5,
	/** Share of slips of the hand that are seen at once: a slip says what each step shows. */
	seenSlip: 0.95,
	seenRead: 0.6,
	/** Chance that a fixture's mode or address is passed over; with ticks the row is told. */
	passedTicks: 0.002,
	passed: 0.02,
	/** Seconds to find out at the light-up why one is dark, the finder on that fixture of the sheet, or by guess. */
	find: 90,
	guess: 180,
} as const;

interface Light {
	readonly metres: number;
	/** Presses; a light that has no slip is none of the sum. */
	readonly slip: number;
	readonly stranger: number;
	readonly steps: number;
}

function lightsOf(plan: Plan): Light[] {
	let at = 0;
	return alongRoom(plan.rows).flatMap((row) => {
		const slip = slipFor(plan, row);
		const task = slipTask(plan, row);
		// what has no slip is left out and told: counted as no presses it would be lit for nothing
		if (!slip) return [];
		// a panel of switches has nothing to read: set as the slip says
		const stranger = strangerPresses(task, openRig(task.sheet)) ?? slip.presses;
		const metres = row.place.x - at;
		at = row.place.x;
		return {
			metres,
			slip: slip.presses,
			stranger,
			steps: stepsOf(plan, row).filter((it) => it === 'mode' || it === 'address').length,
		};
	});
}

/** Seconds of one night, and how many lights were dark when the desk came up. @param rate chance that a press goes wrong */
function night(lights: readonly Light[], withSlips: boolean, rate: number, random: Random): [number, number] {
	const its = withSlips
		? { read: ASSUMED.readSlip, press: ASSUMED.pressSlip, seen: ASSUMED.seenSlip, passed: ASSUMED.passedTicks }
		: { read: ASSUMED.readList, press: ASSUMED.pressRead, seen: ASSUMED.seenRead, passed: ASSUMED.passed };
	let [seconds, dark, at] = [0, 0, 0];
	for (const { metres, slip, stranger, steps } of lights) {
		const presses = withSlips ? slip : stranger;
		at += metres;
		seconds += metres / ASSUMED.walk + its.read + presses * its.press + (withSlips ? steps * ASSUMED.tick : 0);
		let wrong = random.chance(its.passed);
		for (let n = 0; n < presses; n++) {
			if (!random.chance(rate)) continue;
			// seen, it is done again from where it went wrong: half of the way, on the average
			if (random.chance(its.seen)) seconds += (presses / 2) * its.press;
			else wrong = true;
		}
		if (!wrong) continue;
		dark++;
		// from the desk and back, found, and set anew
		seconds += (2 * at) / ASSUMED.walk + (withSlips ? ASSUMED.find : ASSUMED.guess) + its.read + presses * its.press;
	}
	return [seconds, dark];
}

it('lit before doors: a crew of one from stack to lit, with slips and ticks and without', () => {
	const rigs = Array.from({ length: RIGS }, (_, seed) => {
		const random = makeRandom(seed).fork('rig');
		const rows = Array.from({ length: FIXTURES }, () => {
			const profile = random.pick(BUNDLED);
			return { profile: profile.id, mode: random.pick(profile.modes).id };
		});
		return lightsOf(packed(withRows(emptyPlan('Night'), rows, ({ name }, n) => `${name} ${n}`)).plan);
	});
	const mean = (all: readonly number[]): number => all.reduce((sum, each) => sum + each, 0) / all.length;
	const table = [0, 0.005, 0.01, 0.02].map((rate) => {
		const nights = (withSlips: boolean) =>
			rigs.flatMap((lights, i) =>
				Array.from({ length: NIGHTS }, (_, n) =>
					night(lights, withSlips, rate, makeRandom(i * NIGHTS + n).fork(withSlips ? 'slips' : 'list')),
				),
			);
		const [using, doing] = [nights(true), nights(false)];
		const minutes = (all: readonly [number, number][]): number => mean(all.map(([seconds]) => seconds)) / 60;
		return {
			'a press goes wrong': `${rate * 100} %`,
			'with, min': minutes(using).toFixed(1),
			'without, min': minutes(doing).toFixed(1),
			'dark at the light-up, with': mean(using.map(([, dark]) => dark)).toFixed(2),
			'dark, without': mean(doing.map(([, dark]) => dark)).toFixed(2),
		};
	});
	const all = rigs.flat();
	console.log(`${RIGS} rigs of ${FIXTURES} bundled fixtures, ${NIGHTS} nights each. All assumed, no source:`, ASSUMED);
	console.log(
		`Presses a fixture: ${mean(all.map(({ slip }) => slip)).toFixed(1)} by its slip, ${mean(all.map(({ stranger }) => stranger)).toFixed(1)} by a careful stranger`,
	);
	console.table(table);
	console.log(`Left out, with no slip: ${RIGS * FIXTURES - all.length} of ${RIGS * FIXTURES}`);
	expect(all.length).toBeGreaterThan(0.9 * RIGS * FIXTURES);
	for (const { slip, stranger } of all) expect(slip).toBeLessThanOrEqual(stranger);
	// a second way where no press goes wrong: what is dark is what was passed over, to 5 standard errors
	for (const [key, passed] of [
		['dark at the light-up, with', ASSUMED.passedTicks],
		['dark, without', ASSUMED.passed],
	] as const) {
		const error = Math.sqrt((all.length * passed * (1 - passed)) / NIGHTS) / RIGS;
		expect(Math.abs(Number(table[0]?.[key]) - (passed * all.length) / RIGS)).toBeLessThan(5 * error + 0.005);
	}
	const column = (key: keyof (typeof table)[number]): number[] => table.map((row) => Number(row[key]));
	for (const key of ['with, min', 'without, min', 'dark at the light-up, with', 'dark, without'] as const)
		expect(column(key), `${key} grows with the slips of the hand`).toEqual(column(key).toSorted((a, b) => a - b));
}, 300_000);
