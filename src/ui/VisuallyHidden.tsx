import type { ComponentChildren, JSX } from 'preact';

/** Words for a screen reader alone. */
export function VisuallyHidden({ children }: { children: ComponentChildren }): JSX.Element {
	return <span class="visually-hidden">{children}</span>;
}
