import type { CautionId } from '#words/cautions/index.ts';
import type { Need } from '../../../sim/fault/index.ts';
import type { CheckSort, ReviewedStep } from '../../../sim/finder/index.ts';

/** Which drill. Everything else follows from it. */
export interface DrillOf {
	readonly rig: string;
	/** 0 to 2^32 - 1. */
	readonly seed: number;
	readonly count: 1 | 2;
	/** With `OWN`: the fixture, packed (`src/features/profile-link`). With `TONIGHT`: the rig, as a bench's link has it. */
	readonly on?: string;
}

/** The crew's own rig, which comes with the link. */
export const TONIGHT = 'tonight';
/** Rigs that are made from the seed: with the crew's own fixture, and with one that nobody has seen. */
export const OWN = 'own';
export const UNSEEN = 'unseen';

/** A check that can be chosen. */
export interface HiddenCheckView {
	readonly id: string;
	readonly sort: CheckSort;
	readonly title: string;
	readonly does: string;
	/** The id of its place. */
	readonly at: string;
	/** Where, in few words. */
	readonly place: string;
	/** Once there. */
	readonly seconds: number;
	readonly needs: readonly Need[];
	readonly cautions: readonly CautionId[];
}

/** A place of the rig that can be tapped. */
export interface RowPlace {
	readonly id: string;
	readonly kind: 'output' | 'cable' | 'fixture' | 'box';
	readonly name: string;
}

/** A drill as the learner meets it: no answer in it. */
export interface DrillView {
	readonly rig: string;
	readonly complaint: string;
	/** Its fixtures are the crew's own, with panels that are stand-ins or partly assumed. */
	readonly isOwn: boolean;
	/** The rig as it stands, line by line, each from where its data comes from. */
	readonly rows: readonly (readonly RowPlace[])[];
	readonly checks: readonly HiddenCheckView[];
}

/** What was done, and what it showed. */
export interface DoneView {
	readonly check: string;
	readonly title: string;
	readonly seen: string;
	/** Walk and doing. */
	readonly seconds: number;
}

/** How the drill stands. */
export interface StandView {
	readonly done: readonly DoneView[];
	readonly spent: number;
	/** The complaint is gone. */
	readonly cleared: boolean;
	/** What nothing seen speaks against, heaviest first, by share of what is left. */
	readonly fitting: readonly { readonly name: string; readonly share: number }[];
}

/** How one choice did. */
export interface JudgedView extends DoneView {
	readonly judged: ReviewedStep['judged'];
	/** What the finder would have asked there; null where it was the same, or there was nothing left to ask. */
	readonly better: string | null;
	/** Bits of doubt before and after. */
	readonly before: number;
	readonly after: number;
}

/** What it was, and how it went. */
export interface ReviewView {
	readonly faults: readonly { readonly name: string; readonly cause: string; readonly repair: string }[];
	readonly spent: number;
	/** The finder on the same rig. */
	readonly finder: { readonly spent: number; readonly cleared: boolean; readonly done: readonly DoneView[] };
	readonly steps: readonly JudgedView[];
}

/** Checks in one place. */
export interface ChecksAtPlace {
	readonly place: string;
	readonly checks: readonly HiddenCheckView[];
}

/** Checks of a sort and of a place (null for all) whose words hold every word searched for, by place, in the order of the list. */
export function listed(
	checks: readonly HiddenCheckView[],
	sort: CheckSort | null,
	search: string,
	at: string | null = null,
): readonly ChecksAtPlace[] {
	const words = search.toLowerCase().split(/\s+/).filter(Boolean);
	const places = new Map<string, HiddenCheckView[]>();
	for (const check of checks) {
		if (sort !== null && check.sort !== sort) continue;
		if (at !== null && check.at !== at) continue;
		const text = `${check.title} ${check.place} ${check.does}`.toLowerCase();
		if (!words.every((word) => text.includes(word))) continue;
		const there = places.get(check.place);
		if (there) there.push(check);
		else places.set(check.place, [check]);
	}
	return [...places].map(([place, there]) => ({ place, checks: there }));
}

/** What a fragment asks for. */
export type HiddenRequest =
	| { readonly is: 'drill'; readonly of: DrillOf }
	/** One whose seed is yet to be drawn. */
	| { readonly is: 'begin'; readonly of: Omit<DrillOf, 'seed'> }
	| { readonly is: 'nothing' }
	| { readonly is: 'bad' };

/** Seeds are whole numbers below this. */
export const SEEDS = 2 ** 32;

/** Reads a fragment, with or without its `#`. What is not exactly a known rig, a seed and a count is bad. @param rigs ids that are known */
export function readDrillLink(fragment: string, rigs: readonly string[]): HiddenRequest {
	const text = fragment.replace(/^#/, '');
	if (text === '') return { is: 'nothing' };
	const [, rig = '', digits, count, on] =
		/^rig=([a-z0-9-]{1,40})(?:&seed=(\d{1,10}))?&count=([12])(?:&on=([\w.-]{1,100000}))?$/.exec(text) ?? [];
	const seed = Number(digits ?? 0);
	// what brings a fixture or a rig is on one's own, and nothing else is
	const isKnown = on === undefined ? [...rigs, UNSEEN].includes(rig) : rig === OWN || rig === TONIGHT;
	if (!isKnown || seed >= SEEDS) return { is: 'bad' };
	const of = { rig, count: count === '2' ? 2 : 1, ...(on === undefined ? {} : { on }) } as const;
	return digits === undefined ? { is: 'begin', of } : { is: 'drill', of: { ...of, seed } };
}

/** The fragment, with its `#`, that asks for a drill. */
export const drillLink = ({ rig, seed, count, on }: DrillOf): string =>
	`#rig=${rig}&seed=${seed}&count=${count}${on === undefined ? '' : `&on=${on}`}`;

/** A seed by chance. */
export const anySeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
