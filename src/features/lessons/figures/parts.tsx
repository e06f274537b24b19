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

/** A lens, as on the bench: an ellipse, seen a little from the side, turned to where it shines (degrees from straight up). */
export function Lens({ at: [x, y], turn = 0, wide = 34 }: { at: Point; turn?: number; wide?: number }): JSX.Element {
	return <ellipse class="f-lens" rx={wide / 2} ry={wide / 7} transform={`translate(${x} ${y}) rotate(${turn})`} />;
}

/** A fixture from the side: its body, with the lens at `at`, turned to where it shines (degrees from straight up). */
export function Light(props: { at: Point; turn?: number; wide?: number }): JSX.Element {
	const { at, turn = 0, wide = 34 } = props;
	const size = wide / 34;
	return (
		<g>
			<path
				class="f-part"
				d={`M${-17 * size} 0h${34 * size}l${5 * size} ${24 * size}h${-44 * size}z`}
				transform={`translate(${at[0]} ${at[1]}) rotate(${turn})`}
			/>
			<Lens at={at} turn={turn} wide={wide} />
		</g>
	);
}

/** What lies behind gives way to what crosses in front of it. */
export function Crossing({ under, over }: { under: string; over: string }): JSX.Element {
	return (
		<g>
			<path class="f-wire" d={under} />
			<path class="f-gap" d={over} />
			<path class="f-wire" d={over} />
		</g>
	);
}
