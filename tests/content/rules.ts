import { DRILL_KINDS, type Finding, findingsOf, markDrill, shortestWay, type Task } from '../../sim/drill/index.ts';
import type { RigEvent } from '../../sim/event/index.ts';
import { openRig } from '../../sim/rig/index.ts';
import type { OneTask } from '../../src/features/drills/index.ts';
import { fixtureName, settingValueText } from '../../src/wording/index.ts';

/** What only follows from the rest. */
const FOLLOWS = ['data', 'light', 'isolated'];
/** What is done to a line, by what the hand does. */
const ON_LINES = ['cable', 'terminator'];

/**
 * The rules that a learner has to apply in a task, counted on its rig and its words, never its presses: each sort of thing to be changed
 * is one; that a value is not told and has to be worked out, one more; that
 * it is not told where, or not which of those named, one; that a lock stands before it, one;
 * and that the other way about would do harm, one.
 */
export function rulesOf({ task, says }: OneTask): string[] {
	const start = openRig(task.sheet);
	const findings = findingsOf(task, start).filter(({ what }) => !FOLLOWS.includes(what));
	const way = shortestWay(task);
	const isOrdered = task.hands.includes('mains') && markDrill(task, way.toReversed()).harm.length > 0;
	const isLocked = findings.some(({ place }) => start.gear.units.get(place)?.state.context.settings.lock === 'on');
	return [
		...new Set([
			...findings.filter(({ what }) => !ON_LINES.includes(what)).map(({ what }) => sortOf(what)),
			...way.filter(isOnLine).map(({ type }) => type),
			...findings.filter((each) => !isTold(task, each, says)).map(({ what }) => `work out ${sortOf(what)}`),
			...(isPlaceTold(task, findings, says) && !isFault(task) ? [] : ['find where']),
			...(isLocked ? ['open a lock'] : []),
			...(isOrdered ? ['in order'] : []),
		]),
	];
}

/** Whether its words say only that something is wrong. */
const isFault = (task: Task): boolean =>
	'kind' in task && DRILL_KINDS.some(({ id, claims }) => claims && id === task.kind);
const isOnLine = ({ type }: RigEvent): boolean => type.startsWith('cable.') || type.startsWith('terminator.');
const sortOf = (what: string): string => (what.startsWith('slot ') ? 'level' : what);

/** Whether the words say what it is to be: a number or a colour as they are; of other settings they tell what it does. */
function isTold({ sheet }: Task, { place, what, wanted }: Finding, says: string): boolean {
	if (what === 'held') {
		const profile = openRig(sheet).gear.units.get(place)?.profile;
		return !profile || says.includes(settingValueText(profile, 'held', String(wanted)));
	}
	if (Array.isArray(wanted)) return wanted.every((value) => value === wanted[0] && hasNumber(says, Number(value)));
	return typeof wanted !== 'number' || hasNumber(says, wanted);
}

/** Numbers that have a word. */
const WORDS: Readonly<Record<number, RegExp>> = { 0: /\bzero\b/, 100: /\bat full\b/ };

const hasNumber = (text: string, value: number): boolean =>
	WORDS[value]?.test(text) === true || new RegExp(`(?<![\\d.])${value}(?![\\d.]*\\d)`).test(text);

/** Whether the words name each fixture that is off, and the goal asks for no other that is right already. */
function isPlaceTold({ sheet, goal }: Task, findings: readonly Finding[], says: string): boolean {
	const rig = openRig(sheet);
	const off = new Set(findings.map(({ place }) => place));
	const asked = goal.flatMap((it) =>
		it.is === 'setting' || it.is === 'setting-within' || it.is === 'fed' ? [it.fixture] : [],
	);
	const isOff = (id: string): boolean => off.has(id);
	const names = [...off].filter((place) => rig.gear.units.has(place)).map((place) => fixtureName(rig, place));
	return (
		sheet.fixtures.length === 1 ||
		(asked.every(isOff) && names.every((name) => says.toLowerCase().includes(name.toLowerCase())))
	);
}
