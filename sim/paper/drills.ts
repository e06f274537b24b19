import {
	type Chance,
	draft,
	type FactValue,
	type ItemFacts,
	KIND_TOPICS,
	LEVELS,
	type PaperLevel,
	type QuestionGround,
	type QuestionKind,
	say,
	severalOf,
	type WrongAnswer,
} from '../../shared/paper/index.ts';
import { bundledProfile, FIRST_BUNDLED, modeOf, type Profile } from '../../shared/profile/index.ts';
import { profileFor } from '../../shared/sheet/index.ts';
import {
	BUNDLED_KINDS,
	type BundledKind,
	DRILL_KINDS,
	type Drill,
	fewestPresses,
	makeDrillWhere,
} from '../drill/index.ts';
import { openUnharmed } from '../rig/trusted.ts';

/** Highest seed of a drill in a paper. */
const TOP_SEED = 0xffffffff;

/** Drills are made on bundled fixtures: those that the questions are about. */
const drillable = ({ profiles }: QuestionGround): readonly string[] =>
	profiles.filter((profile) => bundledProfile(profile.id) === profile).map(({ id }) => id);

/**
 * Bundled fixtures that a drill of a kind is often made of with no other beside it: where to look first for a drill on some
 * fixtures. A test holds it to the drills; nothing but time hangs on it.
 */
export const OFTEN_ON: Readonly<Record<BundledKind, readonly string[]>> = Object.freeze({
	'address-keys': ['tallow-6', 'picket-8'],
	'address-dip': ['cobble'],
	'held-colour': ['tallow-6', 'picket-8'],
	'loss-setting': ['tallow-6', 'picket-8', 'cobble'],
	'mains-row': ['picket-8'],
	'mode-address': ['tallow-6', 'picket-8'],
	'dip-colour': ['cobble'],
	'programme-speed': ['tallow-6', 'picket-8'],
	'locked-address': ['tallow-6', 'picket-8'],
	'cable-missing': ['tallow-6', 'picket-8'],
	'past-512': ['tallow-6', 'picket-8'],
	'desk-percent': ['tallow-6'],
	'sensors-audience': ['tallow-6'],
	'row-as-one': ['tallow-6', 'picket-8', 'cobble'],
	'row-back-to-back': [],
	'desk-band': ['tallow-6'],
	'strobe-left-on': ['tallow-6', 'picket-8'],
	'remote-three': ['tallow-6'],
	'leader-three': ['tallow-6', 'picket-8', 'cobble'],
	'followers-mode': ['tallow-6', 'picket-8', 'cobble'],
	defaults: ['tallow-6', 'picket-8'],
	'line-longer': ['tallow-6', 'picket-8'],
	'two-universes': ['tallow-6', 'picket-8'],
	'leader-left-on': ['tallow-6', 'picket-8'],
	'other-law-address': ['thimble-4'],
	'other-law-colour': ['thimble-4'],
	'other-law-handover': ['thimble-4'],
});

const isBundled = (kind: string): kind is BundledKind => (BUNDLED_KINDS as readonly string[]).includes(kind);

/** Drills of these kinds, one after another, each on none but the fixtures that the questions are about. Never more than `most`. */
function* drillsOn(
	ground: QuestionGround,
	chance: Chance,
	kinds: readonly BundledKind[],
	most: number,
): Generator<Drill, undefined> {
	const able = new Set(drillable(ground));
	const isAll = FIRST_BUNDLED.every(({ id }) => able.has(id));
	const often = kinds.filter((kind) => {
		const on = OFTEN_ON[kind];
		// one that is often on none alone may turn up where all of the first are
		return on.length === 0 ? isAll : on.some((profile) => able.has(profile));
	});
	const asked = often.length > 0 ? often : kinds;
	for (let n = 0; n < most; n++) {
		const drill = makeDrillWhere(chance.pick(asked), chance.int(0, TOP_SEED), ({ fixtures }) =>
			fixtures.every(({ profile }) => able.has(profile)),
		);
		if (drill) yield drill;
	}
}

/**
 * What a drill's words are filled with, ids told by the names that its sheet and its fixture's profile give them. `drill` says which
 * kind, `hasAddress` whether it gives one.
 */
export function drillFacts({ kind, sheet, facts, scene }: Drill): ItemFacts {
	const names = new Map(sheet.fixtures.map(({ id, name }) => [id, name]));
	const about = [facts['fixture'], facts['leader'], facts['fresh'], facts['fixtures']].flat().find(Boolean);
	const placed = sheet.fixtures.find(({ id }) => id === about) ?? sheet.fixtures[0];
	const profile = placed && profileFor(sheet, placed.profile);
	const told = Object.entries(facts).map(([key, value]): [string, FactValue] => {
		const name = (one: string | number): string | number =>
			names.get(String(one)) ?? (profile && typeof one === 'string' ? ownName(profile, key, one) : one);
		if (Array.isArray(value)) return [key, value.map(name)];
		return [key, typeof value === 'string' ? name(value) : value];
	});
	return { ...Object.fromEntries(told), drill: kind, scene, hasAddress: facts['address'] !== undefined };
}

/** What a profile calls a thing of its own, by the fact it stands in. */
function ownName(profile: Profile, key: string, id: string): string {
	const named = (things: readonly { readonly id: string; readonly name: string }[]): string =>
		things.find((each) => each.id === id)?.name ?? id;
	switch (key) {
		case 'mode':
		case 'fromMode':
			return modeOf(profile, id).name;
		case 'held':
			return named(profile.held);
		case 'programme':
			return named(profile.programmes);
		case 'emitters':
			return named(profile.emitters).toLowerCase();
		case 'profile':
			return profile.name;
		default:
			return id;
	}
}

/** Draws before there is held to be no drill of a level on these fixtures; each bundled fixture has some at every level. */
const DRAWS = 400;

/** To be done on the bench: a drill of the level, marked by playing what was done there. */
export const onTheBench: QuestionKind = {
	id: 'on-the-bench',
	topic: KIND_TOPICS['on-the-bench'],
	forms: ['practical'],
	levels: LEVELS,
	fits: (ground) => drillable(ground).length > 0,
	make(ground, chance, level) {
		const kinds = DRILL_KINDS.flatMap(({ id, level: its }) => (its === level && isBundled(id) ? [id] : []));
		const drill = drillsOn(ground, chance, kinds, DRAWS).next().value;
		if (!drill) throw new RangeError(`no ${level} drill on these fixtures`);
		return draft(
			{
				facts: { ...drillFacts(drill), fewest: fewestPresses(drill, openUnharmed(drill.sheet)) },
				bench: drill.sheet,
			},
			{
				ask: { form: 'practical', drill: { kind: drill.kind, seed: drill.seed } },
				key: { form: 'practical' },
				mistakes: [],
			},
		);
	},
};

const CAUTION_DRAWS = 60;
/** Drills with a caution, after which the one that comes nearest to the level will do. */
const ENOUGH = 6;
const MOST_WRONG = 3;

/** Which cautions go with this task? More go with a harder one. They are those that the drill's own rig calls for. */
export const cautionHere: QuestionKind = {
	id: 'caution-here',
	topic: KIND_TOPICS['caution-here'],
	forms: ['several'],
	levels: LEVELS,
	fits: (ground) => drillable(ground).length > 0,
	make(ground, chance, level) {
		let drill: Drill | null = null;
		let met = 0;
		for (const each of drillsOn(ground, chance, BUNDLED_KINDS, CAUTION_DRAWS)) {
			if (each.cautions.length === 0 || elsewhere(each).length < 2 || !isNamed(each)) continue;
			if (!drill || distance(each, level) < distance(drill, level)) drill = each;
			met++;
			if (distance(drill, level) === 0 || met >= ENOUGH) break;
		}
		if (!drill) throw new RangeError('no drill on these fixtures has a caution');
		const right = drill.cautions;
		const wrong = chance.shuffle(elsewhere(drill)).slice(0, MOST_WRONG);
		const slips: WrongAnswer<readonly string[]>[] = [
			...wrong.map((id): WrongAnswer<readonly string[]> => ['caution-not-here', [...right, id]]),
			...right.map((id): WrongAnswer<readonly string[]> => ['some-missed', right.filter((each) => each !== id)]),
			['one-too-many', [...right, ...wrong]],
		];
		const { sheet } = drill;
		return severalOf(
			chance,
			{
				facts: {
					...drillFacts(drill),
					seed: drill.seed,
					overhead: isOverhead(drill),
					charges: drill.scene === 'bench' && hasBattery(drill),
					calls: [...right],
				},
				bench: sheet,
			},
			[...right, ...wrong],
			{ label: (id) => say(`caution-${id}`), isRight: (id) => right.includes(id), wrongs: slips },
		);
	},
};

/**
 * Whether the task's words say enough to see each of its cautions. What a lamp of the rig happens to do is not in them: ultraviolet
 * and flashing count only where the task names the colour or the programme, or is about a lamp left flashing.
 */
function isNamed({ kind, cautions, facts, sheet }: Drill): boolean {
	const profiles = sheet.fixtures.map(({ profile }) => profileFor(sheet, profile));
	const named = new Set(Object.values(facts).flat());
	const namesUltraviolet = profiles.some(({ held, emitters }) =>
		held.some(
			({ id, levels }) => named.has(id) && emitters.some((one) => one.ultraviolet && (levels[one.id] ?? 0) > 0),
		),
	);
	const namesFlashing =
		kind === 'strobe-left-on' ||
		profiles.some(({ programmes }) => programmes.some(({ id, kind: does }) => named.has(id) && does === 'strobe'));
	return (namesUltraviolet || !cautions.includes('ultraviolet')) && (namesFlashing || !cautions.includes('flashing'));
}

/** How far the number of a drill's cautions is from what the level asks: one, two, or three and more. */
function distance({ cautions }: Drill, level: PaperLevel): number {
	if (level === 'hard') return Math.max(0, 3 - cautions.length);
	return Math.abs(cautions.length - (level === 'easy' ? 1 : 2));
}

const isOverhead = ({ sheet }: Drill): boolean => sheet.fixtures.some(({ place }) => place.overhead);
const hasBattery = ({ sheet }: Drill): boolean =>
	sheet.fixtures.some(({ profile }) => profileFor(sheet, profile).power.battery !== null);

/**
 * Cautions that this task plainly does not call for: what they speak of is not on its rig at all. One that it could be said to touch
 * is left out, so that nobody is marked wrong for taking care.
 */
function elsewhere(drill: Drill): string[] {
	const { cautions, scene, hands } = drill;
	const never: readonly (readonly [id: string, isFar: boolean])[] = [
		['live-show', scene !== 'show'],
		['hanging', !isOverhead(drill)],
		['height', !isOverhead(drill)],
		['mains', !hands.includes('mains') && !hands.includes('power')],
		['batteries', !hasBattery(drill)],
		['ultraviolet', drill.sheet.fixtures.every(({ profile }) => !hasUltraviolet(drill, profile))],
		['flashing', !('speed' in drill.facts) && !('programme' in drill.facts)],
	];
	return never.flatMap(([id, isFar]) => (isFar && !cautions.includes(id) ? [id] : []));
}

const hasUltraviolet = ({ sheet }: Drill, profile: string): boolean =>
	profileFor(sheet, profile).emitters.some(({ ultraviolet }) => ultraviolet);
