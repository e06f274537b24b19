import type { RigEvent } from '../../../sim/event/index.ts';
import type { Rig } from '../../../sim/rig/index.ts';
import { openUnharmed } from '../../../sim/rig/trusted.ts';
import { eventText, fixtureLight } from '../../wording/index.ts';
import { choicesOf, play } from './cases.ts';
import { sheetOf } from './open.ts';
import type { Lesson } from './schema.ts';

/** What may have gone wrong: the slip, and what it was not. */
export interface SlipAsked {
	readonly options: readonly string[];
	/** Which of them it was. */
	readonly right: number;
}

/** Ms for a lost line to show. */
const SETTLE = 3000;

/**
 * What went wrong on a lesson's bench, to be found there: the slip, among other things that happen to the fixture watched and would
 * show otherwise on the fixtures watched.
 * @returns null where it is told and not found: on mains, where a guess could hurt; where nobody did anything but wait; and where
 * several things were done, which no single mishap looks like
 */
export function slipAsked({ bench, slip }: Pick<Lesson, 'bench' | 'slip'>): SlipAsked | null {
	const did = slip.log.filter(({ type }) => type !== 'clock.wait');
	const [only, more] = did;
	if (!only || more || did.some(({ type }) => type === 'mains.plug' || type === 'hall.power')) return null;
	const sheet = sheetOf(bench);
	const start = openUnharmed(sheet);
	play(start, bench.log);
	const shownAfter = (log: readonly RigEvent[]): string => {
		const rig = start.fork();
		play(rig, log);
		return slip.watch.map((fixture) => fixtureLight(rig, fixture)).join('\n');
	};
	const isSeen = shownAfter(slip.log);
	const wrong = slip.watch
		.flatMap((fixture) => mishapsOf(start, fixture))
		.filter((event) => shownAfter([event, { type: 'clock.wait', ms: SETTLE }]) !== isSeen)
		.map((event) => eventText(start, event));
	return choicesOf(eventText(start, only), wrong);
}

/** What else could have happened to a fixture, the likeliest first. */
function mishapsOf(rig: Rig, fixture: string): RigEvent[] {
	const cable = rig.sheet.cables.find(({ to }) => typeof to === 'string' && to.startsWith(`${fixture}:`));
	const isKeyed = rig.gear.units.get(fixture)?.profile.panel.kind !== 'dip';
	return [
		...(isKeyed ? [{ type: 'settings.become', fixture, change: { address: 101 } } as const] : []),
		...(cable ? [{ type: 'cable.unplug', cable: cable.id, end: 'to' } as const] : []),
		{ type: 'power.switch', fixture, on: false },
		...(isKeyed ? [{ type: 'settings.become', fixture, change: { level: 20 } } as const] : []),
		{ type: 'condition.become', fixture, change: { covered: true } },
	];
}
