import { InputError } from '../../shared/error/index.ts';
import { SETTING_KEYS, type SettingKey, type SettingValue } from '../../shared/profile/index.ts';
import type { RigEvent } from '../event/index.ts';
import type { Rig } from '../rig/index.ts';
import { findingsOf } from './check.ts';
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

/**
 * What is not as the drill asks, causes first, in the order of its goal, each with what follows from it. Found by trying: a finding
 * is a consequence of a cause if putting that alone right clears it; of several causes together if it stays while any one of them
 * does. The rig stays as it is.
 * @param drill taken as it is
 */
export function causesOf(drill: Task, rig: Rig): CauseGroup[] {
	const wrong = findingsOf(drill, rig);
	const maybe = wrong.filter(({ what }) => FOLLOWS.has(what));
	const after = (repaired: readonly Finding[]) => clearedBy(drill, rig, repaired, maybe);
	const roots = wrong.filter(
		(each) =>
			!maybe.includes(each) ||
			// its own switch, unless the supply alone brings it back
			(each.what === 'power' && !wrong.some((other) => other.what === 'mains' && after([other]).has(each))),
	);
	const others = maybe.filter((each) => !roots.includes(each));
	const alone = others.length === 0 ? [] : roots.map((root) => after([root]));
	const allBut = others.length === 0 ? [] : roots.map((root) => after(roots.filter((each) => each !== root)));
	const all = others.length === 0 ? new Set<Finding>() : after(roots);

	// each root stands for its group, by the place of the first of them
	const group = roots.map((_, i) => i);
	const join = (a: number, b: number) => {
		const [to = 0, from = 0] = [group[a] ?? a, group[b] ?? b].sort((x, y) => x - y);
		for (const [i, at] of group.entries()) if (at === from) group[i] = to;
	};
	const causeOf = new Map<Finding, number>();
	for (const finding of others) {
		const single = alone.findIndex((cleared) => cleared.has(finding));
		if (single >= 0) {
			causeOf.set(finding, single);
			continue;
		}
		if (!all.has(finding)) continue;
		const needed = roots.flatMap((_, i) => (allBut[i]?.has(finding) ? [] : [i]));
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

/** The findings among `others` that are gone once these are put right and nothing else. */
function clearedBy(drill: Task, rig: Rig, repaired: readonly Finding[], others: readonly Finding[]): Set<Finding> {
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
	const still = new Set(findingsOf(drill, ahead).map(nameOf));
	return new Set(others.filter((each) => !still.has(nameOf(each))));
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

const nameOf = ({ at, place, what }: Finding): string => `${at} ${place} ${what}`;

/** Events that put these right; none where hands cannot, as the rig stands. */
function repairOf(drill: Task, rig: Rig, repaired: readonly Finding[]): readonly RigEvent[] {
	const goal = [
		...repaired.flatMap((finding) => asked(finding, rig)),
		...terminators(repaired, rig),
		...kept(repaired, rig),
	];
	try {
		return wayOn({ ...drill, goal }, rig);
	} catch (error) {
		if (error instanceof InputError && error.code === 'drill.stuck') return [];
		throw error;
	}
}

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
