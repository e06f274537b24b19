import type { Answer, Answers, PaperRecipe } from '../../../../shared/paper/index.ts';
import type { Skill } from '../../deck/index.ts';
import type { QuestionView } from '../view.ts';

/**
 * A paper being sat, as it is kept: plain JSON. It changes only by the functions below, each of which gives a new one; the clock is
 * handed in.
 */
export interface Sitting {
	readonly version: 1;
	/** The paper's digest. */
	readonly paper: string;
	/** 16 hex digits by chance: which sitting this is, and nothing about who. */
	readonly attempt: string;
	/** Milliseconds since 1970. */
	readonly started: number;
	/** When it was handed in; null before. */
	readonly ended: number | null;
	/** Which question shows, from 0. */
	readonly at: number;
	readonly answers: Answers;
	/** Ids of questions to come back to. */
	readonly flagged: readonly string[];
	/** Ids of questions marked already: where feedback comes after each, their answers stay. */
	readonly told: readonly string[];
	/** As typed at handing in; may be empty. */
	readonly name: string;
}

/** What a sitting needs to know of its paper. */
export interface Sat {
	readonly mark: string;
	readonly minutes: number | null;
	readonly questions: readonly { readonly id: string }[];
}

/** A sitting begun. @param now ms since 1970 */
export const begin = (paper: Sat, attempt: string, now: number): Sitting => ({
	version: 1,
	paper: paper.mark,
	attempt,
	started: now,
	ended: null,
	at: 0,
	answers: {},
	flagged: [],
	told: [],
	name: '',
});

/** Whether a question's answer may still change. */
export const isOpen = (sitting: Sitting, item: string): boolean =>
	sitting.ended === null && !sitting.told.includes(item);

/** The sitting with an answer put in, or taken out by null; as it was where the answer may not change any more. */
export function answered(sitting: Sitting, item: string, answer: Answer | null): Sitting {
	if (!isOpen(sitting, item)) return sitting;
	const { [item]: _, ...rest } = sitting.answers;
	return { ...sitting, answers: answer === null ? rest : { ...rest, [item]: answer } };
}

/** The sitting with a question flagged, or not any more. */
export const flagged = (sitting: Sitting, item: string, flag: boolean): Sitting => ({
	...sitting,
	flagged: flag ? [...new Set([...sitting.flagged, item])] : sitting.flagged.filter((id) => id !== item),
});

/** The sitting at another question; never past either end. */
export const movedTo = (sitting: Sitting, at: number, paper: Sat): Sitting => ({
	...sitting,
	at: Math.max(0, Math.min(paper.questions.length - 1, at)),
});

/** The sitting once the learner has been told about a question: its answer stays. One not answered is not told. */
export const toldOf = (sitting: Sitting, item: string): Sitting =>
	item in sitting.answers && isOpen(sitting, item) ? { ...sitting, told: [...sitting.told, item] } : sitting;

/** Handed in, once; a name is cut to 80 characters. @param now ms since 1970; a deadline that is past is when it ended */
export function handedIn(sitting: Sitting, paper: Sat, name: string, now: number): Sitting {
	if (sitting.ended !== null) return sitting;
	const last = paper.minutes === null ? now : Math.min(now, deadline(sitting, paper.minutes));
	return { ...sitting, ended: Math.max(sitting.started, last), name: name.trim().slice(0, 80) };
}

const deadline = ({ started }: Sitting, minutes: number): number => started + minutes * 60_000;

/** Whole seconds left, never below 0; null where the paper has no limit or is handed in. @param now ms since 1970 */
export function secondsLeft(sitting: Sitting, paper: Sat, now: number): number | null {
	if (paper.minutes === null || sitting.ended !== null) return null;
	return Math.max(0, Math.ceil((deadline(sitting, paper.minutes) - now) / 1000));
}

/** What is to be read out as time runs: at five minutes, at one, at none. */
export function timeToSay(before: number | null, left: number | null): 'five' | 'one' | 'none' | null {
	if (before === null || left === null) return null;
	if (before > 0 && left <= 0) return 'none';
	if (before > 60 && left <= 60) return 'one';
	return before > 300 && left <= 300 ? 'five' : null;
}

/** How the questions stand, for the review. */
export interface SittingCounts {
	readonly answered: number;
	readonly open: number;
	readonly flagged: number;
}

export function standing(sitting: Sitting, paper: Sat): SittingCounts {
	const done = paper.questions.filter(({ id }) => id in sitting.answers).length;
	return {
		answered: done,
		open: paper.questions.length - done,
		flagged: paper.questions.filter(({ id }) => sitting.flagged.includes(id)).length,
	};
}

/**
 * What a paper asked for, to be asked again later: each kind at its level, about the one fixture the paper is on, or any. Nothing
 * of a rig or fixtures of the crew's own, which the review does not have.
 */
export function skillsOf(
	{ questions }: { readonly questions: readonly Pick<QuestionView, 'kind' | 'level'>[] },
	{ profiles, own }: PaperRecipe,
): Skill[] {
	const about = profiles.length === 1 && own.length === 0 ? (profiles[0] ?? null) : null;
	const skills = new Map(questions.map(({ kind, level }) => [`${kind} ${level}`, { kind, about, level }]));
	return [...skills.values()];
}

/** Seconds as a clock face: '9:05', '1:02:00'. */
export function clockText(seconds: number): string {
	const whole = Math.max(0, Math.floor(seconds));
	const [hours, minutes, rest] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
	const two = (n: number) => String(n).padStart(2, '0');
	return hours > 0 ? `${hours}:${two(minutes)}:${two(rest)}` : `${minutes}:${two(rest)}`;
}
