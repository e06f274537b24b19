import type { ComponentChildren, JSX } from 'preact';
import { Tape } from './Tape.tsx';

interface HeadingProps {
	id?: string;
	children?: ComponentChildren;
}

/** What a page of MDX is handed for its own headings, so that words in `content/` carry no looks. */
export const proseParts: { h2(props: HeadingProps): JSX.Element; h3(props: HeadingProps): JSX.Element } = {
	h2: ({ id, children }) => (
		<Tape level={2} {...(id === undefined ? {} : { id })}>
			{children}
		</Tape>
	),
	h3: ({ id, children }) => (
		<Tape level={3} {...(id === undefined ? {} : { id })}>
			{children}
		</Tape>
	),
};
