/** A comma or dot with three digits behind it: a thousand and a half, or one and a half. Nobody can tell. */
const GROUPED = /^[1-9]\d{0,2}(?:[.,]\d{3})+$/;
const NUMBER = /^(?:\d{1,9}(?:[.,]\d{0,9})?|[.,]\d{1,9})$/;

/**
 * A number as a person typed it, with a point or a comma before its fraction.
 * @param least and `most` are both allowed
 * @returns `grouped` where a comma or dot could stand for thousands, so that it could be either of two numbers; `none` for whatever
 *   else is no number within the bounds
 */
export function readNumber(text: string, least: number, most: number, isWhole = false): number | 'grouped' | 'none' {
	const typed = text.trim();
	if (GROUPED.test(typed)) return 'grouped';
	if (!NUMBER.test(typed)) return 'none';
	const value = Number(typed.replace(',', '.'));
	return value >= least && value <= most && (!isWhole || Number.isInteger(value)) ? value : 'none';
}
