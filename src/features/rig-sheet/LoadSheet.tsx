import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { cautions, siteFirst } from '#words/cautions/index.ts';
import { changeWords, figureNames, figureWords, howWords, loadWords, partNames, ruleWords } from '#words/plan/index.ts';
import { EIA485 } from '../../../shared/dmx/index.ts';
import {
	CABLE_SLACK,
	countsOnBattery,
	type Figure,
	figuresOf,
	isOfBattery,
	isOfLoad,
	isOver,
	type Plan,
	type PlanDigests,
	US_VOLTS,
} from '../../../shared/plan/index.ts';
import { CautionBox, Field } from '../../ui/index.ts';
import { figureSays, linkSays, usSays, valueSays } from './figureSays.ts';
import { type ClockTime, plugInBy, readTime } from './plugIn.ts';
import { SheetTable } from './SheetTable.tsx';
import { cautionsOf, ofWhat } from './view.ts';

/** Load sheet and charge plan: every sum open, with where each number comes from. */
export function LoadSheet({ plan, digests }: { plan: Plan; digests: PlanDigests }): JSX.Element {
	const figures = useMemo(() => figuresOf(plan), [plan]);
	const load = figures.filter(({ id }) => isOfLoad(id));
	const charge = figures.filter(({ id }) => isOfBattery(id));
	// that of batteries stands where they are charged
	const others = cautionsOf(plan, plan.rows).filter((id) => id !== 'batteries' || charge.length === 0);
	return (
		<>
			<section class="sheet-page">
				<h2 class="patch-title">
					{loadWords.load}: {plan.name} · {changeWords.mark(digests.load)}
				</h2>
				<p>{siteFirst}</p>
				{load.length > 0 && (
					<p>
						<strong>{ruleWords.otherSupply}</strong>
					</p>
				)}
				{load.length > 0 && <p>{loadWords.volts(plan.supply.volts)}</p>}
				{plan.supply.volts === US_VOLTS && <p>{ruleWords.us}</p>}
				{usSays(plan) !== '' && <p>{usSays(plan)}</p>}
				{countsOnBattery(plan) && <p>{loadWords.countsAsBattery}</p>}
				{load.length === 0 ? (
					plan.rows.length === 0 && <p>{loadWords.noLoad}</p>
				) : (
					<Sums plan={plan} figures={load} label={loadWords.load} />
				)}
			</section>
			<section class="sheet-page">
				<h2 class="patch-title">
					{loadWords.charge}: {plan.name} · {changeWords.mark(digests.charge)}
				</h2>
				{charge.length === 0 ? (
					<p>{loadWords.noCharge}</p>
				) : (
					<>
						<p>{siteFirst}</p>
						<p>
							<strong>{ruleWords.otherSupply}</strong>
						</p>
						<p>{loadWords.volts(plan.supply.volts)}</p>
						<CautionBox caution={cautions.batteries} level={3} />
						<p>
							<strong>{loadWords.stay}</strong> {loadWords.where}
						</p>
						<ChargeBy plan={plan} figures={charge} />
						<Sums plan={plan} figures={charge} label={loadWords.charge} />
					</>
				)}
			</section>
			<section class="sheet-page sheet-care">
				{others.map((id) => (
					<CautionBox key={id} caution={cautions[id]} level={2} />
				))}
			</section>
		</>
	);
}

function Sums({ plan, figures, label }: { plan: Plan; figures: readonly Figure[]; label: string }): JSX.Element {
	const notes = [...new Set(figures.map(({ id }) => id))];
	return (
		<>
			<SheetTable label={label} heads={loadWords.heads}>
				{figures.map((figure) => (
					<tr key={`${figure.id} ${figure.of}`} data-over={isOver(figure)}>
						<td>{figureNames[figure.id](ofWhat(plan, figure), EIA485.mostUnitLoads)}</td>
						<td>
							<strong>{valueSays(plan, figure)}</strong>
						</td>
						<td>
							{figure.parts
								.map(({ id, value, how }) => loadWords.part(partNames[id], figureWords.part(value), howWords[how]))
								.join('; ')}
							{[figureSays(figure), linkSays(plan, figure)].filter(Boolean).map((says) => (
								<strong key={says}> {says}</strong>
							))}
						</td>
					</tr>
				))}
			</SheetTable>
			<ul class="sheet-notes">
				{notes.map((id) => (
					<li key={id}>{figureWords.notes[id](CABLE_SLACK)}</li>
				))}
			</ul>
		</>
	);
}

const timeText = ({ hour, minute, daysBefore }: ClockTime): string => loadWords.at(hour, minute, daysBefore);

/** When each kind must be plugged in to be charged in time. */
function ChargeBy({ plan, figures }: { plan: Plan; figures: readonly Figure[] }): JSX.Element {
	const [text, type] = useState('');
	const by = readTime(text);
	return (
		<>
			<div class="no-print rig-fields">
				<Field
					label={loadWords.chargedBy}
					type="time"
					value={text}
					onChange={(event) => type(event.currentTarget.value)}
				/>
			</div>
			<ul class="sheet-notes">
				{figures
					.filter(({ id, value }) => id === 'charge-hours' && value !== null)
					.map((figure) => (
						<li key={figure.of}>
							<strong>
								{by
									? loadWords.plugIn(
											ofWhat(plan, figure),
											timeText({ ...by, daysBefore: 0 }),
											timeText(plugInBy(by, figure.value ?? 0)),
										)
									: loadWords.noTime(ofWhat(plan, figure))}
							</strong>
						</li>
					))}
			</ul>
			<p>{loadWords.slow}</p>
		</>
	);
}
