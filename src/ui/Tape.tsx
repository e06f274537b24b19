import type { ComponentChildren, JSX } from 'preact';

export interface TapeProps {
	/** Where the name heads what follows; without it, it is a label and no heading. */
	level?: 2;
	children: ComponentChildren;
}

/** A name, or a value to write down, on a piece of cloth tape. Other headings are a `Title`. */
export function Tape({ level, children }: TapeProps): JSX.Element {
	const Tag = level === undefined ? 'span' : (`h${level}` as const);
	return (
		<Tag class={`tape tape-${level ?? 'label'}`}>
			<span>{children}</span>
		</Tag>
	);
}
