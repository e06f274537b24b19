import { InputError, shown } from '../../shared/error/index.ts';
import { SETTING_KEYS, type SettingKey } from '../../shared/profile/index.ts';
import { makeRandom } from '../../shared/random/index.ts';
import { noBoxes, profileFor, type RigSheet, type SheetFixture } from '../../shared/sheet/index.ts';
import { hasDataIn, hasMains, isPowered, isSwitchedOn } from '../fixture/index.ts';
import type { Rig } from '../rig/index.ts';
import { openUnharmed } from '../rig/trusted.ts';
import { findingsOf } from './check.ts';
import { type DrillDraft, KINDS } from './kinds/index.ts';
import type { UnseenMaker } from './kinds/unseen.ts';
import {
	BUNDLED_KINDS,
	type BundledKind,
	DRILL_IDS,
	type Drill,
	type DrillCondition,
	type DrillKind,
	type Task,
} from './types.ts';
import { wayOn } from './way/index.ts';
import { wishOfCondition } from './wish.ts';

/** Draws before a kind that only makes rigs that are right already, or wrong where nobody would see it, is given up. */
const TRIES = 100;

/**
 * A drill of a kind: the same seed gives the same drill, always and everywhere. Its start is never solved already, and one that
 * says something is wrong can be seen to be.
 * @param seed a whole number from 0 to 2^53 - 1
 * @param unseen makes those of a kind whose fixture is invented
 * @throws InputError `drill.kind` for a kind there is not, or not without its maker; `random.seed` for a seed out of range
 */
export function makeDrill(kind: BundledKind, seed: number): Drill;
export function makeDrill(kind: DrillKind, seed: number, unseen: UnseenMaker): Drill;
export function makeDrill(kind: DrillKind, seed: number, unseen?: UnseenMaker): Drill {
	return madeWhere(kind, seed, () => true, unseen) as Drill;
}

/**
 * As `makeDrill`; null where its rig is not what is wanted. Then its cautions, which are most of the making, are not looked up.
 * @throws InputError as `makeDrill`
 */
export function makeDrillWhere(kind: BundledKind, seed: number, isWanted: (sheet: RigSheet) => boolean): Drill | null {
	return madeWhere(kind, seed, isWanted);
}

function madeWhere(
	kind: DrillKind,
	seed: number,
	isWanted: (sheet: RigSheet) => boolean,
	unseen?: UnseenMaker,
): Drill | null {
	const known: readonly DrillKind[] = unseen ? DRILL_IDS : BUNDLED_KINDS;
	if (!known.includes(kind))
		throw new InputError('drill.kind', 'kind', { expected: 'one-of', known, found: shown(kind) });
	const random = makeRandom(seed).fork(kind);
	for (let n = 0; n < TRIES; n++) {
		const drill = finish(kind, seed, KINDS[kind].make(random.fork(`draw ${n}`), { seed, unseen }));
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
export function makeTask(made: Omit<DrillDraft, 'facts'>): Task {
	const task = taskOf(made);
	const rig = openUnharmed(task.sheet);
	if (findingsOf(task, rig).length === 0) throw new InputError('task.solved', 'goal', { trouble: 'solved-already' });
	return { ...task, ...cautionsFor(task, rig) };
}

/** The whole drill. */
const finish = (kind: DrillKind, seed: number, made: DrillDraft): Drill => ({
	version: 1,
	kind,
	seed,
	...taskOf(made),
	facts: made.facts,
});

/** The sheet laid out, and everything that was right made part of the goal. */
function taskOf(made: Omit<DrillDraft, 'facts'>): Task {
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
function sheetOf(rig: DrillDraft['rig']): RigSheet {
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
function keptBy(sheet: RigSheet, placed: SheetFixture, made: Omit<DrillDraft, 'facts'>): DrillCondition[] {
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
function keptByDesk(sheet: RigSheet, made: Omit<DrillDraft, 'facts'>): DrillCondition[] {
	const { desk } = sheet;
	if (!desk || !made.hands.includes('desk')) return [];
	const outputs = desk.outputs
		.filter(({ id }) => !made.goal.some((it) => it.is === 'output' && it.output === id))
		.map(({ id, universe }): DrillCondition => ({ is: 'output', output: id, universe }));
	const universes = new Set(desk.patch.map(({ universe }) => universe));
	const levels = [...universes].map((universe): DrillCondition => {
		const except = made.goal.flatMap((it) => (it.is === 'slot' && it.universe === universe ? [it.slot] : []));
		return { is: 'levels-kept', universe, except };
	});
	return [...outputs, { is: 'master', level: desk.master }, ...levels];
}

/**
 * The cautions a drill must carry, by what its hands touch and what its lamps do: looked up on the rig at the start and along
 * the shortest way, so that nothing has to be remembered when a kind is written.
 * @param rig the drill's rig at the start; walked along the way
 */
function cautionsFor(drill: Task, rig: Rig): Pick<Task, 'cautions' | 'disturbs'> {
	const walk = walkOf(drill, rig);
	const { fixtures } = drill.sheet;
	const isTouched = drill.hands.some((hand) => hand !== 'desk' && hand !== 'remote');
	const isShow = drill.scene === 'show';
	const disturbs = isShow && walk.takesAway;
	const cautions = [
		...(isShow ? ['live-show'] : []),
		...(isTouched && fixtures.some(({ place }) => place.overhead) ? ['hanging', 'height'] : []),
		...(drill.hands.includes('mains') ? ['mains'] : []),
		...(drill.scene === 'bench' && walk.charges ? ['batteries'] : []),
		...(walk.ultraviolet ? ['ultraviolet'] : []),
		...(walk.flashes ? ['flashing'] : []),
		...(drill.scene === 'bench' ? ['staring'] : []),
	];
	return { cautions, disturbs };
}

interface DrillWalk {
	/** A lamp that gave light or had data had it no more at some step. */
	readonly takesAway: boolean;
	readonly charges: boolean;
	readonly ultraviolet: boolean;
	readonly flashes: boolean;
}

/** Looks at every lamp at the start and at the end, and with people in the room after each event between. */
function walkOf(drill: Task, rig: Rig): DrillWalk {
	const way = wayOn(drill, rig);
	const start = sightsOf(rig);
	let takesAway = false;
	let seen = standOf(rig);
	for (const event of way) {
		if (event.type === 'clock.wait') rig.wait(event.ms);
		else rig.send(event);
		const stand = standOf(rig);
		// most presses of a key change nothing that a lamp could show
		const isNew = stand.some((part, i) => part !== seen[i]);
		seen = stand;
		if (drill.scene === 'show' && isNew && !takesAway) {
			const now = sightsOf(rig);
			takesAway = start.some((was, i) => (was.lit && now[i]?.lit !== true) || (was.data && now[i]?.data !== true));
		}
	}
	const all = [...start, ...sightsOf(rig)];
	return {
		takesAway,
		charges: drill.sheet.fixtures.some(
			({ id, plug }) => plug !== 'none' && (rig.gear.units.get(id)?.profile.power.battery ?? null) !== null,
		),
		ultraviolet: all.some((sight) => sight.ultraviolet),
		flashes: all.some((sight) => sight.flashes),
	};
}

/** What the light of a rig hangs on, to be compared part by part. */
const standOf = ({ gear }: Rig): readonly unknown[] => [
	gear.desk,
	gear.receptions,
	...[...gear.units.values()].flatMap(({ state }) => [state.context.settings, isSwitchedOn(state), hasMains(state)]),
];

function sightsOf(rig: Rig): { lit: boolean; data: boolean; ultraviolet: boolean; flashes: boolean }[] {
	return [...rig.gear.units].map(([id, unit]) => {
		const { light } = rig.look(id);
		return {
			lit: light.whole.brightness > 0 || light.whole.ultraviolet > 0,
			data: isPowered(unit.state) && hasDataIn(unit.state),
			ultraviolet: light.whole.ultraviolet > 0,
			flashes: light.flashes > 0,
		};
	});
}

/** Long enough for data to come or go and for a damaged line to show, ms. */
const MOMENT_MS = 2000;
/** Least change of brightness that is seen, as lightness 0..1. Ours, no source: some steps more than an eye can just tell. */
const SEEN = 0.02;

/**
 * Whether somebody who walks along the row would see that something is wrong: some fixture's light or indicators differ from
 * what they are once the task is done. A drill that says something is wrong must start like this.
 * @param rig the task's rig at its start; it stays as it is
 */
function isSeen(task: Task, rig: Rig): boolean {
	const right = rig.fork();
	for (const event of wayOn(task, rig)) {
		if (event.type === 'clock.wait') right.wait(event.ms);
		else right.send(event);
	}
	const looks = along(right);
	return along(rig.fork()).some((look, i) => looksOther(look, looks[i] as LightLook));
}

interface LightLook {
	/** All but how bright each cell is, which no eye sees to a hair. */
	readonly plain: string;
	readonly brightness: readonly number[];
}

function along(rig: Rig): LightLook[] {
	rig.wait(MOMENT_MS);
	return [...rig.gear.units.keys()].map((id) => {
		const { light, lamps } = rig.look(id);
		const cells = light.cells.map(({ words, ultraviolet }) => [words, ultraviolet > 0]);
		const plain = JSON.stringify([cells, light.flashes, light.flicker, light.moving, lamps]);
		return { plain, brightness: light.cells.map(({ brightness }) => brightness) };
	});
}

const looksOther = (a: LightLook, b: LightLook): boolean =>
	a.plain !== b.plain || a.brightness.some((bright, i) => Math.abs(bright - (b.brightness[i] ?? 0)) >= SEEN);
