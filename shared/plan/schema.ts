import * as v from 'valibot';
import { InputError } from '../error/index.ts';
import { checkProfile, idText, modeOf, profileSchema, readShape, whole } from '../profile/index.ts';
import { loadProfiles } from '../sheet/index.ts';
import { BREAKER_CURVES } from './breaker.ts';
import { profileOf } from './make.ts';
import { PACK_ORDERS, PLAN_MOST, PLAN_PROFILES, type Plan } from './types.ts';

const text = (least: number) => v.pipe(v.string(), v.trim(), v.minLength(least), v.maxLength(60));
const amount = (least: number, most: number) => v.pipe(v.number(), v.finite(), v.minValue(least), v.maxValue(most));
const known = (least: number, most: number) => v.nullable(amount(least, most));
const universe = whole(1, 63999);
const address = whole(1, 512);

const rowSchema = v.strictObject({
	id: idText,
	name: text(1),
	profile: idText,
	mode: idText,
	universe,
	address,
	labelled: v.boolean(),
	shows: v.nullable(v.strictObject({ mode: idText, address })),
	unseen: v.exactOptional(v.literal(true)),
	place: v.strictObject({ x: amount(0, 200), y: amount(0, 40), throw: amount(0.2, 100), overhead: v.boolean() }),
	tilt: v.exactOptional(amount(-80, 80)),
	after: v.exactOptional(idText),
	circuit: text(0),
});

const planSchema = v.strictObject({
	version: v.literal(1),
	name: text(1),
	hall: v.strictObject({ width: amount(2, 200), height: amount(2, 40) }),
	source: v.picklist(['desk', 'leader']),
	loss: v.picklist(['hold', 'dark', 'programme']),
	lock: v.picklist(['on', 'off']),
	rules: v.strictObject({ universe, gap: whole(0, 100), step: whole(1, 100), order: v.picklist(PACK_ORDERS) }),
	supply: v.strictObject({
		volts: amount(1, 500),
		powerFactor: known(0.05, 1),
		breaker: known(1, 400),
		area: known(0.2, 100),
		metres: known(0, 1000),
		link: v.exactOptional(known(1, 400)),
		curve: v.exactOptional(v.nullable(v.picklist(BREAKER_CURVES))),
	}),
	show: v.strictObject({ hours: amount(0, 72), look: amount(0, 1) }),
	kilograms: v.record(idText, amount(0, 500)),
	surge: v.exactOptional(v.record(idText, amount(0.1, 2000))),
	rows: v.pipe(v.array(rowSchema), v.maxLength(PLAN_MOST)),
	profiles: v.pipe(v.array(profileSchema), v.maxLength(PLAN_PROFILES)),
});

/** As much of a plan as says which profiles it names. */
const namesSchema = v.object({
	rows: v.pipe(v.array(v.object({ profile: v.string() })), v.maxLength(PLAN_MOST)),
});

/**
 * Reads a plan from outside: a file, a link, what is kept.
 * @param input parsed JSON, of any shape
 * @throws InputError `rig-plan.shape` where the shape is off, `rig-plan.row` where an id stands twice or a fixture or mode is unknown, and
 *   what `readProfile` throws for profiles inside it
 */
export function readPlan(input: unknown): Plan {
	const plan: Plan = readShape(planSchema, input, 'rig-plan.shape');
	for (const [i, profile] of plan.profiles.entries()) {
		try {
			checkProfile(profile);
		} catch (error) {
			throw error instanceof InputError ? error.within(`profiles[${i}]`) : error;
		}
	}
	const seen = new Set<string>();
	for (const [i, row] of plan.rows.entries()) {
		if (seen.has(row.id)) throw new InputError('rig-plan.row', `rows[${i}].id`, { trouble: 'id-twice', id: row.id });
		seen.add(row.id);
		const profile = profileOf(plan, row.profile);
		if (!profile)
			throw new InputError('rig-plan.row', `rows[${i}].profile`, { trouble: 'no-such-profile', id: row.profile });
		modeOf(profile, row.mode);
		if (row.shows) modeOf(profile, row.shows.mode);
	}
	// older plans could hold a weight of 0, which nothing has
	const kilograms = Object.fromEntries(Object.entries(plan.kilograms).filter(([, each]) => each > 0));
	return { ...plan, kilograms };
}

/** As `readPlan`, for a page: the bundled profiles that it names are fetched first. @throws InputError as `readPlan`, NotFetched */
export async function loadPlan(input: unknown): Promise<Plan> {
	const { rows } = readShape(namesSchema, input, 'rig-plan.shape');
	await loadProfiles({ fixtures: rows });
	return readPlan(input);
}
