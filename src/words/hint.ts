import { hints, holdHint } from '../../content/drills/index.ts';
import { displays, type Says } from '../../content/rig/index.ts';
import type { RigEvent } from '../../sim/event/index.ts';
import type { Rig } from '../../sim/rig/index.ts';
import { eventIn } from './event.ts';
import { fill } from './fill.ts';

/**
 * The first step of a way as something to do; null where nothing is left. A key held for a while is told whole: how long, and
 * what the display reads when it is to be let go.
 * @param rig where the way begins
 */
export function hintText(rig: Rig, way: readonly RigEvent[]): string | null {
	const [first, second, third] = way;
	if (!first) return null;
	if (first.type === 'key.down' && second?.type === 'clock.wait' && third?.type === 'key.up') {
		const ahead = rig.fork();
		ahead.send(first);
		ahead.wait(second.ms);
		ahead.send(third);
		return eventIn(holdHint, rig, first, { ms: second.ms, reads: readOf(ahead, first.fixture) });
	}
	const says = (hints as Readonly<Partial<Record<RigEvent['type'], Says>>>)[first.type];
	// a drill's way has no other events
	if (!says) throw new RangeError(`no hint for '${first.type}'`);
	const isWhole = first.type === 'cable.lay' && first.cable.from !== null && first.cable.to !== null;
	return eventIn(says, rig, first, { isWhole });
}

/** What a display reads, in one line; empty where nothing is read. */
function readOf(rig: Rig, fixture: string): string {
	const { display } = rig.look(fixture);
	if (display.kind !== 'keyed' || !display.lit) return '';
	const [first = '', second = ''] = display.lines.map((line) => line.trim().replaceAll(/ +/g, ' '));
	const value = second.replace(/^> /, '');
	return value === '' || value === '...' ? first : fill(displays.twoLines, { first, second: value });
}
