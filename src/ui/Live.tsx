import type { JSX } from 'preact';

export interface LiveProps {
	/** What is read out when it changes; empty for nothing. */
	text: string;
	/** Count it up to have the same words read again. */
	turn?: number;
	/** Breaks into what is being read: for harm only. */
	urgent?: boolean;
}

/** A live region, unseen. It must be in the page before its words change, or nothing is read. */
export function Live({ text, turn = 0, urgent = false }: LiveProps): JSX.Element {
	return (
		<p class="visually-hidden" role={urgent ? 'alert' : 'status'} aria-atomic="true">
			{text === '' || turn % 2 === 0 ? text : `${text}\u00a0`}
		</p>
	);
}
