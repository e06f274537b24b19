import type { JSX } from 'preact';
import { figureWords } from '#words/lessons/index.ts';
import { Label, Light, Span } from './parts.tsx';

const { drawn } = figureWords;

/** A beam from a lens to a wall: throw, beam angle, pool. */
export function Throw(): JSX.Element {
	return (
		<g>
			<path class="f-solid" d="M340 16h12v208h-12z" />
			<path class="f-beam" d="M72 106L340 44V196L72 134Z" />
			<Light at={[72, 120]} turn={90} wide={40} />
			<Span from={[72, 214]} to={[340, 214]} />
			<Label x={206} y={234} middle>
				{drawn.throw.throw}
			</Label>
			<Span from={[368, 44]} to={[368, 196]} />
			<Label x={394} y={32} end>
				{drawn.throw.pool}
			</Label>
			<path class="f-line" d="M126 94A60 60 0 0 1 126 146" />
			<Label x={142} y={125}>
				{drawn.throw.beam}
			</Label>
		</g>
	);
}

/** Two lights at a wall, seen from the side: one close under it, one further off and tilted. */
export function Graze(): JSX.Element {
	return (
		<g>
			<path class="f-soft" d="M12 210H388" />
			<path class="f-solid" d="M160 14h12v196h-12zM364 14h12v196h-12z" />
			<path class="f-rough" d="M160 40l-6 8 6 8-6 8 6 8-6 8 6 8-6 8 6 8-6 8 6 8-6 8 6 8-6 8 6 8-6 8 6 8" />
			<path class="f-beam" d="M114 184L118 16H160V130L146 184Z" />
			<Light at={[130, 185]} />
			<Label x={92} y={232} middle>
				{drawn.graze.close}
			</Label>
			<path class="f-beam" d="M226 166L364 36V150L244 190Z" />
			<Light at={[235, 178]} turn={56} />
			<Label x={300} y={232} middle>
				{drawn.graze.further}
			</Label>
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
			<path class="f-beam" d="M34 109L338 32V208L34 131Z" />
			<Light at={[34, 120]} turn={90} wide={30} />
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

/** A light aimed at a wall: what lands on it, what spills past its edge, and what goes straight into somebody's eyes. */
export function Focus(): JSX.Element {
	return (
		<g>
			<path class="f-soft" d="M12 214H388" />
			<path class="f-solid" d="M330 60h12v154h-12z" />
			<path class="f-beam" d="M92 178L330 60V176L110 200Z" />
			<path class="f-faint" d="M92 178L330 60L384 24V60H342V60ZM110 200L330 176V214H214Z" />
			<Light at={[101, 189]} turn={64} />
			<path class="f-part" d="M206 214v-40a13 13 0 0 1 26 0v40z" />
			<circle class="f-part" cx="219" cy="148" r="11" />
			<Label x={336} y={234} middle>
				{drawn.focus.wall}
			</Label>
			<Label x={378} y={18} end>
				{drawn.focus.spill}
			</Label>
			<Label x={219} y={234} middle>
				{drawn.focus.glare}
			</Label>
			<Label x={80} y={234} middle>
				{drawn.focus.light}
			</Label>
		</g>
	);
}
