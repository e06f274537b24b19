/**
 * Signs with which a cell, or what a spreadsheet that parts at semicolons takes for one, begins a formula (also full-width; common
 * practice, no source), after the marks that already stand before it.
 */
const FORMULA = /(^|[;\t\r\n]\s*)('*)(?=[=+\-@＝＋－＠])/g;
const MARKED = /(^|[;\t\r\n]\s*)'('*)(?=[=+\-@＝＋－＠])/g;

/** A text with a mark before what a spreadsheet would run as a formula; {@link unmarked} takes it off again. */
export const marked = (text: string): string => text.replaceAll(FORMULA, "$1'$2");

/** A cell as it was meant: a mark before a formula's sign says that it is text. */
export const unmarked = (text: string): string => text.replaceAll(MARKED, '$1$2');
