/** Of a panel that a crew wrote down, wherever it is shown: much of how it acts may be assumed. */
export const CREW_PANEL =
	'Panel as your crew wrote it down, partly assumed. If the real display shows something else, stop and go by its manual. Set it where nobody is in front of it: it may flash.';
