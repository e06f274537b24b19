import type { RigSheet } from '../../shared/sheet/index.ts';
import {
	afterHours,
	afterRemote,
	answersFaders,
	coloursByDesk,
	followsLeader,
	onCharger,
	patchOf,
	whileDeskRestarts,
} from './probes.ts';
import { leaderOf, routeOf } from './route.ts';
import { brightnessAgainst, isLit, looksLit, sameColour, sameLight, type Witness } from './witness.ts';

export const COMPLAINT_KINDS = Object.freeze([
	'dark',
	'no-answer',
	'follower-silent',
	'follower-differs',
	'wrong-colour',
	'colour-missing',
	'flicker',
	'dead-beyond',
	'answers-anothers',
	'two-move',
	'own-show',
	'strobing',
	'ignores-remote',
	'remote-moves-wrong',
	'dim',
	'goes-out',
	'strange-after-restart',
	'does-not-charge',
] as const);
export type ComplaintKind = (typeof COMPLAINT_KINDS)[number];

/** What is wrong, and with which fixture. */
export interface Complaint {
	readonly kind: ComplaintKind;
	readonly fixture: string;
}

/** How a complaint shows: a predicate on what can be seen of a rig against what its sheet means. */
interface ComplaintTest {
	/** Whether a sheet can have it at all at that fixture. */
	fits(meant: Witness, fixture: string): boolean;
	holds(seen: Witness, meant: Witness, fixture: string): boolean;
	/** Other fixtures whose state decides it too, beside the one complained of. */
	others?(meant: Witness, fixture: string): readonly string[];
}

const settingsOf = (w: Witness, fixture: string) => w.rig.gear.units.get(fixture)?.state.context.settings;
const hasPatch = (w: Witness, fixture: string): boolean =>
	patchOf(w.rig, fixture) !== null && settingsOf(w, fixture)?.work === 'line';
const isFollower = (w: Witness, fixture: string): boolean =>
	settingsOf(w, fixture)?.work === 'follow' && leaderOf(w.rig) !== null;
const isMeantLit = (w: Witness, fixture: string): boolean => looksLit(w.rest(fixture));
const neighbours = (w: Witness, fixture: string): string[] =>
	routeOf(w.rig, fixture)
		.order.map((each) => each.fixture)
		.filter((id) => id !== fixture)
		.slice(0, 8);

export const COMPLAINTS: Readonly<Record<ComplaintKind, ComplaintTest>> = {
	dark: {
		fits: isMeantLit,
		holds: (seen, _, at) => !looksLit(seen.rest(at)),
	},
	'no-answer': {
		fits: (meant, at) => hasPatch(meant, at) && answersFaders(meant, at, at),
		holds: (seen, _, at) => !answersFaders(seen, at, at),
	},
	'follower-silent': {
		fits: isFollower,
		holds: (seen, meant, at) => ['still', 'dark'].includes(followsLeader(seen, leaderOf(meant.rig) ?? '', at)),
		others: (meant) => [leaderOf(meant.rig) ?? ''],
	},
	'follower-differs': {
		fits: (meant, at) => isFollower(meant, at) && followsLeader(meant, leaderOf(meant.rig) ?? '', at) === 'follows',
		holds: (seen, meant, at) =>
			isLit(seen.rest(at)) && followsLeader(seen, leaderOf(meant.rig) ?? '', at) === 'differs',
		others: (meant) => [leaderOf(meant.rig) ?? ''],
	},
	'wrong-colour': {
		fits: isMeantLit,
		holds: (seen, meant, at) => {
			const [now, wanted] = [seen.rest(at), meant.rest(at)];
			return looksLit(now) && !now.light.moving && !now.light.flicker && !sameColour(now, wanted);
		},
	},
	'colour-missing': {
		fits: (meant, at) => hasPatch(meant, at) && coloursByDesk(meant, at) === 'all',
		holds: (seen, _, at) => coloursByDesk(seen, at) === 'missing',
	},
	flicker: {
		fits: (meant, at) => ['line', 'follow'].includes(settingsOf(meant, at)?.work ?? ''),
		holds: (seen, _, at) => seen.rest(at).light.flicker,
	},
	'dead-beyond': {
		fits: (meant, at) => beyond(meant, at).length >= 2,
		// everything from here on has no data while something before it has
		holds: (seen, meant, at) => {
			const order = routeOf(meant.rig, at).order.map((each) => each.fixture);
			const here = order.indexOf(at);
			const hasData = (id: string) => seen.rest(id).lamps.data === 'steady';
			return beyond(meant, at).every((id) => !hasData(id)) && (here === 0 || order.slice(0, here).some(hasData));
		},
		others: (meant, at) => routeOf(meant.rig, at).order.map((each) => each.fixture),
	},
	'answers-anothers': {
		fits: (meant, at) => hasPatch(meant, at) && others(meant, at).some((id) => hasPatch(meant, id)),
		holds: (seen, meant, at) =>
			others(meant, at).some(
				(id) => hasPatch(meant, id) && !answersFaders(meant, id, at) && answersFaders(seen, id, at),
			),
		others,
	},
	'two-move': {
		fits: (meant, at) => hasPatch(meant, at) && others(meant, at).length > 0,
		holds: (seen, meant, at) =>
			answersFaders(seen, at, at) &&
			others(meant, at).some((id) => !answersFaders(meant, at, id) && answersFaders(seen, at, id)),
		others,
	},
	'own-show': {
		fits: (meant, at) => !meant.rest(at).light.moving,
		holds: (seen, _, at) => seen.rest(at).light.moving && isLit(seen.rest(at)),
	},
	strobing: {
		fits: (meant, at) => meant.rest(at).light.flashes === 0,
		holds: (seen, _, at) => seen.rest(at).light.flashes > 0,
	},
	'ignores-remote': {
		fits: (meant, at) => heeds(meant, at),
		holds: (seen, _, at) => isLit(seen.rest(at)) && !heeds(seen, at),
	},
	'remote-moves-wrong': {
		fits: isMeantDeaf,
		holds: (seen, _, at) => heeds(seen, at),
	},
	dim: {
		fits: isMeantLit,
		holds: (seen, meant, at) =>
			!seen.rest(at).light.flicker &&
			brightnessAgainst(seen.rest(at), meant.rest(at)) === 'dimmer' &&
			sameColour(seen.rest(at), meant.rest(at)),
	},
	'goes-out': {
		fits: (meant, at) => isMeantLit(meant, at) && looksLit(afterHours(meant, at)),
		holds: (seen, _, at) => looksLit(seen.rest(at)) && !looksLit(afterHours(seen, at)),
	},
	'strange-after-restart': {
		fits: (meant, at) => hasPatch(meant, at),
		holds: (seen, meant, at) =>
			sameLight(seen.rest(at), meant.rest(at)) && !sameLight(whileDeskRestarts(seen, at), whileDeskRestarts(meant, at)),
	},
	'does-not-charge': {
		fits: (meant, at) =>
			meant.rig.gear.units.get(at)?.profile.power.battery != null &&
			onCharger(meant, at).lamps.battery?.charging === true,
		holds: (seen, _, at) => onCharger(seen, at).lamps.battery?.charging !== true,
	},
};

/** Whether a fixture with a sensor is to take no notice of the remote: shut, on another code, or out of its sight. */
function isMeantDeaf({ rig }: Witness, at: string): boolean {
	const { remote, units } = rig.gear;
	const unit = units.get(at);
	if (!remote?.battery || !unit?.profile.sensor) return false;
	const { sensor, code } = unit.state.context.settings;
	return sensor === 'shut' || code !== remote.code || unit.hidden;
}

const heeds = (w: Witness, at: string): boolean => {
	const { before, after } = afterRemote(w, at);
	return !sameLight(before, after);
};

function beyond(meant: Witness, at: string): string[] {
	const order = routeOf(meant.rig, at).order.map((each) => each.fixture);
	return order.slice(Math.max(0, order.indexOf(at)));
}

function others(meant: Witness, at: string): string[] {
	return neighbours(meant, at);
}

/**
 * Whether something can be complained of on a rig that is as its sheet has it. What its own sheet makes it do is meant so, and no
 * complaint.
 */
export function canComplain(meant: Witness, { kind, fixture }: Complaint): boolean {
	const { fits, holds } = COMPLAINTS[kind];
	return fits(meant, fixture) && !holds(meant, meant, fixture);
}

/** Every complaint that can be made of a rig, by fixture. */
export function complaintsOf(meant: Witness, sheet: RigSheet): Complaint[] {
	return sheet.fixtures.flatMap(({ id: fixture }) =>
		COMPLAINT_KINDS.map((kind) => ({ kind, fixture })).filter((complaint) => canComplain(meant, complaint)),
	);
}
