import type { JSX } from 'preact';
import { figureWords } from '#words/lessons/index.ts';
import { Arrow, Crossing, Label } from './parts.tsx';

const { drawn } = figureWords;

/** A cable coiled in even loops, its ends tied apart from it. */
export function Coil(): JSX.Element {
	return (
		<g>
			{[0, 1, 2, 3].map((n) => (
				<ellipse key={n} class="f-wire" cx={150 + 5 * n} cy={108 + 3 * n} rx={92} ry={78} />
			))}
			<path class="f-wire" d="M243 118C290 120 300 160 340 158" />
			<path class="f-wire" d="M62 120C30 140 40 180 66 190" />
			<path class="f-part" d="M338 148h36v20h-36zM58 182h36v20H58z" />
			<path class="f-tie" d="M148 22h18v28h-18z" />
			<Arrow from={[210, 22]} to={[170, 32]} />
			<Label x={216} y={26}>
				{drawn.coil.tie}
			</Label>
			<Label x={270} y={196}>
				{drawn.coil.plugs}
			</Label>
		</g>
	);
}

/** One loop laid over and one laid under: the same loop, and the end that goes on passes in front of the cable, or behind it. */
export function OverUnder(): JSX.Element {
	const loop = (x: number, label: string, over: boolean) => {
		const from = `M${x - 84} 40C${x + 24} 56 ${x + 84} 88 ${x + 62} 148`;
		const round = `M${x + 62} 148C${x + 46} 190 ${x - 46} 190 ${x - 62} 148`;
		const on = `M${x - 62} 148C${x - 84} 88 ${x - 24} 56 ${x + 84} 40`;
		return (
			<g>
				<path class="f-wire" d={round} />
				<Crossing under={over ? from : on} over={over ? on : from} />
				<Arrow from={[x + 78, 41]} to={[x + 90, 39]} />
				<Label x={x} y={208} middle>
					{label}
				</Label>
			</g>
		);
	};
	return (
		<g>
			{loop(104, drawn.overUnder.over, true)}
			{loop(298, drawn.overUnder.under, false)}
			<Label x={10} y={22} small>
				{drawn.overUnder.from}
			</Label>
			<Label x={196} y={22} end small>
				{drawn.overUnder.on}
			</Label>
		</g>
	);
}
