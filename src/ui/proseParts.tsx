import type { ComponentChildren, JSX } from 'preact';
import { Title } from './Title.tsx';

interface HeadingProps {
	id?: string;
	children?: ComponentChildren;
}

/** What a page of MDX is handed for its own headings, so that words in `content/` carry no looks. */
export const proseParts: { h2(props: HeadingProps): JSX.Element; h3(props: HeadingProps): JSX.Element } = {
	h2: ({ id, children }) => (
		<Title level={2} {...(id === undefined ? {} : { id })}>
			{children}
		</Title>
	),
	h3: ({ id, children }) => (
		<Title level={3} {...(id === undefined ? {} : { id })}>
			{children}
		</Title>
	),
};
