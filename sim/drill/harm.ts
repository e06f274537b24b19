import type { RigSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';

/** A link of mains made or broken while the socket it goes into had supply. */
export interface Harm {
	/** Which event of the log, from 0. */
	readonly event: number;
	readonly did: 'made' | 'broken';
	/** Whose mains lead was moved. */
	readonly fixture: string;
	/** Whose link socket it went into, or came out of. */
	readonly feeder: string;
	/** The fixture whose plug stood in the wall, and so made it live. */
	readonly wall: string;
}

/** What a log has done to the mains leads. */
export interface MainsRecord {
	/** In the order of the log. */
	readonly harm: readonly Harm[];
	/** Fixtures that hang by a link which was live when it was made, each with the fixture whose plug stood in the wall. */
	readonly madeLive: ReadonlyMap<string, string>;
}

/**
 * The fixture at the wall's end of a row of leads; null where the row hangs on nothing.
 * @param plugs where each fixture's mains plug is; no circle in it
 */
export function wallEndOf(plugs: ReadonlyMap<string, string>, fixture: string): string | null {
	let at = fixture;
	// a row is no longer than there are fixtures
	for (let hops = 0; hops <= plugs.size; hops++) {
		const plug = plugs.get(at);
		if (plug === 'wall') return at;
		if (plug === undefined || plug === 'none') return null;
		at = plug;
	}
	return null;
}

/**
 * Each link of mains that a log makes or breaks live. A plug into the wall, or out of it, is no harm: that is how a row is isolated
 * and how it gets its supply, last of all (common practice, no source). Links that stood before the log count as made dead.
 */
export function mainsRecord(sheet: RigSheet, log: readonly RigEvent[]): MainsRecord {
	const plugs = new Map(sheet.fixtures.map(({ id, plug }) => [id, plug]));
	const harm: Harm[] = [];
	const madeLive = new Map<string, string>();
	let hallPower = true;
	for (const [at, event] of log.entries()) {
		if (event.type === 'hall.power') hallPower = event.on;
		if (event.type !== 'mains.plug') continue;
		const { fixture, into } = event;
		const was = plugs.get(fixture) ?? 'none';
		if (was === into) continue;
		const liveEnd = (feeder: string): string | null => (hallPower ? wallEndOf(plugs, feeder) : null);
		const broken = liveEnd(was);
		if (broken !== null) harm.push({ event: at, did: 'broken', fixture, feeder: was, wall: broken });
		const made = liveEnd(into);
		if (made !== null) harm.push({ event: at, did: 'made', fixture, feeder: into, wall: made });
		if (made === null) madeLive.delete(fixture);
		else madeLive.set(fixture, made);
		plugs.set(fixture, into);
	}
	return { harm, madeLive };
}
