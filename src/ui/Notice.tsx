import type { ComponentChildren, JSX } from 'preact';

export interface NoticeProps {
	/** `good` and `wrong` are marks; `plain` tells. The look never says it alone: give `word` too. */
	kind?: 'plain' | 'good' | 'wrong';
	/** The verdict in a word or two, such as "Done" or "Not yet". */
	word?: string;
	children: ComponentChildren;
}

/** A short message in the page. To have it read out when it changes, put its words through `Live` as well. */
export function Notice({ kind = 'plain', word, children }: NoticeProps): JSX.Element {
	return (
		<div class={`notice notice-${kind}`}>
			{word === undefined ? null : <strong class="notice-word">{word}</strong>}
			<div>{children}</div>
		</div>
	);
}
