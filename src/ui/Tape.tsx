import type { ComponentChildren, JSX } from 'preact';

export interface TapeProps {
	/** Heading level, 1 to 4; without one it is a label and no heading. */
	level?: 1 | 2 | 3 | 4;
	id?: string;
	children: ComponentChildren;
}

/** A heading or label written on a strip of cloth tape. */
export function Tape({ level, id, children }: TapeProps): JSX.Element {
	const Tag = level === undefined ? 'span' : (`h${level}` as const);
	return (
		<Tag class={`tape tape-${level ?? 'label'}`} {...(id === undefined ? {} : { id })}>
			<span>{children}</span>
		</Tag>
	);
}
