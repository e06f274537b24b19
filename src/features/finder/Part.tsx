import type { ComponentChildren, JSX } from 'preact';

interface PartProps {
	/** Whether this is the place in question. */
	on: boolean;
	/** The ring round it: left, top, width, height. */
	ring: readonly [number, number, number, number];
	children: ComponentChildren;
}

/** One part of a picture, ringed if it is the place. */
export function Part({ on, ring: [x, y, width, height], children }: PartProps): JSX.Element {
	return (
		<g class="picture-part" data-mark={on}>
			{children}
			{on && <rect class="picture-ring" x={x} y={y} width={width} height={height} rx="9" />}
		</g>
	);
}
