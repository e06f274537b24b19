import { figureWords, needWords, ruleWords, unitOf } from '#words/plan/index.ts';
import {
	DEFAULT_VOLTS,
	type Figure,
	type FigureId,
	isNear,
	isOutletRating,
	isOver,
	isPastOnePlug,
	mayBeUs,
	type Plan,
	US_VOLTS,
} from '../../../shared/plan/index.ts';
import { poundsOf } from './units.ts';

/** What a sum comes to with its unit; a weight in pounds first where outlets are those of the US. */
export function valueSays({ supply }: Plan, { id, value }: Figure): string {
	if (value === null) return figureWords.unknown;
	const own = figureWords.value(value, unitOf[id]);
	return id === 'weight' && supply.volts === US_VOLTS ? figureWords.pounds(poundsOf(value), own) : own;
}

/** What one plug takes, beside a breaker that has amperes left while nobody has said what the weakest link takes; empty elsewhere. */
export const plugSays = ({ supply }: Plan, { id, value }: Figure): string =>
	id === 'breaker-left' && (value ?? 0) > 0 && (supply.link ?? null) === null && isPastOnePlug(supply)
		? ruleWords.plugLess
		: '';

/** What one plug takes, beside what is left of a link that was given as an outlet is rated; empty elsewhere. */
export const linkSays = ({ supply }: Plan, { id }: Figure): string =>
	id === 'link-left' && isOutletRating(supply) ? ruleWords.onePlug : '';

/** Whether the rules of the US are used at a voltage that is not theirs alone; empty where that needs no word: at 120 V, and at the usual one. */
export const usSays = ({ supply: { volts } }: Plan): string =>
	mayBeUs(volts) ? ruleWords.usToo : volts === US_VOLTS || volts === DEFAULT_VOLTS ? '' : ruleWords.notUs;

/** What to do where more is asked than there is, by figure. */
const OVER: Readonly<Partial<Record<FigureId, string>>> = {
	'breaker-left': figureWords.over,
	'lasting-left': figureWords.overLasting,
	'link-left': figureWords.overLink,
	'surge-left': figureWords.overSurge,
};

/** What is over, or close to it, and what to do then; empty where neither is. */
export const overSays = (figure: Figure): string =>
	(isOver(figure) ? OVER[figure.id] : undefined) ?? (isNear(figure) ? figureWords.near : '');

/** The same, or what is wanting to work it out. */
export const figureSays = (figure: Figure): string =>
	figure.needs === null ? overSays(figure) : needWords[figure.needs];
