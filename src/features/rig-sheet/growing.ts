import type { JSX } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';

/** Things drawn at once: as many as a slow phone draws within a tenth of a second. */
const AT_ONCE = 40;
/** Of those, what the first picture has: a phone shows no more of them, and it has the rest of the page to draw too. */
const AT_FIRST = 16;

/**
 * How many of a long list are drawn: some at once, and more whenever the page is free, so that nothing waits long for its picture.
 * Before anything is printed, all of them.
 */
export function useGrown(total: number, atOnce = AT_ONCE): number {
	const [count, grow] = useState(Math.min(atOnce, AT_FIRST));
	const isAll = count >= total;
	useEffect(() => {
		if (isAll) return;
		const timer = setTimeout(() => grow((before) => before + atOnce), 30);
		return () => clearTimeout(timer);
	}, [count, isAll]);
	useEffect(() => {
		if (isAll) return;
		const all = (): void => grow(Number.POSITIVE_INFINITY);
		addEventListener('beforeprint', all);
		return () => removeEventListener('beforeprint', all);
	}, [isAll]);
	return Math.min(count, total);
}

/**
 * A long list drawn bit by bit, each thing once.
 * @param by what the drawing hangs on: where any of it is another, all are drawn again
 */
export function useDrawn<T>(
	items: readonly T[],
	draw: (item: T, at: number) => JSX.Element,
	by: readonly unknown[],
	atOnce = AT_ONCE,
): JSX.Element[] {
	const count = useGrown(items.length, atOnce);
	// what is the same element as before is left alone by the page
	const drawn = useMemo((): JSX.Element[] => [], by);
	for (let at = drawn.length; at < count; at++) drawn.push(draw(items[at] as T, at));
	return drawn.slice(0, count);
}

/** A value, a little later than it is there: for what may be drawn after the picture that answers an input. */
export function useLater<T>(value: T): T {
	const [late, set] = useState(value);
	useEffect(() => {
		if (late === value) return;
		const timer = setTimeout(() => set(() => value), 30);
		return () => clearTimeout(timer);
	}, [value, late]);
	return late;
}
