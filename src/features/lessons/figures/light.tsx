import type { JSX } from 'preact';
import { figureWords } from '#words/lessons/index.ts';
import { Label, Span } from './parts.tsx';

const { drawn } = figureWords;

/** A beam from a lamp to a wall: throw, beam angle, pool. */
export function Throw(): JSX.Element {
	return (
		<g>
			<path class="f-solid" d="M340 16h12v208h-12z" />
			<path class="f-beam" d="M72 120L340 44V196Z" />
			<path class="f-part" d="M34 96h38v48H34z" />
			<Span from={[72, 214]} to={[340, 214]} />
			<Label x={206} y={234} middle>
				{drawn.throw.throw}
			</Label>
			<Span from={[368, 44]} to={[368, 196]} />
			<Label x={394} y={32} end>
				{drawn.throw.pool}
			</Label>
			<path class="f-line" d="M130 104A60 60 0 0 1 130 136" />
			<Label x={142} y={125}>
				{drawn.throw.beam}
			</Label>
		</g>
	);
}

/** Two lamps at a wall, seen from the side: one close under it, one further off and tilted. */
export function Graze(): JSX.Element {
	return (
		<g>
			<path class="f-soft" d="M12 210H388" />
			<path class="f-solid" d="M160 14h12v196h-12zM364 14h12v196h-12z" />
			<path class="f-rough" d="M160 40l-6 8 6 8-6 8 6 8-6 8 6 8-6 8 6 8-6 8 6 8-6 8 6 8-6 8 6 8-6 8 6 8" />
			<path class="f-beam" d="M124 188L120 16H160V140L136 188Z" />
			<path class="f-part" d="M116 188h28l6 20h-40z" />
			<Label x={92} y={232} middle>
				{drawn.graze.close}
			</Label>
			<path class="f-beam" d="M232 186L364 36V150Z" />
			<path class="f-part" d="M212 190l22-14 14 22-22 12z" />
			<Label x={300} y={232} middle>
				{drawn.graze.further}
			</Label>
		</g>
	);
}

/** A row of pools on a wall: first apart, then overlapping. */
export function Overlap(): JSX.Element {
	const row = (y: number, step: number, label: string) => (
		<g>
			{[0, 1, 2].map((n) => (
				<ellipse key={n} class="f-beam" cx={200 + (n - 1) * step} cy={y} rx="50" ry="50" />
			))}
			<Span from={[200 - step, y]} to={[200, y]} />
			<Label x={200} y={y + 70} middle>
				{label}
			</Label>
		</g>
	);
	return (
		<g>
			{row(58, 112, drawn.overlap.apart)}
			{row(190, 70, drawn.overlap.closer)}
		</g>
	);
}

/** Throw doubled: the same light over four times the wall. */
export function Square(): JSX.Element {
	// a square of wall, seen at a slant: `half` as tall as it is up and down from its middle, cut into parts
	const wall = (x: number, half: number, cuts: number) => {
		const wide = half * 0.4;
		const lean = half * 0.25;
		const at = (across: number, down: number) =>
			`${x - wide + 2 * wide * across} ${120 - half + lean * (1 - 2 * across) + 2 * half * down}`;
		const lines = Array.from({ length: cuts - 1 }, (_, i) => (i + 1) / cuts);
		return (
			<g>
				<path class="f-part" d={`M${at(0, 0)}L${at(1, 0)}L${at(1, 1)}L${at(0, 1)}Z`} />
				<path class="f-lit" d={`M${at(0, 0)}L${at(1, 0)}L${at(1, 1)}L${at(0, 1)}Z`} opacity={1 / cuts} />
				<path class="f-arrow" d={lines.map((n) => `M${at(n, 0)}L${at(n, 1)}M${at(0, n)}L${at(1, n)}`).join('')} />
			</g>
		);
	};
	return (
		<g>
			<path class="f-beam" d="M34 120L338 32V208Z" />
			<path class="f-part" d="M10 104h24v32H10z" />
			{wall(186, 44, 1)}
			{wall(338, 88, 2)}
			<Span from={[34, 226]} to={[186, 226]} />
			<Span from={[34, 246]} to={[338, 246]} />
			<Label x={110} y={218} middle>
				{drawn.square.once}
			</Label>
			<Label x={262} y={240} middle>
				{drawn.square.twice}
			</Label>
			<Label x={186} y={48} middle>
				{drawn.square.all}
			</Label>
			<Label x={256} y={30} middle>
				{drawn.square.quarter}
			</Label>
		</g>
	);
}
