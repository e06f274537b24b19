import { INVENT_LEVELS, type Inventor, LAWS, type Law } from '../../../shared/invent/index.ts';
import type { Profile, SettingKey, SettingValue, SomeSettings } from '../../../shared/profile/index.ts';
import type { Random } from '../../../shared/random/index.ts';
import type { DrillCondition } from '../types.ts';
import { another, anyAddress, type DrillDraft, fixture, footprint, ids, line, setting } from './stage.ts';

const hands = ['panel', 'power'] as const;

/** Fixtures drawn before one with two modes turns up: more than half have them. */
const DRAWS = 60;

/** What is asked at a panel never seen. */
export type PanelGoal = 'address' | 'mode-address' | 'held' | 'follow';

/** Laws and goals in turn: those of panels that can be read by pressing, since what a switch means is read beside it. Permanent. */
const UNSEEN_LAWS = ['tree-code', 'flat', 'tree-text', 'knob'] as const satisfies readonly Law[];
export const UNSEEN_GOALS = ['address', 'held', 'mode-address', 'follow'] as const satisfies readonly PanelGoal[];

/** Law and goal of a seed: with the next seed both are others, and sixteen running (`UNSEEN_TURNS`) have each law with each goal once. */
export function unseenTurn(seed: number): { readonly law: Law; readonly goal: PanelGoal } {
	const law = seed % UNSEEN_LAWS.length;
	const round = Math.floor(seed / UNSEEN_LAWS.length) % UNSEEN_GOALS.length;
	return {
		law: UNSEEN_LAWS[law] as Law,
		goal: UNSEEN_GOALS[(law + round) % UNSEEN_GOALS.length] as PanelGoal,
	};
}

/** Makes drills on panels never seen. */
export type UnseenMaker = (random: Random, seed: number) => DrillDraft;

/**
 * What makes drills at the panel of a fixture invented from the seed, law after law and goal after goal: an address, a mode and an address,
 * a static colour, or to follow a leader. Handed to `makeDrill` by who has the words.
 */
export const unseenWith =
	(invent: Inventor): UnseenMaker =>
	(random, seed) =>
		panelUnseen(random, seed, invent);

function panelUnseen(random: Random, seed: number, invent: Inventor): DrillDraft {
	const { law, goal } = unseenTurn(seed);
	return atPanel(random, invented(random, law, invent), goal);
}

/** What is asked at the panel of one fixture; of one with a single mode never another mode, of one with a single colour never another. */
export function atPanel(random: Random, profile: Profile, goal: PanelGoal): DrillDraft {
	if (goal === 'follow') return followLeader(random, profile);
	const modes = ids(profile.modes);
	const fromMode = random.pick(modes);
	const mode = goal === 'mode-address' ? another(random, modes, fromMode) : fromMode;
	const fromHeld = random.pick(ids(profile.held));
	const held = profile.held.length > 1 ? another(random, ids(profile.held), fromHeld) : fromHeld;
	const from = anyAddress(random, profile, fromMode);
	const address = anyAddress(random, profile, mode);
	const placed = fixture('bench', profile, 1, {
		work: goal === 'held' ? random.pick(['line', 'programme'] as const) : 'line',
		mode: fromMode,
		address: from,
		held: fromHeld,
	});
	const about = (key: SettingKey, value: SettingValue) => setting(placed.id, key, value);
	const goals: Readonly<Record<Exclude<PanelGoal, 'follow'>, readonly DrillCondition[]>> = {
		address: [about('address', address)],
		'mode-address': [about('mode', mode), about('address', address)],
		held: [about('work', 'held'), about('held', held), { is: 'lit', fixture: placed.id }],
	};
	return {
		scene: 'bench',
		rig: { fixtures: [placed], profiles: [profile] },
		goal: goals[goal],
		hands,
		facts: {
			fixture: placed.id,
			profile: profile.name,
			goal,
			...(goal === 'held' ? { held } : { mode, address, footprint: footprint(profile, mode) }),
		},
	};
}

/** One with more than one mode, and more than one static colour. */
function invented(random: Random, law: Law, invent: Inventor): Profile {
	const laws = LAWS.filter((each) => each !== law);
	for (let n = 0; n < DRAWS; n++) {
		const profile = invent(random.int(0, 2 ** 32 - 1), random.pick(INVENT_LEVELS), { laws });
		if (profile.modes.length > 1 && profile.held.length > 1) return profile;
	}
	throw new RangeError(`no fixture of ${law} with two modes`);
}

/** A second one beside it leads already; this one is to follow it, in its mode. */
function followLeader(random: Random, profile: Profile): DrillDraft {
	const modes = ids(profile.modes);
	const mode = random.pick(modes);
	const at = profile.follows === 'own-address' ? 1 : null;
	const held = random.pick(ids(profile.held));
	const leads: SomeSettings = { work: 'held', lead: 'on', held, mode };
	const leader = fixture('bench', profile, 1, leads);
	const fromMode = random.pick(modes);
	const follower = fixture('bench', profile, 2, {
		work: random.pick(['line', 'held'] as const),
		mode: fromMode,
		address: anyAddress(random, profile, fromMode),
	});
	return {
		scene: 'bench',
		rig: { fixtures: [leader, follower], profiles: [profile], ...line(null, ids([leader, follower])) },
		goal: [
			setting(follower.id, 'work', 'follow'),
			setting(follower.id, 'mode', mode),
			...(at === null ? [] : [setting(follower.id, 'address', at)]),
			{ is: 'data-from', fixture: follower.id, source: { kind: 'leader', fixture: leader.id } },
			{ is: 'lit', fixture: follower.id },
		],
		hands,
		facts: {
			fixture: follower.id,
			profile: profile.name,
			goal: 'follow',
			leader: leader.id,
			mode,
			footprint: footprint(profile, mode),
			// null: it follows from slot one, wherever it stands
			address: at,
		},
	};
}
