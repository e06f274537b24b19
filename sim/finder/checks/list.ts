import type { RigSheet } from '../../../shared/sheet/index.ts';
import type { Need, RepairId } from '../../fault/index.ts';
import type { Complaint } from '../complaints.ts';
import { answersFaders, followsLeader } from '../probes.ts';
import { leaderOf, routeOf, standAt, standAtCable } from '../route.ts';
import { contentOf, deskOf, isLit, type Witness } from '../witness.ts';
import { FIXTURE_LOOKS, FIXTURE_TRIES, type FixtureKind } from './fixture.ts';
import { boxChecks, hallChecks } from './hall.ts';
import { CABLE_LOOKS, DESK_LOOKS, indicatorWhenEnded, pluggedInto, straightTo, wiredUpTo } from './line.ts';
import { repairCheck } from './repair.ts';
import { rowChecks } from './row.ts';
import { type Bare, type Check, type CheckSort, check, type KeyOf, mayAct } from './types.ts';

/** Kinds asked of fixtures beside the one complained of: what tells of the line and of who talks on it. */
const BESIDE = new Set([
	'lit',
	'data-lamp',
	'power-lamp',
	'moving',
	'flashing',
	'jumping',
	'socket-in',
	'socket-out',
	'terminator',
	'power-switch',
	'mains-plug',
	'socket-live',
	'panel-lead',
	'panel-work',
	'panel-address',
	'panel-mode',
	'switches',
	'slides',
	'desk-strips',
]);

/** Kinds asked besides of its neighbours on the line alone, from the third edition on: what tells that more than one light is wrong. */
const OF_NEIGHBOURS = new Set(['colour', 'brightness']);

/** How many neighbours: one on either side, or the two beyond an end. */
const NEIGHBOURS = 2;

/** Most fixtures of a line that are asked besides: the nearest. */
const MOST_BESIDE = 24;

/**
 * The checks this rig has for a complaint: on the fixture complained of, on those of its line, on cables, desk, hall and remote,
 * and each repair in question, tried to see whether it clears the complaint.
 * @param repairs the repairs that would clear some suspect, each with its place
 * @param standIn as in `FinderOptions`
 * @param edition of the catalogue, as in `openOutcomes`
 */
export function checksOf(
	sheet: RigSheet,
	meant: Witness,
	complaint: Complaint,
	repairs: readonly { readonly id: RepairId; readonly place: string }[],
	{
		standIn = false,
		edition = Number.POSITIVE_INFINITY,
	}: { readonly standIn?: boolean; readonly edition?: number } = {},
): Check[] {
	const route = routeOf(meant.rig, complaint.fixture).order.map(({ fixture }) => fixture);
	const here = route.indexOf(complaint.fixture);
	const leader = leaderOf(meant.rig);
	const near = route
		.filter((id) => id !== complaint.fixture)
		.sort((a, b) => Math.abs(route.indexOf(a) - here) - Math.abs(route.indexOf(b) - here))
		.slice(0, MOST_BESIDE);
	const keys = keysFor();
	const beside = leader && leader !== complaint.fixture && !near.includes(leader) ? [...near, leader] : near;
	const on = (kind: FixtureKind, fixture: string) => onFixture({ sheet, meant, keys, standIn, edition }, kind, fixture);
	const all = [
		...[...FIXTURE_LOOKS, ...FIXTURE_TRIES].flatMap((kind) => on(kind, complaint.fixture)),
		...beside.flatMap((id) =>
			FIXTURE_LOOKS.concat(FIXTURE_TRIES)
				.filter(({ kind }) => BESIDE.has(kind))
				.flatMap((kind) => on(kind, id)),
		),
		...near
			.slice(0, NEIGHBOURS)
			.flatMap((id) =>
				FIXTURE_LOOKS.filter(({ kind }) => OF_NEIGHBOURS.has(kind)).flatMap((kind) => on({ ...kind, since: 3 }, id)),
			),
		...rowChecks(
			meant,
			complaint.fixture,
			route.filter((id) => id === complaint.fixture || near.includes(id)),
			keys.of,
		),
		...neighbourChecks(meant, complaint, near.slice(0, 6), keys),
		...(leader && leader !== complaint.fixture ? [leaderCheck(sheet, complaint, leader)] : []),
		...lineChecks(sheet, meant, complaint, route),
		...cableChecks(sheet, meant),
		...deskChecks(sheet, meant, complaint, beside),
		...boxChecks(sheet),
		...hallChecks(meant),
		...repairs.map((repair) => repairCheck(sheet, meant, complaint, repair, standIn)),
	];
	return all.filter(({ since }) => since <= edition);
}

interface Keys {
	/** What a fixture can be seen to do. */
	of(fixture: string): KeyOf;
	/** What is plugged into it. */
	plugged(fixture: string): KeyOf;
}

/** Keys of fixtures, each made once: checks with the very same key are looked up together. */
function keysFor(): Keys {
	const once = (make: (fixture: string) => KeyOf): ((fixture: string) => KeyOf) => {
		const made = new Map<string, KeyOf>();
		return (fixture) => {
			const key = made.get(fixture) ?? make(fixture);
			made.set(fixture, key);
			return key;
		};
	};
	return {
		of: once((fixture) => (w) => `${w.signature(fixture)}`),
		plugged: once((fixture) => (w) => pluggedInto(w.rig, fixture)),
	};
}

/** Overhead fixtures are reached by a ladder for all that is not seen from the floor. */
const FROM_THE_FLOOR = new Set([
	'lit',
	'colour',
	'brightness',
	'flashing',
	'moving',
	'jumping',
	'ultraviolet',
	'desk-strips',
	'desk-colours',
	'desk-restart',
	'clap',
	'remote-close',
	'sight-line',
	'socket-live',
]);

/** Metres along the wall within which one person at the desk can watch a lamp (common practice, no source). */
const IN_SIGHT = 15;

interface FixtureContext {
	readonly sheet: RigSheet;
	readonly meant: Witness;
	readonly keys: Keys;
	readonly standIn: boolean;
	readonly edition: number;
}

function onFixture(
	{ sheet, meant, keys, standIn, edition }: FixtureContext,
	kind: FixtureKind,
	fixture: string,
): Check[] {
	const unit = meant.rig.gear.units.get(fixture);
	if (!unit || !kind.fits(unit, meant)) return [];
	const placed = sheet.fixtures.find(({ id }) => id === fixture)?.place;
	// the far plug of a lead that is meant to be in the wall is seen from the floor; in a link, it hangs too. What was set from the
	// first edition sent people up for both
	const isWallPlug = edition >= 2 && kind.kind === 'mains-plug' && unit.plug === 'wall';
	const isFloor = FROM_THE_FLOOR.has(kind.kind) || isWallPlug || kind.needs?.includes('desk');
	const stand = isFloor ? { at: fixture, needs: [], cautions: [] } : standAt(sheet, fixture);
	// a lamp far from the desk wants somebody to watch it
	const far = kind.needs?.includes('desk') && placed && Math.abs(placed.x - sheet.hall.width / 2) > IN_SIGHT;
	const needs: Need[] = [...(kind.needs ?? []), ...stand.needs, ...(far ? ['second-person' as const] : [])];
	const bare: Bare = {
		...kind,
		place: fixture,
		at: kind.needs?.includes('desk') ? 'desk' : stand.at,
		needs,
		disturbs: (kind.disturbs ?? false) || (kind.scrolls === true && mayAct(unit.profile, standIn)),
		cautions: [...(kind.cautions ?? []), ...stand.cautions],
	};
	return [check(bare, (w) => kind.read(w, fixture, meant), kind.ofPlugs ? keys.plugged(fixture) : keys.of(fixture))];
}

/** Raising another's strips, with an eye on the one complained of; and raising its own, with an eye on the other. */
function neighbourChecks(meant: Witness, { fixture }: Complaint, near: readonly string[], keys: Keys): Check[] {
	const patched = new Set(meant.rig.gear.desk?.patch.map((patch) => patch.fixture));
	if (!patched.has(fixture)) return [];
	const kind = {
		kind: 'neighbour-strips',
		sort: 'try' as CheckSort,
		seconds: 15,
		needs: ['desk' as const],
		disturbs: true,
		error: 0.03,
		at: 'desk',
	};
	return near
		.filter((id) => patched.has(id))
		.flatMap((other) => [
			check(
				{ ...kind, place: fixture, other },
				(w) => (answersFaders(w, other, fixture) ? 'answers' : 'still'),
				keys.of(fixture),
			),
			check(
				{ ...kind, place: other, other: fixture },
				(w) => (answersFaders(w, fixture, other) ? 'answers' : 'still'),
				keys.of(other),
			),
		]);
}

function leaderCheck(sheet: RigSheet, { fixture }: Complaint, leader: string): Check {
	return check(
		{
			kind: 'leader-change',
			sort: 'try',
			seconds: 30,
			place: fixture,
			other: leader,
			...standAt(sheet, leader),
			disturbs: true,
			error: 0.03,
		},
		(w) => followsLeader(w, leader, fixture),
		(w) => `${w.signature(fixture)}|${w.signature(leader)}`,
	);
}

/** Most places at which a line is ended to split it: any more and none of them tells more than the next. */
const MOST_ENDS = 16;

/** Some of a line's fixtures: those around one, and the rest evenly. */
function spreadOver(route: readonly string[], around: number): readonly string[] {
	if (route.length <= MOST_ENDS) return route;
	const stride = route.length / (MOST_ENDS / 2);
	return route.filter(
		(_, at) => Math.abs(at - around) <= MOST_ENDS / 4 || Math.floor(at / stride) !== Math.floor((at - 1) / stride),
	);
}

/** Splitting the line: ended at a fixture, what does that fixture get? And one good cable straight from the source. */
function lineChecks(sheet: RigSheet, meant: Witness, { fixture }: Complaint, route: readonly string[]): Check[] {
	const talker = meant.rig.gear.receptions.get(fixture)?.talker;
	// a leader hears itself
	if (!talker || (talker.kind === 'leader' && talker.fixture === fixture)) return [];
	const leader = leaderOf(meant.rig);
	const ended = spreadOver(
		route.filter((id) => id !== leader),
		route.indexOf(fixture),
	).map((id) => {
		const stand = standAt(sheet, id);
		return check(
			{
				kind: 'line-ended',
				sort: 'try',
				seconds: 40,
				place: id,
				...stand,
				needs: ['terminator', ...stand.needs],
				disturbs: true,
				error: 0.03,
			},
			(w) => indicatorWhenEnded(w, id),
			(w) => wiredUpTo(w.rig, id),
		);
	});
	const stand = standAt(sheet, fixture);
	const straight = check(
		{
			kind: 'line-straight',
			sort: 'swap',
			seconds: 90,
			place: fixture,
			...stand,
			needs: ['spare-cable', ...stand.needs],
			disturbs: true,
			error: 0.03,
		},
		(w) =>
			isLit(straightTo(w, talker.port, fixture).look(fixture))
				? straightTo(w, talker.port, fixture).look(fixture).lamps.data
				: 'dark',
		// from a desk's socket there is then nothing but one good cable and the fixture; a leader may hang on more
		talker.kind === 'desk'
			? (w) => `${w.signature(fixture)}`
			: (w) => `${w.rig.gear.wiringKey}|${w.signature(fixture)}`,
	);
	return [...ended, straight];
}

function cableChecks(sheet: RigSheet, meant: Witness): Check[] {
	return sheet.cables.flatMap(({ id }) => {
		const key: KeyOf = (w) => `${contentOf(w.rig.gear.cables.find((cable) => cable.id === id))}`;
		return CABLE_LOOKS.map((kind) =>
			check({ ...kind, place: id, ...standAtCable(sheet, id, kind.bothEnds) }, (w) => kind.read(w, id, meant), key),
		);
	});
}

function deskChecks(sheet: RigSheet, meant: Witness, { fixture }: Complaint, beside: readonly string[]): Check[] {
	if (!sheet.desk) return [];
	const asked = new Set([fixture, ...beside]);
	const key: KeyOf = (w) => `${deskOf(w.rig.gear.desk)}${w.rig.gear.hallPower}`;
	const places = {
		output: sheet.desk.outputs.map(({ id }) => id),
		patch: sheet.desk.patch.map((patch) => patch.fixture).filter((id) => asked.has(id)),
		desk: ['desk'],
	};
	return DESK_LOOKS.flatMap((kind) =>
		places[kind.per].map((place) => check({ ...kind, place, at: 'desk' }, (w) => kind.read(w, place, meant), key)),
	);
}
