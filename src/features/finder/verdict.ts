import type { CautionId } from '#words/cautions/index.ts';
import { amountWords, checkWords, suspectWords, verdictWords } from '#words/finder/index.ts';
import type { CheckView, RepairView, SuspectView, VerdictView } from './view.ts';
import type { Allows, Spare } from './walk.ts';

/** What stands over a verdict. */
export function titleOf({ because, causes }: VerdictView): string {
	if (because === 'mended') return verdictWords.titleMended;
	if (because === 'unknown') return verdictWords.titleUnknown;
	return causes.length > 1 ? verdictWords.titleFew : verdictWords.title;
}

/** Why the walk ends here, in a sentence. */
export function becauseOf({ because, sure }: VerdictView): string {
	return because === 'sure' ? verdictWords.because.sure(shareText(sure)) : verdictWords.because[because];
}

/** What to do where nothing known fits, one way after the other. */
export function waysOn({ lost }: Pick<VerdictView, 'lost'>): string[] {
	if (!lost) return [];
	const { common } = verdictWords;
	const near = lost.near.length > 0 ? [verdictWords.near(lost.near.join(verdictWords.and))] : [];
	const families = lost.families.map((family) => common.families[family]);
	const odd = lost.odd.map(({ check, seen }) => common.saw(check, seen));
	return [
		verdictWords.unknownNext,
		...(odd.length > 0 ? [common.odd(odd)] : []),
		...(families.length > 0 ? [common.like(families)] : []),
		...(lost.fine.length > 0 ? [common.fine(lost.fine)] : []),
		...near,
		`${verdictWords.halves} ${verdictWords.halvesCare}`,
		verdictWords.handOver,
	];
}

const BEFORE_HANDS: ReadonlySet<CautionId> = new Set(['mains', 'height', 'hanging']);

/** Whether cautions stand before what to do, and not under it: where what they tell of can kill. */
export const cautionsFirst = (ids: readonly CautionId[]): boolean => ids.some((id) => BEFORE_HANDS.has(id));

/** What a check that disturbs the show does to it: a look at a panel only may. No full stop. */
export const disturbsText = (sort: CheckView['sort']): string =>
	sort === 'look' ? checkWords.mayDisturb : checkWords.disturbs;

/** What a repair needs that the gig does not have. */
export function lacking({ needs }: Pick<RepairView, 'needs'>, { without }: Allows): Spare[] {
	return without.filter((spare) => needs.includes(spare));
}

/** Suspects parted by whether anything seen speaks against them. */
export interface SuspectsByFit {
	/** Heaviest first; what the finder does not know is never among them. */
	readonly fitting: readonly SuspectView[];
	readonly against: readonly SuspectView[];
	readonly unknown: SuspectView | null;
}

/** Id of the suspect that stands for all the finder does not know. */
const UNKNOWN = 'unknown';

/** How many suspects the line names. */
const NAMED = 3;

/**
 * What the line over the suspects says, and whom it names. Where nothing fits it names nobody, and once a repair has helped it says no
 * more of what fits.
 */
export function lineOf(
	suspects: readonly SuspectView[],
	isRepaired: boolean,
): { count: string; named: readonly SuspectView[] } {
	const { fitting } = part(suspects);
	if (fitting.length > 0) return { count: suspectWords.fit(fitting.length), named: suspects.slice(0, NAMED) };
	return { count: isRepaired ? suspectWords.title : suspectWords.noneFits, named: [] };
}

/** Nothing can speak against what predicts nothing, so the unknown stands by itself. */
export function part(suspects: readonly SuspectView[]): SuspectsByFit {
	const known = suspects.filter(({ id }) => id !== UNKNOWN);
	return {
		fitting: known.filter(({ against }) => against.length === 0),
		against: known.filter(({ against }) => against.length > 0),
		unknown: suspects.find(({ id }) => id === UNKNOWN) ?? null,
	};
}

/** Seconds as people say them: to the second under a minute, to five seconds under ten minutes, then to the minute. */
export function timeText(seconds: number): string {
	if (seconds < 59.5) return amountWords.seconds(Math.round(seconds));
	const step = seconds < 600 ? 5 : 60;
	const whole = Math.round(seconds / step) * step;
	return amountWords.minutes(Math.floor(whole / 60), whole % 60);
}

/** A share of 0 to 1 in whole percent; what is there never rounds to nothing. */
export function shareText(share: number): string {
	return share < 0.005 ? amountWords.hardly : amountWords.percent(Math.round(share * 100));
}
