import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { changeWords, figureWords, labelWords, lineWords, printWords } from '#words/plan/index.ts';
import { linksOf, numberedCables, type Plan } from '../../../shared/plan/index.ts';
import { endName } from './changesView.ts';
import { useDrawn } from './growing.ts';
import { DRAWING, type Lane, lanesOf, pointOf } from './linePlan.ts';
import { type Held, type Move, moving } from './moving.ts';
import { SheetTable } from './SheetTable.tsx';

interface Props {
	plan: Plan;
	digest: string;
	/** Moves a fixture along the room, m; left out where the drawing is only looked at. */
	onMove?: Move;
}

/** Runs drawn at once: each may have 32 fixtures. */
const LANES_AT_ONCE = 1;

/** The line as a drawing along the room, run by run, and its cables as a list. */
export function LineSheet({ plan, digest, onMove }: Props): JSX.Element {
	const lanes = useMemo(() => lanesOf(plan), [plan]);
	const cables = useMemo(() => numberedCables(plan), [plan]);
	const ends = useMemo(
		() =>
			[...linksOf(plan)].flatMap(([row, { terminates }]) =>
				terminates ? (plan.rows.find(({ id }) => id === row)?.name ?? []) : [],
			),
		[plan],
	);
	const drawn = useDrawn(
		cables,
		({ n, universe, from, to, length }) => (
			<tr key={n}>
				<td>{labelWords.cable(n)}</td>
				<td>{universe}</td>
				<td>{endName([plan], from)}</td>
				<td>{endName([plan], to)}</td>
				<td>{labelWords.metres(length)}</td>
			</tr>
		),
		[plan],
	);
	const drawings = useDrawn(
		lanes,
		(lane) => (
			// biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls sideways on a phone, and by keys too
			<figure key={`${lane.universe}.${lane.run}`} class="lane" tabIndex={0}>
				<figcaption>
					{plan.source === 'leader'
						? figureWords.leaderLine
						: figureWords.line(String(lane.universe), String(lane.run))}
				</figcaption>
				<Drawing plan={plan} lane={lane} {...(onMove && { onMove })} />
			</figure>
		),
		[plan],
		LANES_AT_ONCE,
	);
	return (
		<>
			<h2 class="patch-title">
				{plan.name} · {changeWords.mark(digest)}
			</h2>
			<p>{lineWords.lead}</p>
			{onMove && <p class="no-print">{lineWords.move}</p>}
			{drawings}
			<p>{lineWords.ends(ends)}</p>
			<SheetTable label={lineWords.cables} heads={lineWords.heads}>
				{drawn}
			</SheetTable>
			<p>{figureWords.depth}</p>
			<p>{figureWords.spare}</p>
		</>
	);
}

/** One run: dots along the room with the numbers of the list, black ones overhead, and the cable through them. */
function Drawing({ plan, lane, onMove }: { plan: Plan; lane: Lane; onMove?: Move }): JSX.Element {
	const { width, dot, level } = DRAWING;
	const [held, hold] = useState<Held | null>(null);
	const height = lane.levels * level + 2;
	// room for the place of a dot that is dragged, and for its ring
	const [above, below] = onMove ? [4, 1] : [0, 0];
	const y = (at: number): number => height - 1 - level / 2 - at * level;
	const stops = lane.stops.map((stop) => (stop.row === held?.row ? { ...stop, at: pointOf(plan, held.x) } : stop));
	const path = stops.map(({ at, level: on }) => `L${at} ${y(on)}`).join(' ');
	const last = stops.at(-1);
	const nameOf = (row: string): string => plan.rows.find(({ id }) => id === row)?.name ?? row;
	const told = stops.map(({ row }) => nameOf(row));
	return (
		<svg
			viewBox={`0 ${-above} ${width} ${above + height + below}`}
			role={onMove ? 'group' : 'img'}
			aria-label={lineWords.drawn(told)}
		>
			{plan.source === 'desk' && <rect class="lane-desk" x={0.5} y={y(0) - 3} width={6} height={6} />}
			<path class="lane-cable" d={`M${plan.source === 'desk' ? 6.5 : (stops[0]?.at ?? 0)} ${y(0)} ${path}`} />
			{last && lane.terminates && (
				<path class="lane-end" d={`M${last.at} ${y(last.level)} h${dot / 2 + 1.5} m0 -2.5 v5`} />
			)}
			{stops.map(({ row, n, at, level: on, overhead }) => (
				<g
					key={row}
					class="lane-stop"
					data-overhead={overhead}
					{...(onMove && moving({ plan, row, name: nameOf(row), held, hold, onMove }))}
				>
					{onMove && <circle class="lane-hold" cx={at} cy={y(on)} r={dot * 0.75} />}
					<circle cx={at} cy={y(on)} r={dot / 2 - 0.2} />
					<text x={at} y={y(on) + 1.25} text-anchor="middle">
						{printWords.number(n)}
					</text>
					{held?.row === row && (
						<text class="lane-place" x={at} y={y(on) - dot / 2 - 0.8} text-anchor="middle">
							{labelWords.metres(held.x)}
						</text>
					)}
				</g>
			))}
		</svg>
	);
}
