import { type Profile, profileAtHand } from '../profile/index.ts';
import type { RigSheet, SheetFixture } from '../sheet/index.ts';
import { shownBy } from './panel.ts';
import type { Plan, PlanRow } from './types.ts';

/** Metres between fixtures, and room at both ends of the wall, where nobody has said. */
const PITCH = 2;
const MARGIN = 2;
/** Metres from lens to wall until somebody says otherwise (ours). */
export const THROW = 3;
/** Widest wall a sheet takes, metres. */
const WIDEST = 200;

/** The profile a row goes by: the plan's own first, then the bundled ones at hand; null where there is none. */
export const profileOf = (plan: Pick<Plan, 'profiles'>, id: string): Profile | null =>
	plan.profiles.find((each) => each.id === id) ?? profileAtHand(id) ?? null;

/** Stands for the circuit of a light that is plugged in, nobody knows where: with none at all, one with a battery would run on that. Kept. */
export const UNKNOWN_CIRCUIT = '?';

/** Whether a row runs on its battery: it has one, and no circuit is named. */
export const isOnBattery = (plan: Plan, row: PlanRow): boolean =>
	row.circuit === '' && Boolean(profileOf(plan, row.profile)?.power.battery);

/** Whether any light counts as on battery: nobody may have thought of its plug. */
export const countsOnBattery = (plan: Plan): boolean => plan.rows.some((row) => isOnBattery(plan, row));

/** What a plan has until somebody says otherwise, volts and hours (ours). */
export const DEFAULT_VOLTS = 230;
export const DEFAULT_HOURS = 5;

/** A plan with nothing in it. @param name what the crew calls the rig */
export const emptyPlan = (name: string): Plan => ({
	version: 1,
	name,
	hall: { width: 16, height: 6 },
	source: 'desk',
	loss: 'hold',
	lock: 'off',
	rules: { universe: 1, gap: 0, step: 1, order: 'list' },
	supply: { volts: DEFAULT_VOLTS, powerFactor: null, breaker: null, area: null, metres: null },
	show: { hours: DEFAULT_HOURS, look: 1 },
	kilograms: {},
	rows: [],
	profiles: [],
});

/** What is known of a fixture to be added; the rest is worked out. */
export interface NewRow {
	readonly profile: string;
	readonly name?: string;
	readonly mode?: string;
	readonly universe?: number;
	readonly address?: number;
	/** Metres along the room. */
	readonly x?: number;
	/** Metres above the floor; left out, on it, or as high as things hang here. */
	readonly y?: number;
	readonly overhead?: boolean;
	readonly circuit?: string;
}

/**
 * The plan with fixtures added at its end: ids that nothing has yet, names by their kind and number, one place after another along
 * the room. One that comes with an address is taken for labelled.
 * @param names what a fixture of a profile is called by number, in the crew's language
 * @param mark letters or digits after each id, drawn by chance where the plan may have had rows that are gone: ticks go by row id, and
 *   an id given out again would bring those of a fixture that was taken off
 */
export function withRows(
	plan: Plan,
	added: readonly NewRow[],
	names: (profile: Profile, n: number) => string,
	mark = '',
): Plan {
	// by shape and number, without what was drawn: names count on
	const taken = new Set(plan.rows.flatMap(({ id }) => [id, id.split('-').slice(0, 2).join('-')]));
	const counts = new Map<string, number>();
	const rows: PlanRow[] = [];
	for (const each of added) {
		const profile = profileOf(plan, each.profile);
		if (!profile) continue;
		let n = counts.get(profile.shape) ?? 1;
		while (taken.has(`${profile.shape}-${n}`)) n++;
		counts.set(profile.shape, n + 1);
		const stem = `${profile.shape}-${n}`;
		const id = mark === '' ? stem : `${stem}-${mark}`;
		taken.add(stem);
		const x = each.x ?? MARGIN + PITCH * (plan.rows.length + rows.length);
		rows.push({
			id,
			name: each.name ?? names(profile, n),
			profile: profile.id,
			mode: each.mode ?? profile.defaults.mode,
			universe: each.universe ?? plan.rules.universe,
			address: each.address ?? 1,
			labelled: each.address !== undefined,
			shows: null,
			place: {
				x,
				y: each.y ?? (each.overhead ? Math.min(5, plan.hall.height) : 0),
				throw: THROW,
				overhead: each.overhead ?? false,
			},
			circuit: each.circuit ?? '',
		});
	}
	return spreadOut({ ...plan, rows: [...plan.rows, ...rows] });
}

/** Rows so far along that no wall is that wide are drawn together; the wall grows with the row. */
function spreadOut(plan: Plan): Plan {
	const far = Math.max(0, ...plan.rows.map(({ place }) => place.x));
	const share = far > WIDEST - MARGIN ? (WIDEST - MARGIN) / far : 1;
	const rows =
		share === 1
			? plan.rows
			: plan.rows.map((row) => ({ ...row, place: { ...row.place, x: Math.floor(row.place.x * share * 100) / 100 } }));
	// a share of it can come out a hair too wide
	const width = Math.min(WIDEST, Math.max(plan.hall.width, Math.ceil(far * share) + MARGIN));
	return { ...plan, hall: { ...plan.hall, width }, rows };
}

/**
 * A plan from a rig sheet, such as a bench as it stands: each fixture where the desk's patch has it, and else where its panel is
 * set. What its panel shows is kept beside it, marked as not seen on the real one. Cables are not taken over: the plan makes its own.
 */
export function planFromSheet(sheet: RigSheet): Plan {
	const base = { ...emptyPlan(sheet.name), profiles: sheet.profiles };
	const { width, height } = sheet.hall;
	const rows = sheet.fixtures.flatMap((fixture) => rowFrom(base, sheet, fixture) ?? []);
	const leads = sheet.desk === null && rows.length > 1;
	return { ...base, hall: { width, height }, source: leads ? 'leader' : 'desk', rows };
}

function rowFrom(plan: Plan, { desk }: RigSheet, fixture: SheetFixture): PlanRow | null {
	const profile = profileOf(plan, fixture.profile);
	if (!profile) return null;
	const shown = shownBy(profile, fixture);
	const patch = desk?.patch.find((each) => each.fixture === fixture.id);
	const { mode, address } = patch ?? shown;
	return {
		id: fixture.id,
		name: fixture.name,
		profile: profile.id,
		mode,
		universe: patch?.universe ?? 1,
		address,
		labelled: true,
		shows: { mode: shown.mode, address: shown.address },
		unseen: true,
		place: fixture.place,
		circuit: '',
	};
}
