import type { ComponentChildren, JSX } from 'preact';

export interface TitleProps {
	/** Heading level, 1 to 4. */
	level: 1 | 2 | 3 | 4;
	id?: string;
	children: ComponentChildren;
}

/** A heading in plain type. A name goes on `Tape`. */
export function Title({ level, id, children }: TitleProps): JSX.Element {
	const Tag = `h${level}` as const;
	return (
		<Tag class={`title title-${level}`} {...(id === undefined ? {} : { id })}>
			<span>{children}</span>
		</Tag>
	);
}
