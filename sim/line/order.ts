/** Plain code-unit order, the same on every machine, so that no answer hangs on a list's order or a locale. */
export function byText(a: string, b: string): number {
	return a < b ? -1 : a > b ? 1 : 0;
}

/** Sorts things by a text of theirs, into a new list. */
export function sortedBy<T>(things: Iterable<T>, text: (thing: T) => string): T[] {
	return [...things].sort((a, b) => byText(text(a), text(b)));
}

/** To the thousandth: sums of metres or unit loads otherwise end in noise, and differ with their order. */
export function thousandths(sum: number): number {
	return Math.round(sum * 1000) / 1000;
}
