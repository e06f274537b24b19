import { locale } from '#words/locale/index.ts';
import { nextWords as words } from '#words/site/index.ts';
import { type Deck, dueNow, nextDue } from '../deck/index.ts';
import { type Progress, rustyFrom, suggestNext } from '../progress/index.ts';

/** A thing that has a page of its own, as it is listed. */
export interface Titled {
	readonly id: string;
	readonly title: string;
}

/** What there is to learn, each in the order to learn in. */
export interface Course {
	/** `key`: what a lesson's results are kept under. */
	readonly lessons: readonly (Titled & { readonly key: string })[];
	readonly drills: readonly Titled[];
}

export interface NextProps {
	readonly course: Course;
	/** On the home page tonight's rig comes first, and of the list the first two. */
	readonly place: 'home' | 'learn';
}

/** One thing to do next. */
export interface NextRow {
	readonly is: 'review' | 'drill' | 'lesson';
	readonly href: string;
	readonly name: string;
	readonly why: string;
}

/** How soon each stands: what fades first, what was begun, what is new, what can wait. */
const RANK = { fading: 0, begun: 1, lesson: 2, fresh: 3, later: 4 } as const;

interface Ranked extends NextRow {
	readonly rank: number;
	/** When it fell due, ms since 1970: of the same rank the earlier comes first. */
	readonly since: number;
}

/**
 * Lessons, drills and review as one list, by what is due: what is about to be forgotten first, then what was begun, then what is new.
 * @param now ms since 1970
 */
export function nextRows({ lessons, drills }: Course, progress: Progress, deck: Deck, now: number): NextRow[] {
	return [...reviewRow(deck, now), ...drillRow(drills, progress, now), ...lessonRow(lessons, progress)]
		.toSorted((a, b) => a.rank - b.rank || a.since - b.since)
		.map(({ rank: _, since: __, ...row }) => row);
}

function reviewRow(deck: Deck, now: number): Ranked[] {
	const next = nextDue(deck);
	if (next === null) return [];
	const count = dueNow(deck, now).length;
	const row = { is: 'review', href: '/review/', name: words.review, since: next } as const;
	return count > 0
		? [{ ...row, why: words.due(count), rank: RANK.fading }]
		: [{ ...row, why: words.later(locale.date(next)), rank: RANK.later }];
}

function drillRow(drills: readonly Titled[], progress: Progress, now: number): Ranked[] {
	const found = suggestNext(
		progress,
		drills.map(({ id }) => id),
		now,
	);
	const drill = drills.find(({ id }) => id === found?.kind);
	if (!found || !drill) return [];
	const { last = 0 } = progress.get(drill.id) ?? {};
	const rank = { begun: RANK.begun, rusty: RANK.fading, new: RANK.fresh, oldest: RANK.later }[found.why];
	const since = found.why === 'rusty' ? rustyFrom({ last }) : last;
	const href = `/drills/do/#kind=${drill.id}`;
	return [{ is: 'drill', href, name: drill.title, why: words.drill[found.why], rank, since }];
}

function lessonRow(lessons: Course['lessons'], progress: Progress): Ranked[] {
	const isDone = ({ key }: { readonly key: string }): boolean => (progress.get(key)?.done ?? 0) > 0;
	const next = lessons.find((lesson) => !isDone(lesson));
	if (!next) return [];
	return [
		{
			is: 'lesson',
			href: `/lessons/${next.id}/`,
			name: next.title,
			why: words.lesson(lessons.indexOf(next) + 1, lessons.length),
			rank: RANK.lesson,
			since: 0,
		},
	];
}
