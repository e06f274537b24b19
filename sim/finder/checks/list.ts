import type { RigSheet } from '../../../shared/sheet/index.ts';
import { splitPort } from '../../../shared/sheet/index.ts';
import { MENDS, type MendId, type Need } from '../../fault/index.ts';
import { COMPLAINTS, type Complaint } from '../complaints.ts';
import { answersStrips, followsLeader } from '../probes.ts';
import { cableSpot, leaderOf, routeOf } from '../route.ts';
import { isLit } from '../seen.ts';
import { nameOf, selfText, type Witness, witness } from '../witness.ts';
import { DESK_LOOKS } from './desk.ts';
import { FIXTURE_LOOKS, FIXTURE_TRIES, type FixtureKind } from './fixture.ts';
import { CABLE_LOOKS, lampWhenEnded, straightTo } from './line.ts';
import type { Check, CheckKind, CheckSort } from './types.ts';

/** A wrong answer to a look at something plain (common practice, no source). */
const SLIP = 0.02;

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
	'panel-lead',
	'panel-work',
	'panel-address',
	'panel-mode',
	'switches',
	'slides',
	'desk-strips',
]);

/** Most fixtures of a line that are asked besides: the nearest. */
const MOST_BESIDE = 24;

type Bare = CheckKind & { readonly place: string; readonly at: string; readonly other?: string };

function check(kind: Bare, read: (w: Witness) => string, key: (w: Witness) => string | null): Check {
	const { place, other } = kind;
	return {
		id: `${kind.kind}@${place}${other ? `+${other}` : ''}`,
		kind: kind.kind,
		sort: kind.sort,
		place,
		...(other === undefined ? {} : { other }),
		at: kind.at,
		seconds: kind.seconds,
		needs: kind.needs ?? [],
		disturbs: kind.disturbs ?? false,
		cautions: kind.cautions ?? [],
		error: kind.error ?? SLIP,
		read,
		key,
	};
}

/**
 * The checks this rig has for a complaint: on the fixture complained of, on those of its line, on cables, desk, hall and remote,
 * and each mend in question, tried to see whether it clears the complaint.
 * @param mends the mends that would clear some suspect, each with its place
 */
export function checksOf(
	sheet: RigSheet,
	meant: Witness,
	complaint: Complaint,
	mends: readonly { readonly id: MendId; readonly place: string }[],
): Check[] {
	const route = routeOf(meant.rig, complaint.fixture).order.map(({ fixture }) => fixture);
	const here = route.indexOf(complaint.fixture);
	const leader = leaderOf(meant.rig);
	const near = route
		.filter((id) => id !== complaint.fixture)
		.sort((a, b) => Math.abs(route.indexOf(a) - here) - Math.abs(route.indexOf(b) - here))
		.slice(0, MOST_BESIDE);
	const beside = leader && leader !== complaint.fixture && !near.includes(leader) ? [...near, leader] : near;
	return [
		...[...FIXTURE_LOOKS, ...FIXTURE_TRIES].flatMap((kind) => onFixture(sheet, meant, kind, complaint.fixture)),
		...beside.flatMap((id) =>
			FIXTURE_LOOKS.concat(FIXTURE_TRIES)
				.filter(({ kind }) => BESIDE.has(kind))
				.flatMap((kind) => onFixture(sheet, meant, kind, id)),
		),
		...neighbourChecks(meant, complaint, near.slice(0, 6)),
		...(leader && leader !== complaint.fixture ? [leaderCheck(complaint, leader)] : []),
		...lineChecks(meant, complaint, route),
		...cableChecks(sheet, meant),
		...deskChecks(sheet, meant, complaint, beside),
		...hallChecks(meant),
		...mends.map((mend) => mendCheck(sheet, meant, complaint, mend)),
	];
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
]);

/** Metres along the wall within which one person at the desk can watch a lamp (common practice, no source). */
const IN_SIGHT = 15;

function onFixture(sheet: RigSheet, meant: Witness, kind: FixtureKind, fixture: string): Check[] {
	const unit = meant.rig.gear.units.get(fixture);
	if (!unit || !kind.fits(unit, meant)) return [];
	const placed = sheet.fixtures.find(({ id }) => id === fixture)?.place;
	const overhead = placed?.overhead && !FROM_THE_FLOOR.has(kind.kind);
	// a lamp far from the desk wants somebody to watch it
	const far = kind.needs?.includes('desk') && placed && Math.abs(placed.x - sheet.hall.width / 2) > IN_SIGHT;
	const needs: Need[] = [
		...(kind.needs ?? []),
		...(overhead ? ['ladder' as const] : []),
		...(far ? ['second-person' as const] : []),
	];
	const bare: Bare = {
		...kind,
		place: fixture,
		at: kind.needs?.includes('desk') ? 'desk' : fixture,
		needs,
		...(overhead ? { cautions: [...(kind.cautions ?? []), 'height', 'hanging'] } : {}),
	};
	return [
		check(
			bare,
			(w) => kind.read(w, fixture, meant),
			(w) =>
				kind.ofPlugs
					? `${w.signature(fixture)},${nameOf(w.rig.gear.cables)},${nameOf(w.rig.gear.terminators)}`
					: `${w.signature(fixture)}`,
		),
	];
}

/** Raising another's strips, with an eye on the one complained of; and raising its own, with an eye on the other. */
function neighbourChecks(meant: Witness, { fixture }: Complaint, near: readonly string[]): Check[] {
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
				(w) => (answersStrips(w, other, fixture) ? 'answers' : 'still'),
				(w) => `${w.signature(fixture)}`,
			),
			check(
				{ ...kind, place: other, other: fixture },
				(w) => (answersStrips(w, fixture, other) ? 'answers' : 'still'),
				(w) => `${w.signature(other)}`,
			),
		]);
}

function leaderCheck({ fixture }: Complaint, leader: string): Check {
	return check(
		{
			kind: 'leader-change',
			sort: 'try',
			seconds: 30,
			place: fixture,
			other: leader,
			at: leader,
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
function lineChecks(meant: Witness, { fixture }: Complaint, route: readonly string[]): Check[] {
	const talker = meant.rig.gear.receptions.get(fixture)?.talker;
	// a leader hears itself
	if (!talker || (talker.kind === 'leader' && talker.fixture === fixture)) return [];
	const wired = (w: Witness, id: string): string => `${w.rig.gear.wiringKey}|${w.signature(id)}`;
	const leader = leaderOf(meant.rig);
	const ended = spreadOver(
		route.filter((id) => id !== leader),
		route.indexOf(fixture),
	).map((id) =>
		check(
			{
				kind: 'line-ended',
				sort: 'try',
				seconds: 40,
				place: id,
				at: id,
				needs: ['terminator'],
				disturbs: true,
				error: 0.03,
			},
			(w) => lampWhenEnded(w, id),
			(w) => wired(w, id),
		),
	);
	const straight = check(
		{
			kind: 'line-straight',
			sort: 'swap',
			seconds: 90,
			place: fixture,
			at: fixture,
			needs: ['spare-cable'],
			disturbs: true,
			error: 0.03,
		},
		(w) =>
			isLit(straightTo(w, talker.port, fixture).look(fixture))
				? straightTo(w, talker.port, fixture).look(fixture).lamps.data
				: 'dark',
		(w) => wired(w, fixture),
	);
	return [...ended, straight];
}

function cableChecks(sheet: RigSheet, meant: Witness): Check[] {
	return sheet.cables.flatMap(({ id }) =>
		CABLE_LOOKS.map((kind) =>
			check(
				{ ...kind, place: id, at: cableSpot(sheet, id) },
				(w) => kind.read(w, id, meant),
				(w) => `${nameOf(w.rig.gear.cables.find((cable) => cable.id === id))}`,
			),
		),
	);
}

function deskChecks(sheet: RigSheet, meant: Witness, { fixture }: Complaint, beside: readonly string[]): Check[] {
	if (!sheet.desk) return [];
	const asked = new Set([fixture, ...beside]);
	const places = {
		output: sheet.desk.outputs.map(({ id }) => id),
		patch: sheet.desk.patch.map((patch) => patch.fixture).filter((id) => asked.has(id)),
		desk: ['desk'],
	};
	return DESK_LOOKS.flatMap((kind) =>
		places[kind.per].map((place) =>
			check(
				{ ...kind, place, at: 'desk' },
				(w) => kind.read(w, place, meant),
				(w) => `${nameOf(w.rig.gear.desk)}${w.rig.gear.hallPower}`,
			),
		),
	);
}

function hallChecks(meant: Witness): Check[] {
	const hall = check(
		{ kind: 'hall-power', sort: 'look', seconds: 6, place: 'rig', at: 'desk' },
		(w) => (w.rig.gear.hallPower ? 'on' : 'off'),
		(w) => `${w.rig.gear.hallPower}`,
	);
	if (!meant.rig.gear.remote) return [hall];
	const remote = (w: Witness) => `${w.rig.gear.remote?.battery}${w.rig.gear.remote?.code}`;
	return [
		hall,
		check(
			{ kind: 'remote-lamp', sort: 'look', seconds: 4, place: 'remote', at: 'hand' },
			(w) => (w.rig.gear.remote?.battery ? 'blinks' : 'dead'),
			remote,
		),
		check(
			{ kind: 'remote-code', sort: 'look', seconds: 8, place: 'remote', at: 'hand' },
			(w) => (w.rig.gear.remote?.code === meant.rig.gear.remote?.code ? 'as-meant' : 'other'),
			remote,
		),
	];
}

const SWAPS = new Set<MendId>(['fresh-battery', 'remote-battery', 'replace-cable', 'swap-fixture', 'fit-terminator']);

/** Doing a mend, and looking whether the complaint is gone. */
const standingOf = ({ rig }: Witness) => ({ patch: rig.gear.desk?.patch, remote: rig.gear.remote });

function mendCheck(
	sheet: RigSheet,
	meant: Witness,
	complaint: Complaint,
	{ id, place }: { readonly id: MendId; readonly place: string },
): Check {
	const mend = MENDS[id];
	const { device } = place.includes(':') ? splitPort(place) : { device: place };
	const isCable = sheet.cables.some((cable) => cable.id === place);
	const overhead = sheet.fixtures.find((fixture) => fixture.id === device)?.place.overhead ?? false;
	const at = mend.needs.includes('desk')
		? 'desk'
		: isCable
			? cableSpot(sheet, place)
			: place === 'rig' || place === 'remote'
				? 'hand'
				: device;
	return check(
		{
			kind: `mend-${id}`,
			sort: SWAPS.has(id) ? 'swap' : 'mend',
			seconds: mend.seconds,
			needs: overhead && at === device ? [...mend.needs, 'ladder'] : mend.needs,
			cautions: overhead && at === device ? [...mend.cautions, 'height', 'hanging'] : mend.cautions,
			disturbs: mend.disturbs,
			place,
			at,
		},
		(w) => {
			if (isUntouched(w, meant, sheet, place)) return 'still';
			const after = w.after(`mend ${id} ${place}`, () =>
				mend
					.events(sheet, place, standingOf(w))
					.filter((event) => event.type !== 'terminator.fit' || !w.rig.gear.terminators.includes(event.port)),
			);
			return COMPLAINTS[complaint.kind].holds(witness(after), meant, complaint.fixture) ? 'still' : 'cleared';
		},
		(w) => (isUntouched(w, meant, sheet, place) ? 'untouched' : null),
	);
}

/** Whether a place is as the sheet has it, so that a mend there would change nothing. */
function isUntouched(w: Witness, meant: Witness, sheet: RigSheet, place: string): boolean {
	const [now, was] = [w.rig.gear, meant.rig.gear];
	if (place === 'rig') return now.hallPower === was.hallPower && now.cables === was.cables;
	if (place === 'remote') return now.remote === was.remote;
	if (place.includes(':')) return now.terminators === was.terminators;
	if (sheet.cables.some(({ id }) => id === place))
		return now.cables.find(({ id }) => id === place) === was.cables.find(({ id }) => id === place);
	const unit = was.units.get(place);
	// a fixture's own self and its strips at the desk are both named by the fixture
	if (unit) return now.desk === was.desk && selfText(now.units.get(place)) === selfText(unit);
	return now.desk === was.desk;
}
