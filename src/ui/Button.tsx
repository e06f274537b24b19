import type { ComponentChildren, JSX } from 'preact';

interface ButtonLook {
	/** `main` for the one thing to do next, `quiet` for what stands beside it, `plain` otherwise. */
	look?: 'main' | 'plain' | 'quiet';
	children: ComponentChildren;
}

export type ButtonProps = ButtonLook &
	(({ href?: undefined } & JSX.IntrinsicElements['button']) | ({ href: string } & JSX.IntrinsicElements['a']));

/** A button, or with `href` a link that looks like one. */
export function Button(props: ButtonProps): JSX.Element {
	const { look = 'plain', children, ...rest } = props;
	const name = `button button-${look}`;
	if (rest.href !== undefined) {
		return (
			<a {...rest} class={name}>
				{children}
			</a>
		);
	}
	return (
		<button type="button" {...(rest as JSX.IntrinsicElements['button'])} class={name}>
			{children}
		</button>
	);
}
