import type { JSX } from 'preact';
import { trainerWords } from '#words/papers/index.ts';
import type { ShareInterval } from './views.ts';

const [WIDE, HIGH] = [120, 20];

/** A share as a bar, and through its end the line on which the true one may lie, unless it is bare. Said in words beside it. */
export function ShareBar({ share, low, high, bare = false }: ShareInterval & { bare?: boolean }): JSX.Element {
	const x = (part: number) => 1 + part * (WIDE - 2);
	const span = `M${x(low)} 10H${x(high)}M${x(low)} 6v8M${x(high)} 6v8`;
	return (
		<svg class="plot-share" viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true">
			<rect class="plot-ground" x="0.5" y="3.5" width={WIDE - 1} height={HIGH - 7} />
			<rect class="plot-bar" x="1" y="4" width={Math.max(0, x(share) - 1)} height={HIGH - 8} />
			{!bare && <path class="plot-halo" d={span} />}
			{!bare && <path class="plot-span" d={span} />}
		</svg>
	);
}

const [BAR, TALL, FOOT] = [28, 90, 18];

/** How the scores lie: a bar for each tenth, and where passing begins. */
export function Scores({
	tenths,
	pass,
	words,
}: {
	tenths: readonly number[];
	pass: number;
	words: string;
}): JSX.Element {
	const most = Math.max(1, ...tenths);
	const wide = BAR * tenths.length;
	const passAt = (pass / 100) * wide;
	return (
		<svg
			class="plot-scores"
			viewBox={`-4 -4 ${wide + 8} ${TALL + FOOT + 8}`}
			role="img"
			aria-label={trainerWords.plotScoresAlt(words)}
		>
			{tenths.map((n, at) => {
				const tall = (n / most) * (TALL - 14);
				return (
					<g key={at}>
						<rect class="plot-bar" x={at * BAR + 2} y={TALL - tall} width={BAR - 4} height={tall} />
						{n > 0 && (
							<text x={at * BAR + BAR / 2} y={TALL - tall - 3}>
								{n}
							</text>
						)}
					</g>
				);
			})}
			<path class="plot-line" d={`M0 ${TALL}H${wide}`} />
			<path class="plot-pass" d={`M${passAt} 0V${TALL + 4}`} />
			{[0, 50, 100].map((mark) => (
				<text
					key={mark}
					x={(mark / 100) * wide}
					y={TALL + FOOT - 2}
					data-end={mark === 0 ? 'start' : mark === 100 ? 'end' : ''}
				>
					{mark} %
				</text>
			))}
		</svg>
	);
}
