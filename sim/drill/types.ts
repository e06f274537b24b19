import type { SettingKey, SettingValue } from '../../shared/profile/index.ts';
import type { Port, RigSheet } from '../../shared/sheet/index.ts';
import type { Harm } from './harm.ts';

/** Values from `from` to `to`, both included. */
export interface Range {
	readonly from: number;
	readonly to: number;
}

/** Who talks to a fixture: a desk, by the universe it carries, or a fixture that leads. */
export type Source =
	| { readonly kind: 'desk'; readonly universe: number }
	| { readonly kind: 'leader'; readonly fixture: string };

/**
 * What a drill asks of the rig, as data. The first group is what hands change, and what the shortest way works on; the
 * second follows from the first on any rig a drill makes, and is looked at all the same.
 */
export type DrillCondition =
	/** A setting of a fixture stands at a value. */
	| { readonly is: 'setting'; readonly fixture: string; readonly key: SettingKey; readonly value: SettingValue }
	/** A number of a fixture lies in one of these ranges. */
	| {
			readonly is: 'setting-within';
			readonly fixture: string;
			readonly key: SettingKey;
			readonly within: readonly Range[];
	  }
	/** All settings are the profile's defaults. */
	| { readonly is: 'defaults'; readonly fixture: string }
	/** These settings stand as the sheet has them: what was right and must not be spoilt. */
	| { readonly is: 'kept'; readonly fixture: string; readonly keys: readonly SettingKey[] }
	/** The fixture runs. */
	| { readonly is: 'on'; readonly fixture: string }
	/** Its mains plug is in `wall`, or in the link socket of this fixture. */
	| { readonly is: 'fed'; readonly fixture: string; readonly from: string }
	/** A level entered at the desk, 0..255, lies in one of these ranges. */
	| { readonly is: 'slot'; readonly universe: number; readonly slot: number; readonly within: readonly Range[] }
	/** Every other level of the universe stands as the sheet has it. */
	| { readonly is: 'levels-kept'; readonly universe: number; readonly except: readonly number[] }
	/** The desk's master stands at this level, 0..255. */
	| { readonly is: 'master'; readonly level: number }
	/** A desk output sends, and carries this universe. */
	| { readonly is: 'output'; readonly output: string; readonly universe: number }
	/** One sound data cable of at most so many metres runs between these sockets, and nothing else is in them. */
	| { readonly is: 'joined'; readonly a: Port; readonly b: Port; readonly metres: number }
	/** A terminator stands in each of these sockets and in no other. */
	| { readonly is: 'terminators'; readonly ports: readonly Port[] }
	// what follows
	/** Whole frames reach the fixture, and they are this one's. */
	| { readonly is: 'data-from'; readonly fixture: string; readonly source: Source }
	/** It does not flash. */
	| { readonly is: 'steady'; readonly fixture: string }
	/** It gives light. */
	| { readonly is: 'lit'; readonly fixture: string };

/** A value as it is told: plain JSON. */
export type FactValue = string | number | boolean | null | readonly (string | number)[];

/** One thing that is not as the drill asks. */
export interface Finding {
	/** Which of the drill's conditions, from 0. */
	readonly at: number;
	readonly condition: DrillCondition;
	/** Where: a fixture's id, a socket, a desk output as `desk:a`, or `desk`. */
	readonly place: string;
	/** What there: a setting's key, `slot 12`, `power`, `mains`, `isolated` (linked live: the plug in the wall that made it so), `data`, `light`, `cable`, `terminator`, `universe`, `output`, `master`. */
	readonly what: string;
	readonly found: FactValue;
	/** What it should be; a range as [from, to, from, to ...]. */
	readonly wanted: FactValue;
}

/**
 * What a learner may lay hands on, in groups. `panel`: keys, switches, slides. `power`: a fixture's own switch. `desk`:
 * levels, master, outputs and their universes. `line`: cables and terminators. `mains`: plugs. `remote`: its buttons.
 */
export type HandsOn = 'panel' | 'power' | 'desk' | 'line' | 'mains' | 'remote';

/** Where it happens: on the prep bench, on the hung rig before doors, or with people in the room. */
export type DrillScene = 'bench' | 'rig' | 'show' | 'load-out';

/** What the words of a drill need, by name; which names a kind gives stands in `DRILL_KINDS`. */
export type DrillFacts = Readonly<Record<string, FactValue>>;

/** What is to be done on a rig, and can be marked: plain JSON, whole and unchanged by a round trip. */
export interface Task {
	readonly scene: DrillScene;
	/** The rig as the learner finds it. */
	readonly sheet: RigSheet;
	/** Done when all hold at once. */
	readonly goal: readonly DrillCondition[];
	readonly hands: readonly HandsOn[];
	/** Ids of `content/en/cautions`, to be shown before the first hand is laid on. */
	readonly cautions: readonly string[];
	/** With people in the room, and the shortest way takes light or data from a lamp that had it. */
	readonly disturbs: boolean;
}

/** A task that a kind made from a seed, with what its words need. */
export interface Drill extends Task {
	readonly version: 1;
	readonly kind: DrillKind;
	readonly seed: number;
	readonly facts: DrillFacts;
}

/** How a learner's log stands against the drill. */
export interface Mark {
	readonly done: boolean;
	/** Links of mains made or broken live on the way, in the order of the log. They stay, whatever is put right afterwards. */
	readonly harm: readonly Harm[];
	/** Conditions that hold, by their place in the goal. */
	readonly right: readonly number[];
	/** What does not hold, in the order of the goal. */
	readonly wrong: readonly Finding[];
	/** Presses that changed something or were on the way; see `countPresses`. */
	readonly presses: number;
	/** Presses of keys that changed neither setting nor light and were not on the way: somebody looked. No fault. */
	readonly looked: number;
	/** The fewest with which a person's hand can be sure to do it from its start; luck may need fewer. */
	readonly fewest: number;
	/** Time on the rig's clock, ms. */
	readonly milliseconds: number;
}

/** Every kind of drill, permanent: saved progress and links are keyed by them. Never reused, never renamed. */
export const DRILL_IDS = Object.freeze([
	'address-keys',
	'address-dip',
	'held-colour',
	'loss-setting',
	'mains-row',
	'mode-address',
	'dip-colour',
	'programme-speed',
	'locked-address',
	'cable-missing',
	'past-512',
	'desk-percent',
	'sensors-audience',
	'row-as-one',
	'row-back-to-back',
	'desk-band',
	'strobe-left-on',
	'remote-three',
	'leader-three',
	'followers-mode',
	'defaults',
	'line-longer',
	'two-universes',
	'leader-left-on',
	'other-law-address',
	'other-law-colour',
	'other-law-handover',
	'panel-unseen',
] as const);

export type DrillKind = (typeof DRILL_IDS)[number];

/** Kinds whose fixture is invented from the seed: whoever makes one brings their maker (`unseenWith`), since inventing takes words. */
export type UnseenKind = 'panel-unseen';

export const isUnseen = (kind: string): kind is UnseenKind => kind === 'panel-unseen';

/** Kinds made on bundled fixtures alone. */
export type BundledKind = Exclude<DrillKind, UnseenKind>;

export const BUNDLED_KINDS: readonly BundledKind[] = Object.freeze(DRILL_IDS.filter((id) => !isUnseen(id)));

/** Seeds of a panel never seen after which law and goal come round again. Permanent, since a seed stands for one of each. */
export const UNSEEN_TURNS = 16;

/** Seeds of a panel never seen after which its law comes round again. Permanent as well. */
export const UNSEEN_LAW_TURNS = 4;

/** A drawn seed moved to a turn. @param turn a whole number from 0 */
export const seedInTurn = (drawn: number, turn: number): number =>
	drawn - (drawn % UNSEEN_TURNS) + (turn % UNSEEN_TURNS);
