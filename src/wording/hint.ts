import { hintPlaces, hints, holdHints } from '#words/drills/index.ts';
import { displays, type Says } from '#words/rig/index.ts';
import type { Finding, Hint, Task } from '../../sim/drill/index.ts';
import type { RigEvent } from '../../sim/event/index.ts';
import type { Rig } from '../../sim/rig/index.ts';
import { findingText } from './drills.ts';
import { eventIn } from './event.ts';
import { fill } from './fill.ts';

/**
 * The next step as something to do; null where nothing is left. A key that is held is told with what the display reads when it
 * is to be let go, and where the value should come to.
 * @param rig where it begins
 */
export function hintText(rig: Rig, hint: Hint | null): string | null {
	if (!hint) return null;
	const { event, hold } = hint;
	if (hold && (event.type === 'key.down' || event.type === 'key.up')) return holdText(rig, event, hold);
	const says = (hints as Readonly<Partial<Record<RigEvent['type'], Says>>>)[event.type];
	// a drill's way has no other events
	if (!says) throw new RangeError(`no hint for '${event.type}'`);
	const plug = event.type === 'mains.plug' ? plugFacts(rig, event.fixture) : {};
	return eventIn(says, rig, event, { isWhole: isWhole(event), ...plug });
}

/** Whether a cable is run with both its ends plugged in. */
const isWhole = (event: RigEvent): boolean =>
	event.type === 'cable.lay' && event.cable.from !== null && event.cable.to !== null;

/** How far a hint goes: where to look; what it should be, and why; the very press. */
const HINT_STEPS = 3;

/** How far a hint goes that is asked for once more, after `step`: where nothing is aimed at there is no what and why to tell. */
export const hintStepAfter = (step: number, aim: Finding | null): number =>
	step === 1 && !aim ? HINT_STEPS : Math.min(HINT_STEPS, step + 1);

/**
 * A hint in steps, each a sentence or more: where to look; what is wrong there, with what that alone does to its fixture where it does
 * anything; the very press. Null where nothing is left.
 * @param step 1 to 3
 * @param aim what the press is on the way to put right
 */
export async function hintStepText(
	drill: Task,
	rig: Rig,
	{ hint, aim }: { hint: Hint | null; aim: Finding | null },
	step: number,
): Promise<string | null> {
	if (!hint) return null;
	if (step === 1) return whereText(rig, hint.event);
	if (step === 2 && aim) {
		// fetched with the first such step, as the reason trail is no small part; what was found is told even where that fails
		const reasons = await import('./hintReason.ts').then(
			({ reasonOf }) => reasonOf(drill, rig, aim),
			() => [],
		);
		return [findingText(drill, aim), ...reasons].join(' ');
	}
	return hintText(rig, hint);
}

/** Which thing an event is done to, and where on it. */
function whereText(rig: Rig, event: RigEvent): string {
	const says = (hintPlaces as Readonly<Partial<Record<RigEvent['type'], Says>>>)[event.type] ?? hintPlaces.else;
	return eventIn(says, rig, event, { isWhole: isWhole(event) });
}

/** Where a mains plug is as yet, and whether its fixture feeds any other. */
function plugFacts({ gear }: Rig, fixture: string): { was: string; feeds: boolean } {
	const plugs = [...gear.units.values()].map(({ plug }) => plug);
	return { was: gear.units.get(fixture)?.plug ?? 'none', feeds: plugs.includes(fixture) };
}

type KeyEvent = Extract<RigEvent, { readonly type: 'key.down' | 'key.up' }>;

function holdText(rig: Rig, event: KeyEvent, { letGoMs, then }: NonNullable<Hint['hold']>): string {
	const ahead = rig.fork();
	if (letGoMs === null) {
		for (const each of then) play(ahead, each);
		return eventIn(holdHints.lock, rig, event, { ms: ahead.now - rig.now, reads: readOf(ahead, event.fixture) });
	}
	const seen = rig.fork();
	if (event.type === 'key.down') seen.send(event);
	if (letGoMs > 0) seen.wait(letGoMs);
	const cue = valueRead(seen, event.fixture);
	if (event.type === 'key.up') return eventIn(holdHints.release, rig, event, { cue, now: letGoMs === 0 });
	for (const each of then) play(ahead, each);
	const target = valueRead(ahead, event.fixture);
	const presses = then.filter(({ type }) => type === 'key.down' || type === 'key.tap').length;
	const again = then.filter(({ type }) => type === 'key.down').length > 1;
	return eventIn(holdHints.near, rig, event, { cue, target, again, sure: presses === 1 && cue === target });
}

function play(rig: Rig, event: RigEvent): void {
	if (event.type === 'clock.wait') rig.wait(event.ms);
	else rig.send(event);
}

/** What a display reads, line by line; empty where nothing is read. */
function linesOf(rig: Rig, fixture: string): readonly [string, string] {
	const { display } = rig.look(fixture);
	if (display.kind !== 'keyed' || !display.lit) return ['', ''];
	const [first = '', second = ''] = display.lines.map((line) => line.trim().replaceAll(/ +/g, ' '));
	return [first, second.replace(/^> /, '')];
}

/** What a display reads, in one line. */
function readOf(rig: Rig, fixture: string): string {
	const [first, second] = linesOf(rig, fixture);
	return second === '' || second === '...' ? first : fill(displays.twoLines, { first, second });
}

/** The value being edited, as a display reads it. */
function valueRead(rig: Rig, fixture: string): string {
	const [first, second] = linesOf(rig, fixture);
	return second === '' ? first : second;
}
