import { lessonWords as words } from '#words/lessons/index.ts';
import { InputError } from '../../../shared/error/index.ts';
import { oncePer } from '../../../shared/memo/index.ts';
import { illuminance, peakCandela } from '../../../shared/optics/index.ts';
import { CAUTIOUS_SHARE } from '../../../shared/power/index.ts';
import { bundledRig, quickSheet, type RigSheet, readSheet } from '../../../shared/sheet/index.ts';
import { type DrillCondition, makeTask } from '../../../sim/drill/index.ts';
import type { Rig } from '../../../sim/rig/index.ts';
import { openUnharmed } from '../../../sim/rig/trusted.ts';
import { describeLight, fixtureName, modeName, settingValueText } from '../../wording/index.ts';
import { presetSheet } from '../bench/index.ts';
import { type OneTask, packTasks, type TaskSet } from '../drills/index.ts';
import type { BenchSpec, Lesson, TaskSpec } from './schema.ts';

/** The sheet a lesson's bench opens on. @throws InputError `lesson.bench`, and what `readSheet` throws */
export function sheetOf({ rig, preset, quick, wide, blackout, change, boxes = {} }: BenchSpec): RigSheet {
	const given = [rig && bundledRig(rig), preset && presetSheet(preset), quick && quickSheet(quick)].filter(
		(sheet): sheet is RigSheet => typeof sheet === 'object',
	);
	const [sheet] = given;
	if (!sheet || given.length > 1) throw new InputError('lesson.bench', 'bench', { expected: 'one-rig' });
	for (const id of Object.keys(change))
		if (!sheet.fixtures.some((fixture) => fixture.id === id))
			throw new InputError('lesson.bench', `bench.change.${id}`, { trouble: 'no-such-fixture', id });
	const hall = { ...sheet.hall, width: wide ?? sheet.hall.width };
	const aside = (hall.width - sheet.hall.width) / 2;
	const fixtures = sheet.fixtures.map((fixture) => {
		const { settings, place, ...rest } = change[fixture.id] ?? {};
		return {
			...fixture,
			...rest,
			settings: { ...fixture.settings, ...(settings as object | undefined) },
			place: { ...fixture.place, x: fixture.place.x + aside, ...(place as object | undefined) },
		};
	});
	const desk = sheet.desk && { ...sheet.desk, ...(blackout && { master: 0 }) };
	return readSheet({ ...sheet, ...boxes, hall, desk, fixtures });
}

/**
 * What the learner is to do: a kind of drill, or goals of one make on benches of one make, ready to be marked.
 * @throws InputError `task.solved` where one is done before it begins
 */
export const taskOf = oncePer(({ tasks, bench }: Pick<Lesson, 'tasks' | 'bench'>): TaskSet => {
	const [first] = tasks;
	if (first && 'drill' in first) return first;
	return packTasks(tasks.flatMap((task) => ('drill' in task ? [] : [caseOf(task, bench)])));
});

function caseOf(
	{ scene, hands, goal, free, ...task }: Exclude<TaskSpec, { drill: unknown }>,
	bench: BenchSpec,
): OneTask {
	const { on = bench } = task;
	const sheet = sheetOf(on);
	if (on.log.length > 0) throw new InputError('lesson.task', 'task.on.log', { trouble: 'log-before-task' });
	const rig = openUnharmed(sheet);
	const conditions = goal.flatMap((each) => conditionsOf(each, rig));
	const facts = Object.assign({}, ...goal.map((each) => goalFacts(each, rig)));
	if (task.says.includes('{asks}')) facts.asks = asksText(rig);
	const says = task.says.replace(/\{(\w+)\}/g, (whole, name: string) => String(facts[name] ?? whole));
	return { task: makeTask({ scene, hands, rig: sheet, goal: conditions, free }), says };
}

export type Goal = Extract<TaskSpec, { goal: unknown }>['goal'][number];

/** How far under the brightest that lasts still counts, in points of brightness: dimmer than need be is no answer either. Ours. */
const SPARE = 5;
/** Share of the lux asked for, either way. Ours. */
const OFF = 0.1;
const LEVELS = Array.from({ length: 101 }, (_, level) => level);

/** A goal of a lesson as the conditions that a marker knows. @throws InputError `lesson.goal` */
const conditionsOf = (goal: Goal, rig: Rig): DrillCondition[] =>
	goal.is === 'patched' ? patchedAs(goal, rig) : [conditionOf(goal, rig)];

function patchedAs({ fixture }: Extract<Goal, { is: 'patched' }>, rig: Rig): DrillCondition[] {
	const patched = rig.sheet.desk?.patch.find((each) => each.fixture === fixture);
	if (!patched) throw new InputError('lesson.goal', 'task.goal', { trouble: 'no-such-fixture', id: fixture });
	return [
		{ is: 'setting', fixture, key: 'mode', value: patched.mode },
		{ is: 'setting', fixture, key: 'address', value: patched.address },
	];
}

/** A goal of a lesson as a condition that a marker knows: what is to be worked out is worked out on the rig. */
export function conditionOf(goal: Exclude<Goal, { is: 'patched' }>, rig: Rig): DrillCondition {
	if (goal.is === 'lasts') {
		const lasting = LEVELS.filter((level) => CAUTIOUS_SHARE * hoursAt(rig, goal.fixture, level) >= goal.hours);
		const most = Math.max(...requireSome(lasting, goal));
		return within(goal.fixture, Math.max(0, most - SPARE), most);
	}
	if (goal.is === 'lux' || goal.is === 'as-bright') {
		const wanted = goal.is === 'lux' ? goal.lux : luxNow(rig, goal.as);
		const near = LEVELS.filter((level) => Math.abs(luxAt(rig, goal.fixture, level) / wanted - 1) <= OFF);
		const some = requireSome(near, goal);
		return within(goal.fixture, Math.min(...some), Math.max(...some));
	}
	return goal;
}

/** What a task's words may name in braces. */
function goalFacts(goal: Goal, rig: Rig): Readonly<Record<string, number | string>> {
	if (goal.is === 'lasts') {
		const { battery } = unitAt(rig, goal.fixture, 0).state.context;
		const left = battery ? battery.wattHours / battery.capacity : 0;
		return { hours: goal.hours, charge: Math.round(100 * left), percent: 100 * CAUTIOUS_SHARE };
	}
	if (goal.is === 'as-bright')
		return {
			throw: unitAt(rig, goal.fixture, 100).placed.place.throw,
			asThrow: unitAt(rig, goal.as, 100).placed.place.throw,
		};
	if (goal.is === 'setting') return settingFact(goal, rig);
	if (goal.is === 'patched') return { patch: patchText(rig) };
	if (goal.is !== 'lux') return {};
	const metres = unitAt(rig, goal.fixture, 100).placed.place.throw;
	const candela = luxAt(rig, goal.fixture, 100) * metres ** 2;
	return { lux: goal.lux, throw: metres, candela: Math.round(candela) };
}

/** The patch in words, row by row: the desk is not in hand, and so is not on the bench. */
const patchText = (rig: Rig): string =>
	(rig.sheet.desk?.patch ?? [])
		.map(({ fixture, mode, address }) => {
			const profile = rig.gear.units.get(fixture)?.profile;
			return words.patchRow(fixtureName(rig, fixture), profile ? modeName(profile, mode) : mode, address);
		})
		.join('; ');

/** What each patched fixture would show if it stood as the desk has it, in words: who looks at a wall has to know what is asked of it. */
function asksText(rig: Rig): string {
	const as = rig.fork();
	for (const { fixture, mode, address } of rig.sheet.desk?.patch ?? [])
		as.send({ type: 'settings.become', fixture, change: { work: 'line', mode, address } });
	as.wait(1);
	return (rig.sheet.desk?.patch ?? [])
		.map(({ fixture }) => words.asksRow(fixtureName(rig, fixture), describeLight(as.look(fixture).light)))
		.join('; ');
}

/** A number as it is, a static colour by its name; other choices have words of a panel's own, which a sentence leaves to it. */
function settingFact(
	{ fixture, key, value }: Extract<Goal, { is: 'setting' }>,
	rig: Rig,
): { [key: string]: number | string } {
	if (typeof value === 'number') return { [key]: value };
	const profile = key === 'held' ? rig.gear.units.get(fixture)?.profile : undefined;
	return profile ? { held: settingValueText(profile, 'held', value) } : {};
}

/** Hours until a fixture's battery is flat with its own brightness at a percent, from all that is in it now. */
export function hoursAt(rig: Rig, fixture: string, level: number): number {
	const { watts, battery } = unitAt(rig, fixture, level).state.context;
	return battery && watts > 0 ? battery.wattHours / watts : 0;
}

/** Lux where the beam's middle lands, square on, with the fixture's own brightness at a percent. */
export function luxAt(rig: Rig, fixture: string, level: number): number {
	const at = rigAt(rig, fixture, level);
	const { profile, placed } = unitAt(rig, fixture, level);
	const { cells } = at.look(fixture).light;
	const lumens = profile.emitters.reduce(
		(sum, emitter, i) =>
			sum + (emitter.lumens * cells.reduce((all, cell) => all + (cell.levels[i] ?? 0), 0)) / cells.length,
		0,
	);
	return illuminance(peakCandela(lumens, profile.optics.beam, profile.optics.field), placed.place.throw);
}

/** Lux where the beam's middle lands, square on, as the fixture stands. */
function luxNow(rig: Rig, fixture: string): number {
	const level = rig.gear.units.get(fixture)?.state.context.settings.level ?? 0;
	return luxAt(rig, fixture, level);
}

const within = (fixture: string, from: number, to: number): DrillCondition => ({
	is: 'setting-within',
	fixture,
	key: 'level',
	within: [{ from, to }],
});

function rigAt(rig: Rig, fixture: string, level: number): Rig {
	const at = rig.fork();
	at.send({ type: 'settings.become', fixture, change: { level } });
	// what it draws is reckoned once time goes on
	at.wait(1);
	return at;
}

function unitAt(rig: Rig, fixture: string, level: number) {
	const unit = rigAt(rig, fixture, level).gear.units.get(fixture);
	if (!unit) throw new InputError('lesson.goal', 'task.goal', { trouble: 'no-such-fixture', id: fixture });
	return unit;
}

function requireSome(levels: number[], goal: Goal): number[] {
	if (levels.length === 0)
		throw new InputError('lesson.goal', 'task.goal', { trouble: 'no-such-brightness', goal: JSON.stringify(goal) });
	return levels;
}
