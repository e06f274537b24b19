import type { Random } from '../../../shared/random/index.ts';
import { type Drill, hintOn, pressesOf } from '../../../sim/drill/index.ts';
import { openRig, type Rig } from '../../../sim/rig/index.ts';
import { hintText } from '../../../src/wording/index.ts';

/** A person's reaction to what a display shows, ms: anything between these. */
const REACTION = { soonest: 150, latest: 300 };
/** Between one press and the next, ms. */
const BETWEEN_MS = 180;
/** Hints after which somebody would give up. */
const MOST_HINTS = 1500;

export interface Played {
	readonly rig: Rig;
	readonly presses: number;
	/** The longest a key was held but to open a lock, ms. */
	readonly longest: number;
	readonly said: readonly string[];
}

/** Somebody who reads each hint, does what its words say at a person's speed, and asks for the next. */
export function playByHints(drill: Drill, random: Random): Played {
	const rig = openRig(drill.sheet);
	const said: string[] = [];
	let longest = 0;
	for (;;) {
		const hint = hintOn(drill, rig);
		const words = hintText(rig, hint);
		if (!hint || words === null) break;
		said.push(words);
		if (said.length > MOST_HINTS) throw new Error(`no end to the hints of ${drill.kind} ${drill.seed}`);
		const { event } = hint;
		if (event.type === 'key.down') {
			const since = rig.now;
			const { fixture, key } = event;
			rig.send(event);
			const [, near, sure] =
				/^Hold \w+ on .+? (?:until close to (.+?) and let go|until its display reads (.+), and let go\.$)/.exec(
					words,
				) ?? [];
			const cue = near ?? sure;
			if (/for about/.test(words))
				rig.wait(hint.hold?.then.reduce((ms, it) => ms + (it.type === 'clock.wait' ? it.ms : 0), 0) ?? 0);
			else {
				while (valueRead(rig, fixture) !== cue) {
					rig.wait(20);
					if (rig.now - since > 10_000) throw new Error(`never came to ${cue}: ${words}`);
				}
				rig.wait(random.int(REACTION.soonest, REACTION.latest));
				longest = Math.max(longest, rig.now - since);
			}
			rig.send({ type: 'key.up', fixture, key });
		} else if (event.type === 'clock.wait') rig.wait(event.ms);
		else rig.send(event);
		rig.wait(BETWEEN_MS);
	}
	return { rig, presses: pressesOf(rig.log), longest, said };
}

/** What a person reads as the value: the last line of a display that says anything. */
function valueRead(rig: Rig, fixture: string): string {
	const { display } = rig.look(fixture);
	if (display.kind !== 'keyed' || !display.lit) return '';
	const lines = display.lines.map((line) => line.trim().replaceAll(/ +/g, ' ')).filter((line) => line !== '');
	return (lines.at(-1) ?? '').replace(/^> /, '');
}
