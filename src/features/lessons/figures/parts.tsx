import type { ComponentChildren, JSX } from 'preact';

type Point = readonly [x: number, y: number];

/** Words in a drawing. */
export function Label(props: {
	x: number;
	y: number;
	middle?: boolean;
	end?: boolean;
	small?: boolean;
	children: ComponentChildren;
}): JSX.Element {
	const { x, y, middle = false, end = false, small = false, children } = props;
	return (
		<text
			class={small ? 'f-label f-small' : 'f-label'}
			x={x}
			y={y}
			{...(middle || end ? { 'text-anchor': middle ? 'middle' : 'end' } : {})}
		>
			{children}
		</text>
	);
}

/** From words to what they name. */
export function Arrow({ from: [x1, y1], to: [x2, y2] }: { from: Point; to: Point }): JSX.Element {
	const angle = Math.atan2(y2 - y1, x2 - x1);
	const wing = (turn: number) => `${x2 - 9 * Math.cos(angle + turn)} ${y2 - 9 * Math.sin(angle + turn)}`;
	return <path class="f-arrow" d={`M${x1} ${y1}L${x2} ${y2}M${wing(0.5)}L${x2} ${y2}L${wing(-0.5)}`} />;
}

/** A measure between two points, a bar at each end. */
export function Span({ from: [x1, y1], to: [x2, y2] }: { from: Point; to: Point }): JSX.Element {
	const upright = x1 === x2;
	const bar = (x: number, y: number) => (upright ? `M${x - 6} ${y}h12` : `M${x} ${y - 6}v12`);
	return <path class="f-arrow" d={`M${x1} ${y1}L${x2} ${y2}${bar(x1, y1)}${bar(x2, y2)}`} />;
}
