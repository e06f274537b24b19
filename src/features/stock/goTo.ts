import { linesOf, type Mark } from '../../../shared/stock/index.ts';

/** Selects a place in a box of text, and brings it into sight. */
export function goTo(area: HTMLTextAreaElement | null, place: Mark['place']): void {
	if (!area) return;
	// the box has an ending of its own in place of some: it counts from its own text
	const lines = linesOf(area.value);
	const start = (lines[place.line - 1]?.start ?? 0) + place.column - 1;
	area.focus();
	area.setSelectionRange(start, start + place.length);
	// a browser brings the caret into sight by itself only as keys are pressed
	area.scrollTop = (area.scrollHeight / Math.max(1, lines.length)) * Math.max(0, place.line - 3);
}
