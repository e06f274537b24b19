import { InputError } from '../../shared/error/index.ts';
import { oncePer } from '../../shared/memo/index.ts';
import { SETTING_KEYS, type SettingKey, type SettingValue } from '../../shared/profile/index.ts';
import type { RigEvent } from '../event/index.ts';
import type { Rig } from '../rig/index.ts';
import { findingName, findingsOf } from './check.ts';
import type { DrillCondition, Finding, Task } from './types.ts';
import { wayOn } from './way/index.ts';

/** What is wrong by somebody's hand, and what is wrong only because of it. */
export interface CauseGroup {
	/** More than one where only all of them put right clear what follows. */
	readonly causes: readonly Finding[];
	/** Findings that go once the causes are put right, with nothing else touched. */
	readonly follows: readonly Finding[];
}

/** What may be wrong only because of other things. */
const FOLLOWS: ReadonlySet<string> = new Set(['power', 'data', 'light']);
/** Long enough for every fixture to take up what reaches it, ms (ours, no source). */
const SETTLE_MS = 5000;
/** With more than this to be put right nothing is tried (ours, no source): what is tried grows with it, and a page waits for it. */
const MOST_ROOTS = 24;

/**
 * What is not as the drill asks, causes first, in the order of its goal, each with what follows from it. Found by trying: a finding
 * is a consequence of a cause if putting that alone right clears it; of several together if putting those right clears it, and no fewer
 * of them do. With more causes than {@link MOST_ROOTS} each finding stands by itself. The rig stays as it is.
 * @param drill taken as it is
 */
export function causesOf(drill: Task, rig: Rig): CauseGroup[] {
	const wrong = findingsOf(drill, rig);
	const maybe = wrong.filter(({ what }) => FOLLOWS.has(what));
	const eachByItself = () => wrong.map((finding) => ({ causes: [finding], follows: [] }));
	if (wrong.length - maybe.length > MOST_ROOTS) return eachByItself();
	const after = (repaired: readonly Finding[]) => clearedBy(drill, rig, repaired, maybe);
	const alone = oncePer((root: Finding) => after([root]));
	const roots = wrong.filter(
		(each) =>
			!maybe.includes(each) ||
			// its own switch, unless the supply alone brings it back
			(each.what === 'power' && !wrong.some((other) => other.what === 'mains' && alone(other).has(each))),
	);
	if (roots.length > MOST_ROOTS) return eachByItself();
	const others = maybe.filter((each) => !roots.includes(each));

	// each root stands for its group, by the place of the first of them
	const group = roots.map((_, i) => i);
	const join = (a: number, b: number) => {
		const [to = 0, from = 0] = [group[a] ?? a, group[b] ?? b].sort((x, y) => x - y);
		for (const [i, at] of group.entries()) if (at === from) group[i] = to;
	};
	const causeOf = new Map<Finding, number>();
	for (const finding of others) {
		const single = roots.findIndex((root) => alone(root).has(finding));
		if (single >= 0) causeOf.set(finding, single);
	}
	// what no one of them clears may need several
	const left = others.filter((finding) => !causeOf.has(finding));
	const all = left.length > 0 ? after(roots) : new Set();
	const cleared = new Map<string, Set<Finding>>();
	const clears = (some: readonly number[]): Set<Finding> => {
		const key = some.join();
		const known = cleared.get(key) ?? after(roots.filter((_, i) => some.includes(i)));
		cleared.set(key, known);
		return known;
	};
	for (const finding of left.filter((each) => all.has(each))) {
		// as few as will do, the earliest: those not needed beside the rest are dropped from the end
		const needed = roots.reduceRight<readonly number[]>(
			(some, _, i) => {
				const fewer = some.filter((each) => each !== i);
				return clears(fewer).has(finding) ? fewer : some;
			},
			[...roots.keys()],
		);
		const [first] = needed;
		if (first === undefined) continue;
		for (const each of needed) join(first, each);
		causeOf.set(finding, first);
	}
	const groups = [...new Set(group)].map((at) => ({
		causes: roots.filter((_, i) => group[i] === at),
		follows: others.filter((finding) => {
			const cause = causeOf.get(finding);
			return cause !== undefined && group[cause] === at;
		}),
	}));
	const loose = others
		.filter((finding) => !causeOf.has(finding))
		.map((finding) => ({ causes: [finding], follows: [] }));
	const firstOf = ({ causes: [first] }: CauseGroup): number => (first ? wrong.indexOf(first) : 0);
	return [...groups, ...loose].sort((a, b) => firstOf(a) - firstOf(b));
}

/** The findings among `others` that are gone for good once these are put right and nothing else. */
function clearedBy(drill: Task, rig: Rig, repaired: readonly Finding[], others: readonly Finding[]): Set<Finding> {
	const ahead = afterRepair(drill, rig, repaired);
	const findings = findingsOf(drill, ahead);
	const still = new Set(findings.map(findingName));
	const dataStill = new Set(findings.filter(({ what }) => what === 'data').map(({ place }) => place));
	// light that wrong or damaged data drives is right at one moment and wrong at the next
	const isByChance = ({ what, place }: Finding): boolean =>
		what === 'light' && (dataStill.has(place) || ahead.look(place).light.flicker);
	return new Set(others.filter((each) => !still.has(findingName(each)) && !isByChance(each)));
}

/**
 * The rig as it comes to stand once these are put right and nothing else: settings of keyed fixtures whether hands could or not, all
 * else as far as they can. The rig itself stays as it is.
 * @param drill taken as it is
 */
export function afterRepair(drill: Task, rig: Rig, repaired: readonly Finding[]): Rig {
	const ahead = rig.fork();
	const switchedOn = new Set<string>();
	for (const event of repairOf(drill, rig, repaired)) {
		if (event.type === 'clock.wait') {
			ahead.wait(event.ms);
			continue;
		}
		// nor is an output switched on for its universe alone
		if (event.type === 'desk.output' && !isAsked(repaired, `desk:${event.output}`, 'output')) continue;
		if (event.type === 'power.switch' && event.on) switchedOn.add(event.fixture);
		if (!attempt(ahead, event)) break;
	}
	// a way switches on what is off: that is no part of putting other things right
	for (const fixture of switchedOn)
		if (!isAsked(repaired, fixture, 'power')) ahead.send({ type: 'power.switch', fixture, on: false });
	ahead.wait(SETTLE_MS);
	return ahead;
}

const isAsked = (repaired: readonly Finding[], place: string, what: string): boolean =>
	repaired.some((each) => each.place === place && each.what === what);

/** Whether the rig takes it: with other things still wrong a socket may be taken. */
function attempt(rig: Rig, event: RigEvent): boolean {
	try {
		rig.send(event);
		return true;
	} catch (error) {
		if (error instanceof InputError) return false;
		throw error;
	}
}

/** Events that put these right: a keyed fixture's settings by themselves, all else by hands; of what hands cannot do, nothing. */
function repairOf(drill: Task, rig: Rig, repaired: readonly Finding[]): readonly RigEvent[] {
	const set = repaired.filter(({ what, place }) => isSetting(what) && isKeyed(rig, place));
	const rest = repaired.filter((finding) => !set.includes(finding));
	// a setting by itself, not by keys: a key may change others on its way, and a remote's key those of its neighbours
	const become = set.map(({ place, what, wanted }): RigEvent => {
		// of a range its lowest
		const value = Array.isArray(wanted) ? wanted[0] : wanted;
		return { type: 'settings.become', fixture: place, change: { [what]: value } };
	});
	const goal = [...rest.flatMap((finding) => asked(finding, rig)), ...terminators(rest, rig), ...kept(rest, rig)];
	try {
		return [...become, ...(goal.length > 0 ? wayOn({ ...drill, goal }, rig) : [])];
	} catch (error) {
		if (error instanceof InputError && error.code === 'drill.stuck') return become;
		throw error;
	}
}

const isKeyed = ({ gear }: Rig, place: string): boolean => {
	const unit = gear.units.get(place);
	return unit !== undefined && unit.profile.panel.kind !== 'dip';
};

/** What one finding asks for, and no more of its condition than that. */
function asked({ condition, place, what, wanted }: Finding, { gear }: Rig): DrillCondition[] {
	switch (condition.is) {
		case 'kept':
		case 'defaults':
			return [{ is: 'setting', fixture: place, key: what as SettingKey, value: wanted as SettingValue }];
		case 'levels-kept': {
			const level = Number(wanted);
			const within = [{ from: level, to: level }];
			return [{ is: 'slot', universe: condition.universe, slot: Number(what.slice('slot '.length)), within }];
		}
		case 'terminators':
			return [];
		case 'output': {
			const now = gear.desk?.outputs.find(({ id }) => id === condition.output)?.universe;
			return [what === 'output' && now !== undefined ? { ...condition, universe: now } : condition];
		}
		default:
			return [condition];
	}
}

/** Where terminators are to stand once those that are wrong are put right. */
function terminators(repaired: readonly Finding[], { gear }: Rig): DrillCondition[] {
	const moved = repaired.filter(({ condition }) => condition.is === 'terminators');
	if (moved.length === 0) return [];
	const away = new Set(moved.map(({ place }) => place));
	const fitted = moved.filter(({ wanted }) => wanted === 'fitted').map(({ place }) => place);
	return [{ is: 'terminators', ports: [...gear.terminators.filter((port) => !away.has(port)), ...fitted] }];
}

/** What stays as it is meanwhile: the other settings of the same fixtures, and where all other plugs are. */
function kept(repaired: readonly Finding[], { gear }: Rig): DrillCondition[] {
	const touched = new Set(repaired.map(({ place, what }) => `${place} ${what}`));
	const fixtures = new Set(repaired.filter(({ what }) => isSetting(what)).map(({ place }) => place));
	const settings = [...fixtures].flatMap((fixture): DrillCondition[] => {
		const now = gear.units.get(fixture)?.state.context.settings;
		if (!now) return [];
		return SETTING_KEYS.filter((key) => !touched.has(`${fixture} ${key}`)).map((key) => ({
			is: 'setting',
			fixture,
			key,
			value: now[key],
		}));
	});
	const isMains = repaired.some(({ condition }) => condition.is === 'fed');
	const plugs = isMains
		? [...gear.units].flatMap(([fixture, { plug }]): DrillCondition[] =>
				plug === 'none' || repaired.some((each) => each.condition.is === 'fed' && each.place === fixture)
					? []
					: [{ is: 'fed', fixture, from: plug }],
			)
		: [];
	return [...settings, ...plugs];
}

const isSetting = (what: string): boolean => (SETTING_KEYS as readonly string[]).includes(what);
