import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import {
	figureNames,
	figureWords,
	howWords,
	loadWords,
	needWords,
	partNames,
	planWords,
	ruleWords,
} from '#words/plan/index.ts';
import { EIA485 } from '../../../shared/dmx/index.ts';
import {
	CABLE_SLACK,
	countsOnBattery,
	DEFAULT_VOLTS,
	dataCables,
	type Figure,
	figuresOf,
	isOver,
	linesOf,
	type Plan,
} from '../../../shared/plan/index.ts';
import { Title } from '../../ui/index.ts';
import { linkSays, overSays, plugSays, usSays, valueSays } from './figureSays.ts';
import { useDrawn } from './growing.ts';
import { ofWhat } from './view.ts';

/** The sums, each of which opens to show what went into it, and the cables to bring. */
export function Figures({ plan }: { plan: Plan }): JSX.Element {
	const figures = useMemo(() => figuresOf(plan), [plan]);
	const drawn = useDrawn(figures, (figure) => <One key={`${figure.id} ${figure.of}`} plan={plan} figure={figure} />, [
		figures,
	]);
	return (
		<section class="rig-figures" aria-labelledby="rig-figures">
			<Title level={2} id="rig-figures">
				{planWords.figures}
			</Title>
			{figures.length > 0 && (
				<>
					{plan.supply.volts === DEFAULT_VOLTS && (
						<p>
							<strong>{ruleWords.usualSupply}</strong>
						</p>
					)}
					<p>
						<strong>{ruleWords.otherSupply}</strong>
					</p>
				</>
			)}
			{countsOnBattery(plan) && <p>{loadWords.countsAsBattery}</p>}
			{figures.length > 0 && usSays(plan) !== '' && <p>{usSays(plan)}</p>}
			{drawn}
			<Cables plan={plan} />
		</section>
	);
}

function One({ plan, figure }: { plan: Plan; figure: Figure }): JSX.Element {
	const { id, parts, needs } = figure;
	const leans = parts.some(({ how }) => how === 'assumed');
	const told = [overSays(figure), plugSays(plan, figure), linkSays(plan, figure)].filter(Boolean).join(' ');
	return (
		<details class="rig-figure" data-over={isOver(figure)}>
			<summary class="fold-line">
				<span>
					{figureNames[id](ofWhat(plan, figure), EIA485.mostUnitLoads)}: <strong>{valueSays(plan, figure)}</strong>
					{leans && <em> {figureWords.leans}</em>}
					{told !== '' && <span class="rig-over"> {told}</span>}
				</span>
			</summary>
			<p>{figureWords.notes[id](CABLE_SLACK)}</p>
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
	const lengths = dataCables(plan);
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
				{lines.flatMap(({ universe, runs, feed }) => [
					...(feed !== null ? [<li key={`split ${universe}`}>{figureWords.splitter(runs.length)}</li>] : []),
					...runs.map((run, i) => (
						<li key={`${universe}.${run.rows[0]}`}>
							{plan.source === 'leader' ? figureWords.leaderLine : figureWords.line(String(universe), String(i + 1))}:{' '}
							{figureWords.runs(run.rows.length, run.metres, run.terminator !== null)}
						</li>
					)),
				])}
			</ul>
			<p>{figureWords.depth}</p>
			<p class="rig-soft">{figureWords.spare}</p>
		</div>
	);
}
