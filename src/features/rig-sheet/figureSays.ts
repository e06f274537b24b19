import { figureWords, needWords } from '#words/plan/index.ts';
import { type Figure, type FigureId, isNear, isOver } from '../../../shared/plan/index.ts';

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
