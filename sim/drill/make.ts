import { InputError, shown } from '../../shared/error/index.ts';
import { SETTING_KEYS, type SettingKey } from '../../shared/profile/index.ts';
import { makeRandom } from '../../shared/random/index.ts';
import { noBoxes, profileFor, type RigSheet, type SheetFixture } from '../../shared/sheet/index.ts';
import { openUnharmed } from '../rig/trusted.ts';
import { cautionsFor } from './cautions.ts';
import { findingsOf } from './check.ts';
import { DRILL_IDS, type DrillKind } from './ids.ts';
import { KINDS, type Made } from './kinds/index.ts';
import { isSeen } from './symptom.ts';
import type { Condition, Drill, Task } from './types.ts';
import { wishOfCondition } from './wish.ts';

/** Draws before a kind that only makes rigs that are right already, or wrong where nobody would see it, is given up. */
const TRIES = 100;

/**
 * A drill of a kind: the same seed gives the same drill, always and everywhere. Its start is never solved already, and one that
 * says something is wrong can be seen to be.
 * @param seed a whole number from 0 to 2^53 - 1
 * @throws InputError `drill.kind` for a kind there is not, `random.seed` for a seed out of range
 */
export function makeDrill(kind: DrillKind, seed: number): Drill {
	return makeDrillWhere(kind, seed, () => true) as Drill;
}

/**
 * As `makeDrill`; null where its rig is not what is wanted. Then its cautions, which are most of the making, are not looked up.
 * @throws InputError as `makeDrill`
 */
export function makeDrillWhere(kind: DrillKind, seed: number, isWanted: (sheet: RigSheet) => boolean): Drill | null {
	if (!DRILL_IDS.includes(kind))
		throw new InputError('drill.kind', 'kind', { expected: 'one-of', known: DRILL_IDS, found: shown(kind) });
	const random = makeRandom(seed).fork(kind);
	for (let n = 0; n < TRIES; n++) {
		const drill = finish(kind, seed, KINDS[kind].make(random.fork(`draw ${n}`)));
		const rig = openUnharmed(drill.sheet);
		if (findingsOf(drill, rig).length === 0 || (KINDS[kind].claims === true && !isSeen(drill, rig))) continue;
		return isWanted(drill.sheet) ? { ...drill, ...cautionsFor(drill, rig) } : null;
	}
	throw new Error(`no drill '${kind}' of seed ${seed} is still to be done`);
}

/**
 * A task of one's own, on a rig of one's own: everything that was right is made part of its goal, and its cautions are looked
 * up, as with a drill.
 * @throws InputError `task.solved` where nothing is left to do, `drill.stuck` where the hands cannot do it
 */
export function makeTask(made: Omit<Made, 'facts'>): Task {
	const task = taskOf(made);
	const rig = openUnharmed(task.sheet);
	if (findingsOf(task, rig).length === 0) throw new InputError('task.solved', 'goal', { trouble: 'solved-already' });
	return { ...task, ...cautionsFor(task, rig) };
}

/** The whole drill. */
const finish = (kind: DrillKind, seed: number, made: Made): Drill => ({
	version: 1,
	kind,
	seed,
	...taskOf(made),
	facts: made.facts,
});

/** The sheet laid out, and everything that was right made part of the goal. */
function taskOf(made: Omit<Made, 'facts'>): Task {
	const { scene, hands } = made;
	const sheet = sheetOf(made.rig);
	const goal = [
		...made.goal,
		...sheet.fixtures.flatMap((placed) => keptBy(sheet, placed, made)),
		...keptByDesk(sheet, made),
	];
	return { scene, sheet, goal, hands, cautions: [], disturbs: false };
}

/** A whole sheet, as `readSheet` would give it; a page that makes drills need not carry what reads them. */
function sheetOf(rig: Made['rig']): RigSheet {
	return {
		version: 1,
		name: 'Lantern Row Hall',
		hall: { width: 16, height: 6 },
		desk: null,
		...noBoxes(),
		cables: [],
		terminators: [],
		remote: null,
		profiles: [],
		...rig,
	};
}

/** What stays of a fixture: its power, unless it is to be unplugged, and every setting that the goal neither asks for nor leaves free. */
function keptBy(sheet: RigSheet, placed: SheetFixture, made: Omit<Made, 'facts'>): Condition[] {
	const fixture = placed.id;
	const asked = made.goal.flatMap((it) =>
		'fixture' in it && it.fixture === fixture ? wishOfCondition(sheet, it).map(([key]) => key) : [],
	);
	const free = asked.length > 0 ? (made.free ?? []) : [];
	const keys = keepable(sheet, placed, asked.length > 0).filter((key) => !asked.includes(key) && !free.includes(key));
	// what is taken off the mains need not run: a row that comes down goes dark
	const comesDown = made.goal.some((it) => it.is === 'fed' && it.fixture === fixture && it.from === 'none');
	return [
		...(keys.length > 0 ? [{ is: 'kept', fixture, keys } as const] : []),
		...(comesDown ? [] : [{ is: 'on', fixture } as const]),
	];
}

/** Switches mean one thing or another as a whole, so where they must move only what the slides say can be kept. */
function keepable(sheet: RigSheet, placed: SheetFixture, isAsked: boolean): readonly SettingKey[] {
	const { panel } = profileFor(sheet, placed.profile);
	if (panel.kind !== 'dip' || !isAsked) return SETTING_KEYS;
	const slid = new Set(panel.slides.flatMap(({ positions }) => positions.flatMap(({ sets }) => Object.keys(sets))));
	return SETTING_KEYS.filter((key) => slid.has(key));
}

/** Where the desk is in hand: its master, its outputs and all levels not asked for. */
function keptByDesk(sheet: RigSheet, made: Omit<Made, 'facts'>): Condition[] {
	const { desk } = sheet;
	if (!desk || !made.hands.includes('desk')) return [];
	const outputs = desk.outputs
		.filter(({ id }) => !made.goal.some((it) => it.is === 'output' && it.output === id))
		.map(({ id, universe }): Condition => ({ is: 'output', output: id, universe }));
	const universes = new Set(desk.patch.map(({ universe }) => universe));
	const levels = [...universes].map((universe): Condition => {
		const except = made.goal.flatMap((it) => (it.is === 'slot' && it.universe === universe ? [it.slot] : []));
		return { is: 'levels-kept', universe, except };
	});
	return [...outputs, { is: 'master', level: desk.master }, ...levels];
}
