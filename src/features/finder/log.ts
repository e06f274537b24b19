import { allowWords, logWords } from '#words/finder/index.ts';
import { timeText, titleOf } from './verdict.ts';
import type { LogLineView, WalkView } from './view.ts';
import type { Allows } from './walk.ts';

/** What was seen, or why nothing was. */
export function seenText({ seen, did }: LogLineView): string {
	return did === 'answer' ? (seen ?? '') : logWords[did];
}

/** How a walk stands at its end: the verdict with its causes; null while it goes on. */
export function verdictLines({ verdict }: WalkView): string[] | null {
	if (!verdict) return null;
	const shown = verdict.because === 'mended' ? verdict.causes.slice(0, 1) : verdict.causes;
	return [titleOf(verdict), ...shown.map(({ name }) => name)];
}

/** What the gig allows, in a line: what is missing, and what goes on. */
export function allowsText({ without, showRunning, alone }: Allows): string {
	const parts = [
		...(without.length > 0 ? [allowWords.without(without.map((spare) => allowWords.lacks[spare]).join(', '))] : []),
		...(showRunning ? [allowWords.showOn] : []),
		...(alone ? [allowWords.aloneOn] : []),
	].join('; ');
	return parts === '' ? allowWords.all : parts.charAt(0).toUpperCase() + parts.slice(1);
}

interface LogSource {
	readonly view: WalkView;
	readonly rig: string;
	readonly allows: Allows;
	/** When it began, as the place writes it. */
	readonly began: string;
}

/** The whole walk as plain text, to copy or keep. */
export function logText({ view, rig, allows, began }: LogSource): string {
	return [
		view.complaint,
		rig,
		logWords.began(began),
		allowsText(allows),
		'',
		...(view.log.length === 0 ? [logWords.none] : []),
		...view.log.map((line, i) => logWords.line(i + 1, line.check, seenText(line))),
		'',
		...(verdictLines(view) ?? [logWords.open]),
		logWords.spent(timeText(view.spent)),
		'',
	].join('\n');
}
