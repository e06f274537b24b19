import { InputError, isInputError } from '../../../shared/error/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import type { Rig } from '../../../sim/rig/index.ts';
import { openUnharmed } from '../../../sim/rig/trusted.ts';

export interface PlayOptions {
	/** Leaves out what no longer fits (the sheet was changed under the log) instead of refusing the whole. */
	readonly whatFits?: boolean;
	/** Milliseconds it may take; a log from outside could ask for hours of work. */
	readonly patience?: number;
	/** A clock in milliseconds. */
	readonly clock?: () => number;
}

/**
 * A log played onto a sheet: the same rig as `replay` gives, within a time.
 * @throws InputError `log.slow` past its patience, and, unless told to play what fits, what `Rig.send` throws
 */
export function playBack(sheet: RigSheet, log: readonly RigEvent[], options: PlayOptions = {}): Rig {
	const { whatFits = false, patience = 6000, clock = () => performance.now() } = options;
	const began = clock();
	const rig = openUnharmed(sheet);
	const look = () => {
		if (clock() - began > patience) throw new InputError('log.slow', '', { trouble: 'too-slow' });
	};
	for (const event of log) {
		look();
		// however long: the clock goes from one thing that happens to the next
		if (event.type === 'clock.wait') rig.wait(event.ms);
		else {
			try {
				rig.send(event);
			} catch (error) {
				if (!whatFits || !isInputError(error)) throw error;
			}
		}
	}
	return rig;
}

/** What may be told of a long play, and may end it. */
export interface PlayProgress {
	/** The share played so far, 0 to 1; told whenever the page is let in. */
	readonly onShare?: (share: number) => void;
	/** Aborted by a person who has no wish to wait. */
	readonly signal?: AbortSignal;
}

/**
 * As `playBack`, with no end to its patience: it stops again and again to let the page draw and be pressed, so that an hour's
 * practice opens however slow the device, and what asks for years of work can be called off.
 * @throws InputError `log.stopped` where it was called off, and what `Rig.send` throws
 */
export async function playInStretches(
	sheet: RigSheet,
	log: readonly RigEvent[],
	{ onShare, signal }: PlayProgress = {},
	pause = pauses(),
): Promise<Rig> {
	const rig = openUnharmed(sheet);
	await pause();
	for (const [i, event] of log.entries()) {
		const paused = pause();
		if (paused) {
			onShare?.(i / log.length);
			await paused;
			if (signal?.aborted) throw new InputError('log.stopped', '', { trouble: 'stopped' });
		}
		if (event.type === 'clock.wait') rig.wait(event.ms);
		else rig.send(event);
	}
	return rig;
}

/** The log without its last step: a key's release goes with its press, and the waits after with both. */
export function minusLast(log: readonly RigEvent[]): RigEvent[] {
	const at = log.findLastIndex((event) => event.type !== 'clock.wait' && event.type !== 'key.up');
	return log.slice(0, Math.max(0, at));
}

/** Longest a page is worked on at a stretch, ms: a key pressed meanwhile is answered within some tens of milliseconds. */
const STRETCH_MS = 25;

/** Lets the page draw, and take what was pressed. Not by a timer: those come once a second where a tab lies behind others. */
const letGo = (): Promise<void> =>
	new Promise((resolve) => {
		const { port1, port2 } = new MessageChannel();
		port1.onmessage = () => {
			port1.close();
			resolve();
		};
		port2.postMessage(null);
	});

/**
 * Pauses for long work on a page: call it between small steps, each far shorter than a stretch, and wait for what it returns, if
 * anything; it lets the page in once a stretch is over.
 * @param clock milliseconds that never fall
 * @param rest how the page is let in
 */
export function pauses(
	clock: () => number = () => performance.now(),
	rest: () => Promise<void> = letGo,
): () => Promise<void> | null {
	let began = clock();
	return () => {
		if (clock() - began < STRETCH_MS) return null;
		return rest().then(() => {
			began = clock();
		});
	};
}

/** Steps that can be undone at once; further back, the log is played again. */
const MOST_STEPS = 60;
/** Events after which no more are taken: what reads a log takes so many, with room for waits and for keys still down. */
export const FULL_LOG = 19_900;

/** A rig and how it stood before each of its last steps. What the rig refuses changes neither. */
interface Past {
	readonly rig: Rig;
	readonly before: Rig | undefined;
	readonly canUndo: boolean;
	send(event: RigEvent): void;
	/** Sends an event in the place of the last one. */
	sendAnew(before: Rig, event: RigEvent): void;
	put(next: Rig): void;
	undo(): void;
}

export function pastOf(open: Rig): Past {
	let rig = open;
	const past: Rig[] = [];
	const remember = (before: Rig) => {
		past.push(before);
		if (past.length > MOST_STEPS) past.shift();
	};
	return {
		get rig() {
			return rig;
		},
		get before() {
			return past.at(-1);
		},
		get canUndo() {
			return past.length > 0 || rig.log.some((event) => event.type !== 'clock.wait');
		},
		send(event) {
			if (rig.log.length > FULL_LOG && event.type !== 'key.up')
				throw new InputError('log.full', '', { trouble: 'full' });
			const before = event.type === 'key.up' ? null : rig.fork();
			rig.send(event);
			if (before) remember(before);
		},
		sendAnew(before, event) {
			const again = before.fork();
			again.wait(rig.now - before.now);
			again.send(event);
			rig = again;
		},
		put(next) {
			remember(rig);
			rig = next;
		},
		undo() {
			rig = past.pop() ?? playBack(rig.sheet, minusLast(rig.log));
			// no hand holds a key that was down back then
			for (const [fixture, { state }] of [...rig.gear.units]) {
				const { held } = state.context;
				if (held) rig.send({ type: 'key.up', fixture, key: held.key });
			}
		},
	};
}
