import { onceUnder } from '../../../shared/memo/index.ts';
import {
	type Chance,
	draft,
	fresh,
	KIND_TOPICS,
	LEVELS,
	lettered,
	type PaperLevel,
	type QuestionGround,
	type QuestionKind,
	say,
} from '../../../shared/paper/index.ts';
import { modeOf } from '../../../shared/profile/index.ts';
import {
	type FixtureRow,
	following,
	followsAt,
	type LedColours,
	leading,
	ledModes,
	looksAlike,
	type RowFixtureSettings,
	rowSheet,
	seenAlong,
	staticName,
} from '../row.ts';
import type { LookInWords } from '../seen.ts';
import { nameAt } from '../stage.ts';

/** What a fixture of a row can be: it obeys the desk, leads with its own colour, follows, or shows its own colour alone. */
const ROLES = ['desk', 'leader', 'follower', 'alone'] as const;
type Role = (typeof ROLES)[number];

/** Who is meant to decide what, line by line. */
interface RolePlan {
	readonly led: LedColours;
	readonly row: FixtureRow;
	/** Own colour of each fixture, by place. */
	readonly own: readonly string[];
	/** Where each fixture stands that leads; the desk has the first line where the row has one. */
	readonly leaders: readonly number[];
	readonly right: readonly Role[];
}

/**
 * Which role must each fixture have? Easy: one of three leads; middle: the desk has them all, or one of four leads; hard: the desk
 * has one line and a fixture the other, or each line has its leader. Roles that would do as well as the right one, tried on the rig,
 * are not offered.
 */
export const rowRoles: QuestionKind = {
	id: 'row-roles',
	topic: KIND_TOPICS['row-roles'],
	forms: ['match'],
	levels: LEVELS,
	fits: (ground) => grounds(ground).length > 0,
	make(ground, chance, level) {
		const led = chance.pick(grounds(ground));
		const { profile, mode } = led;
		const plan = [planFor(led, chance, level, true), planFor(led, chance, level, false)].find(isSound) as RolePlan;
		const places = plan.row.lines.flat();
		// with no desk there is none to obey, and what minds the line at slot 1 follows all the same
		const offered = ROLES.filter(
			(role) => plan.right.includes(role) || (!(role === 'desk' && !plan.row.desk) && !canStandIn(plan, role)),
		);
		const left = lettered(chance, places, (at) => say('fixture', { name: nameAt(profile, at + 1) }));
		const right = lettered(chance, offered, (role) => say(`role-${role}`));
		const pairs = (roles: readonly Role[]): Record<string, string> =>
			Object.fromEntries(places.map((at) => [left.idOf(at), right.idOf(roles[at] as Role)]));
		const key = pairs(plan.right);
		const slips = places.flatMap((at) =>
			offered.map((role) => ({
				mistake: 'other-role' as const,
				answer: { form: 'match' as const, pairs: pairs(given(plan.right, at, role)) },
			})),
		);
		// of two lines the second is the one asked about by name
		const last = plan.row.lines.at(-1) ?? [];
		const leader = plan.leaders.find((at) => last.includes(at));
		return draft(
			{
				facts: {
					fixture: profile.name,
					profile: profile.id,
					mode: modeOf(profile, mode).name,
					address: plan.row.desk?.address ?? followsAt(profile),
					count: places.length,
					hasDesk: plan.row.desk !== null,
					lines: plan.row.lines.length,
					first: (plan.row.lines[0] ?? []).map((at) => nameAt(profile, at + 1)),
					second: (plan.row.lines[1] ?? []).map((at) => nameAt(profile, at + 1)),
					leaders: plan.leaders.map((at) => nameAt(profile, at + 1)),
					leader: leader === undefined ? null : nameAt(profile, leader + 1),
					colours: places.flatMap((at) => [nameAt(profile, at + 1), staticName(profile, plan.own[at] ?? '')]),
				},
				bench: rowSheet(
					plan.row,
					partsFor(
						plan,
						places.map(() => 'alone'),
					),
				),
			},
			{
				ask: { form: 'match', left: left.options, right: right.options },
				key: { form: 'match', right: key },
				mistakes: fresh(slips, (answer) => JSON.stringify(answer.pairs), JSON.stringify(key)),
			},
		);
	},
};

const grounds = ({ profiles }: QuestionGround): readonly LedColours[] =>
	profiles.flatMap((profile) => ledModes(profile));

const given = (roles: readonly Role[], at: number, role: Role): Role[] =>
	roles.map((each, i) => (i === at ? role : each));

function planFor(led: LedColours, chance: Chance, level: PaperLevel, withDesk: boolean): RolePlan {
	const { profile, mode } = led;
	const isDesk = withDesk && level !== 'easy';
	const count = level === 'easy' ? 3 : level === 'middle' ? 4 : 5;
	const all = Array.from({ length: count }, (_, i) => i);
	const lines = level === 'hard' ? [all.slice(0, 2), all.slice(2)] : [all];
	const leaders = lines.filter((_, i) => !(isDesk && i === 0)).map((line) => chance.pick(line));
	const [first, second, third, ...more] = chance.shuffle(led.colours) as [string, string, string, ...string[]];
	const spare = more.length > 0 ? more : [third];
	const own = all.map((at) => (leaders[0] === at ? first : leaders[1] === at ? second : chance.pick(spare)));
	const desk = isDesk ? { address: chance.int(20, 180), held: second } : null;
	const right = all.map(
		(at): Role => (leaders.includes(at) ? 'leader' : isDesk && lines[0]?.includes(at) ? 'desk' : 'follower'),
	);
	return { led, row: { profile, mode, lines, desk }, own, leaders, right };
}

function partsFor({ led: { profile, mode }, row, own }: RolePlan, roles: readonly Role[]): RowFixtureSettings[] {
	return roles.map((role, at): RowFixtureSettings => {
		const held = own[at] ?? '';
		if (role === 'follower') return following(profile, mode, held);
		const leads = leading(profile, mode, held);
		if (role === 'leader') return leads;
		return role === 'alone'
			? { ...leads, lead: 'off' }
			: { ...leads, work: 'line', lead: 'off', address: row.desk?.address ?? followsAt(profile) };
	});
}

/** What a row shows with these roles. @param turn 1: each that should lead holds another colour, and the desk sends another */
function shown(plan: RolePlan, roles: readonly Role[], turn: 0 | 1): readonly LookInWords[] | null {
	const { colours } = plan.led;
	const next = (held: string): string =>
		turn === 0 ? held : (colours[(colours.indexOf(held) + 1) % colours.length] ?? held);
	const desk = plan.row.desk && { ...plan.row.desk, held: next(plan.row.desk.held) };
	const own = plan.own.map((held, at) => (plan.leaders.includes(at) ? next(held) : held));
	const sheet = rowSheet({ ...plan.row, desk }, partsFor({ ...plan, own }, roles));
	return sheet && seenAlong(sheet);
}

const rights = onceUnder<RolePlan, 0 | 1, readonly LookInWords[] | null>();

/** What the right roles show: looked at once a plan, since every other is held against it. */
const shownRight = (plan: RolePlan, turn: 0 | 1): readonly LookInWords[] | null =>
	rights(plan, turn, () => shown(plan, plan.right, turn));

/** Whether these roles show what the right ones do, whatever those who decide show. */
const doesAsWell = (plan: RolePlan, roles: readonly Role[]): boolean =>
	([0, 1] as const).every((turn) => looksAlike(shown(plan, roles, turn), shownRight(plan, turn)));

/** Whether this role, in some place where it is not meant, does as well. */
const canStandIn = (plan: RolePlan, role: Role): boolean =>
	plan.right.some((right, at) => right !== role && doesAsWell(plan, given(plan.right, at, role)));

/** The roles that are meant can be set, and none of them stands in for another. */
const isSound = (plan: RolePlan): boolean =>
	shownRight(plan, 0) !== null && [...new Set(plan.right)].every((role) => !canStandIn(plan, role));
