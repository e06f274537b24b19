import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { figureNames, figureWords, howWords, needWords, partNames, planWords, unitOf } from '#words/plan/index.ts';
import { type Figure, figuresOf, linesOf, type Plan } from '../../../shared/plan/index.ts';
import { Title } from '../../ui/index.ts';
import { ofWhat } from './view.ts';

/** Share of a breaker's rating past which a load that lasts is for the electrician to judge: 80 %, as in US practice (from memory). */
const CAUTIOUS_LOAD = 0.8;

/** The sums, each of which opens to show what went into it, and the cables to bring. */
export function Figures({ plan }: { plan: Plan }): JSX.Element {
	const figures = useMemo(() => figuresOf(plan), [plan]);
	return (
		<section class="rig-figures" aria-labelledby="rig-figures">
			<Title level={2} id="rig-figures">
				{planWords.figures}
			</Title>
			{figures.map((figure) => (
				<One key={`${figure.id} ${figure.of}`} plan={plan} figure={figure} />
			))}
			<Cables plan={plan} />
		</section>
	);
}

function One({ plan, figure }: { plan: Plan; figure: Figure }): JSX.Element {
	const { id, value, parts, needs } = figure;
	const leans = parts.some(({ how }) => how === 'assumed');
	const rating = parts.find((part) => part.id === 'breaker')?.value;
	const isNear =
		id === 'breaker-left' && value !== null && rating !== undefined && value < (1 - CAUTIOUS_LOAD) * rating;
	const isOver = (id === 'breaker-left' || id === 'hours-spare') && value !== null && value < 0;
	return (
		<details class="rig-figure" data-over={isOver}>
			<summary class="fold-line">
				<span>
					{figureNames[id](ofWhat(plan, figure))}:{' '}
					<strong>{value === null ? figureWords.unknown : figureWords.value(value, unitOf[id])}</strong>
					{leans && <em> {figureWords.leans}</em>}
					{id === 'breaker-left' && isOver && <em> {figureWords.over}</em>}
					{isNear && !isOver && <em> {figureWords.near}</em>}
				</span>
			</summary>
			<p>{figureWords.notes[id]}</p>
			{needs !== null && <p>{needWords[needs]}</p>}
			<ul>
				{parts.map((part) => (
					<li key={part.id}>
						{partNames[part.id]}: {figureWords.part(part.value)} ({howWords[part.how]})
					</li>
				))}
			</ul>
		</details>
	);
}

function Cables({ plan }: { plan: Plan }): JSX.Element | null {
	const lines = linesOf(plan);
	const lengths = lines.flatMap(({ runs }) => runs.flatMap(({ cables }) => cables.map(({ length }) => length)));
	if (lengths.length === 0) return null;
	const counts = [...new Set(lengths)].sort((a, b) => a - b);
	return (
		<div class="rig-cables">
			<h3>{figureWords.bring}</h3>
			<p>
				{counts
					.map((length) => figureWords.cables(lengths.filter((each) => each === length).length, length))
					.join(', ')}
			</p>
			<ul>
				{lines.flatMap(({ universe, runs }) => [
					...(runs.length > 1 && plan.source === 'desk'
						? [<li key={`split ${universe}`}>{figureWords.splitter(runs.length)}</li>]
						: []),
					...runs.map((run, i) => (
						<li key={`${universe}.${run.rows[0]}`}>
							{plan.source === 'leader' ? figureWords.leaderLine : figureWords.line(String(universe), String(i + 1))}:{' '}
							{figureWords.runs(run.rows.length, run.metres)}
						</li>
					)),
				])}
			</ul>
			<p class="rig-soft">{figureWords.spare}</p>
		</div>
	);
}
