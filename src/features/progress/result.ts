import { KEPT } from '../../storage/index.ts';

/** How one drill went, once it was marked done. */
export interface DrillResult {
	readonly presses: number;
	/** The fewest there could have been. */
	readonly fewest: number;
	readonly hints: number;
	/** On the rig's clock. */
	readonly milliseconds: number;
	readonly seed: number;
}

/** What is kept of one kind of drill. */
export interface KindRecord {
	/** Times it was done. */
	readonly done: number;
	readonly best: DrillResult | null;
	/** Done in a row, now and at most, each right at the first marking and with no hint. */
	readonly streak: number;
	readonly longest: number;
	/** When it was marked last, ms since 1970. */
	readonly last: number;
	/** Seeds begun, from low to high, at most `MOST_TRIED`: a row is of drills not met before. */
	readonly tried: readonly number[];
	/** The try that was begun and is not done; what was asked for in it is kept when the page is loaded again. */
	readonly open: OpenTry | null;
}

/** A try that is going on, or was left. */
export interface OpenTry {
	readonly seed: number;
	readonly hints: number;
	readonly misses: number;
}

/** Seeds kept of a kind. Ours: far more than anybody does of one kind. */
export const MOST_TRIED = 300;

/** Records by kind. Kinds that this version does not know are kept as they are. */
export type Progress = ReadonlyMap<string, KindRecord>;

export const NO_PROGRESS: Progress = new Map();

const NONE: KindRecord = Object.freeze({
	done: 0,
	best: null,
	streak: 0,
	longest: 0,
	last: 0,
	tried: Object.freeze([]),
	open: null,
});

/**
 * Progress once a drill is begun, before its first press. Begun anew after it was left, it goes on with the hints and misses it
 * had.
 */
export function withBegun(progress: Progress, kind: string, seed: number): Progress {
	const was = progress.get(kind) ?? NONE;
	if (was.open?.seed === seed) return progress;
	const others = was.tried.filter((each) => each !== seed).slice(1 - MOST_TRIED);
	const tried = [...others, seed].toSorted((a, b) => a - b);
	return new Map(progress).set(kind, { ...was, tried, open: { seed, hints: 0, misses: 0 } });
}

/** Progress after a hint, if it is of the try that is open. */
export function withHint(progress: Progress, kind: string, seed: number): Progress {
	const was = progress.get(kind);
	if (was?.open?.seed !== seed) return progress;
	return new Map(progress).set(kind, { ...was, open: { ...was.open, hints: was.open.hints + 1 } });
}

/** Smaller is better: hints first, then presses more than there had to be, then time; the rest only so that no two are equal. */
const rankOf = ({ hints, presses, fewest, milliseconds, seed }: DrillResult): readonly number[] => [
	hints,
	presses - fewest,
	milliseconds,
	presses,
	seed,
];

/** The better of two results. */
export function betterOf(a: DrillResult | null, b: DrillResult | null): DrillResult | null {
	if (!a || !b) return a ?? b;
	const [left, right] = [rankOf(a), rankOf(b)];
	const at = left.findIndex((value, i) => value !== right[i]);
	return at < 0 || (left[at] ?? 0) < (right[at] ?? 0) ? a : b;
}

/**
 * Progress after a drill was done.
 * @param clean a seed not begun before, right at the first marking and with no hint: only such a one lengthens the row, any
 *   other ends it; `again` leaves it as it was: right with no hint, but it had been begun before
 * @param now ms since 1970
 */
export function withDone(
	progress: Progress,
	kind: string,
	result: DrillResult,
	clean: boolean | 'again',
	now: number,
): Progress {
	const was = progress.get(kind) ?? NONE;
	const streak = clean === 'again' ? was.streak : clean ? was.streak + 1 : 0;
	return new Map(progress).set(kind, {
		...was,
		open: null,
		done: was.done + 1,
		best: betterOf(was.best, result),
		streak,
		longest: Math.max(was.longest, streak),
		last: now,
	});
}

/** Progress after the same drill was done once more: a better result is kept, and the row is not lengthened by it. */
export function withAgain(progress: Progress, kind: string, result: DrillResult): Progress {
	const was = progress.get(kind) ?? NONE;
	return new Map(progress).set(kind, { ...was, done: Math.max(1, was.done), best: betterOf(was.best, result) });
}

/** Progress after a drill was marked and something was still wrong: the row ends. */
export function withMiss(progress: Progress, kind: string, now: number): Progress {
	const was = progress.get(kind) ?? NONE;
	const open = was.open && { ...was.open, misses: was.open.misses + 1 };
	return new Map(progress).set(kind, { ...was, streak: 0, last: now, open });
}

/**
 * Two devices' progress as one: the better result, the higher count, the row of whichever was marked later. The same twice
 * changes nothing, and it does not matter which comes first.
 */
export function merged(a: Progress, b: Progress): Progress {
	const all = new Map(a);
	for (const [kind, other] of b) {
		const own = all.get(kind);
		all.set(kind, own ? mergedRecord(own, other) : other);
	}
	return all;
}

function mergedRecord(a: KindRecord, b: KindRecord): KindRecord {
	const later = isEarlier(a, b) ? b : a;
	return {
		done: Math.max(a.done, b.done),
		best: betterOf(a.best, b.best),
		streak: later.streak,
		longest: Math.max(a.longest, b.longest),
		last: later.last,
		tried: [...new Set([...a.tried, ...b.tried])].toSorted((x, y) => x - y).slice(-MOST_TRIED),
		open: later.open,
	};
}

/** Which of two was marked earlier; the rest only so that it does not matter which comes first. */
function isEarlier(a: KindRecord, b: KindRecord): boolean {
	if (a.last !== b.last) return a.last < b.last;
	if (a.streak !== b.streak) return a.streak < b.streak;
	return JSON.stringify(a.open) < JSON.stringify(b.open);
}

/** Right so many times in a row, a kind is held to be learnt. Ours, no source. */
export const FIRM = 3;
/** Days after which a learnt kind is worth another go. Ours, no source. */
const RUSTY_DAYS = 30;
const DAY_MS = 86_400_000;

/** What to practise next, and why. */
export interface Suggestion<Kind extends string = string> {
	readonly kind: Kind;
	readonly why: 'begun' | 'rusty' | 'new' | 'oldest';
}

/** When what was firm came to be rusty, or will, ms since 1970. */
export const rustyFrom = ({ last }: Pick<KindRecord, 'last'>): number => last + RUSTY_DAYS * DAY_MS;

/**
 * What to practise next: what was begun and is not firm yet, the first in the order; else what was firm and has lain for a
 * month; else the first that was never done; and with all of them firm, what was practised longest ago.
 * @param order the kinds in the order to learn in
 * @param now ms since 1970
 * @param but left out, unless it is the only one: what was done just now
 * @returns null where there are no kinds
 */
export function suggestNext<Kind extends string>(
	progress: Progress,
	order: readonly Kind[],
	now: number,
	but?: Kind,
): Suggestion<Kind> | null {
	const others = order.filter((kind) => kind !== but);
	const kinds = others.length > 0 ? others : order;
	const lastOf = (kind: Kind): number => progress.get(kind)?.last ?? 0;
	const isFirm = (kind: Kind): boolean => (progress.get(kind)?.streak ?? 0) >= FIRM;
	const first = (why: Suggestion['why'], fits: (kind: Kind) => boolean): Suggestion<Kind> | null => {
		const kind = kinds.find(fits);
		return kind === undefined ? null : { kind, why };
	};
	const oldest = kinds.toSorted((a, b) => lastOf(a) - lastOf(b))[0];
	return (
		first('begun', (kind) => progress.has(kind) && !isFirm(kind)) ??
		first('rusty', (kind) => isFirm(kind) && now > rustyFrom({ last: lastOf(kind) })) ??
		first('new', (kind) => !progress.has(kind)) ??
		(oldest === undefined ? null : { kind: oldest, why: 'oldest' })
	);
}

/** Progress as text, to be kept or exported. */
export function progressText(progress: Progress): string {
	return JSON.stringify({ version: KEPT.progress.version, kinds: Object.fromEntries(progress) });
}

/** A stretch of time, ms, as minutes and seconds: '0:42', '12:05'. */
export function minutesText(milliseconds: number): string {
	const seconds = Math.round(milliseconds / 1000);
	return `${Math.floor(seconds / 60)}:${`${seconds % 60}`.padStart(2, '0')}`;
}
