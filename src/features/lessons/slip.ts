import type { RigEvent } from '../../../sim/event/index.ts';
import { type Rig, why } from '../../../sim/rig/index.ts';
import { openUnharmed } from '../../../sim/rig/trusted.ts';
import { fixtureLight, fixtureName, reasonText } from '../../wording/index.ts';
import { sheetOf } from './open.ts';
import type { Lesson } from './schema.ts';

/** What a slip does to one lamp, as the rig shows it. */
export interface Seen {
	readonly name: string;
	readonly before: string;
	readonly after: string;
	/** What stops its light; null where light comes out. */
	readonly why: string | null;
}

function play(rig: Rig, log: readonly RigEvent[]): void {
	for (const event of log) {
		if (event.type === 'clock.wait') rig.wait(event.ms);
		else rig.send(event);
	}
}

/** What is seen of the watched lamps before and after the slip, worked out on the lesson's bench. */
export function seenOf({ bench, slip }: Pick<Lesson, 'bench' | 'slip'>): Seen[] {
	const rig = openUnharmed(sheetOf(bench));
	play(rig, bench.log);
	const light = (fixture: string): string => fixtureLight(rig, fixture);
	const before = slip.watch.map(light);
	play(rig, slip.log);
	return slip.watch.map((fixture, i) => {
		const stop = why(rig, fixture).find(({ effect }) => effect === 'stops');
		return {
			name: fixtureName(rig, fixture),
			before: before[i] ?? '',
			after: light(fixture),
			why: stop ? reasonText(rig, fixture, stop) : null,
		};
	});
}
