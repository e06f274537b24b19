import type { JSX } from 'preact';
import { useId, useMemo, useState } from 'preact/hooks';
import { cautions, siteFirst } from '#words/cautions/index.ts';
import { lightWords, planWords } from '#words/plan/index.ts';
import { type LoneLight, lightChanges, lightsOf, type Plan, type PlanRow } from '../../../shared/plan/index.ts';
import { Button, CautionLine, Live, Title } from '../../ui/index.ts';
import { Choices } from './Choices.tsx';
import { useDrawn } from './growing.ts';
import { asksHang, changesText, lightText, nextText, poolText, sumText } from './lightView.ts';
import { NumberBox } from './Rows.tsx';
import { SheetTable } from './SheetTable.tsx';
import type { PlanStore } from './store.ts';
import { lengthIn, metresFrom, type Units } from './units.ts';
import { cautionsOf, withRow } from './view.ts';

/** Light on the wall: every fixture's throw, pool, lux and overlap, and what a move would change. */
export default function LightSheet({ store }: { store: PlanStore }): JSX.Element {
	const { plan } = store;
	const [units, pick] = useState<Units>('metric');
	const lights = useMemo(() => lightsOf(plan), [plan]);
	const nameOf = (id: string): string => plan.rows.find((row) => row.id === id)?.name ?? id;
	const wall = useMemo(() => <Wall plan={plan} lights={lights} units={units} />, [plan, lights, units]);
	const drawn = useDrawn(
		lights,
		(lone) => {
			const light = lone.whole();
			return (
				<tr key={light.row}>
					<th scope="row">
						{nameOf(light.row)}
						<details>
							<summary aria-label={`${lightWords.sums}: ${nameOf(light.row)}`}>{lightWords.sums}</summary>
							{sumText(plan, light, units)}
						</details>
					</th>
					<td>{lightWords.length(units, lengthIn(units, light.throw))}</td>
					<td>{poolText(light, units)}</td>
					<td>{lightText(light, units)}</td>
					<td>{nextText(light, units, nameOf)}</td>
				</tr>
			);
		},
		[plan, units],
	);
	return (
		<section class="rig-light" aria-label={planWords.tabs.light}>
			<p>{lightWords.lead}</p>
			<fieldset class="rig-from">
				<legend>{lightWords.units}</legend>
				{(['metric', 'imperial'] as const).map((each) => (
					<label key={each} class="rig-check">
						<input type="radio" name="units" checked={units === each} onChange={() => pick(each)} />
						<span>{lightWords.unitNames[each]}</span>
					</label>
				))}
			</fieldset>
			{wall}
			<SheetTable label={lightWords.table} heads={lightWords.heads}>
				{drawn}
			</SheetTable>
			{cautionsOf(plan, plan.rows).map((id) => (
				<CautionLine key={id} caution={cautions[id]} siteFirst={siteFirst} />
			))}
			<Move store={store} units={units} nameOf={nameOf} />
		</section>
	);
}

/** The wall as it is seen from the room, with the pool of each fixture to half its peak. */
function Wall({ plan, lights, units }: { plan: Plan; lights: readonly LoneLight[]; units: Units }): JSX.Element {
	const { width, height } = plan.hall;
	const xs = new Map(plan.rows.map(({ id, place }) => [id, place.x]));
	const said = (metres: number): string => lightWords.length(units, lengthIn(units, metres));
	return (
		<svg
			class="light-wall"
			viewBox={`0 0 ${width} ${height}`}
			role="img"
			aria-label={lightWords.wall(said(width), said(height))}
		>
			<rect class="light-ground" width={width} height={height} />
			{lights.map(({ row, wide, high, aim }) =>
				[wide, high, aim].every(Number.isFinite) ? (
					<ellipse key={row} class="light-pool" cx={xs.get(row) ?? 0} cy={height - aim} rx={wide / 2} ry={high / 2} />
				) : null,
			)}
		</svg>
	);
}

interface MoveProps {
	store: PlanStore;
	units: Units;
	nameOf: (row: string) => string;
}

/** A fixture moved or turned, to see what that does before it is done. */
function Move({ store, units, nameOf }: MoveProps): JSX.Element | null {
	const { plan } = store;
	const id = useId();
	const [picked, pick] = useState<string | null>(null);
	const [change, set] = useState<Partial<PlanRow>>({});
	const [hangs, answer] = useState<boolean | null>(null);
	const [said, say] = useState('');
	const row = plan.rows.find((each) => each.id === picked) ?? plan.rows[0];
	const next = useMemo(() => (row ? withRow(plan, row.id, change) : plan), [plan, row, change]);
	// every pool against every other: not for each letter that is typed elsewhere on the sheet
	const changed = useMemo(
		() => (Object.keys(change).length === 0 ? null : lightChanges(plan, next)),
		[plan, next, change],
	);
	if (!row) return null;
	const at = { ...row, ...change };
	const changes = changed && changesText(changed, units, nameOf);
	const unit = lightWords.unitShort[units];
	const round = (metres: number): number => Math.round(lengthIn(units, metres) * 100) / 100;
	// with the height changed, what was said of the old one counts no more
	const place = (part: Partial<PlanRow['place']>): void => {
		if ('y' in part) answer(null);
		set({ ...change, place: { ...at.place, ...('y' in part ? { overhead: row.place.overhead } : {}), ...part } });
	};
	const asks = changes !== null && asksHang({ ...at.place, overhead: row.place.overhead });
	const hang = (overhead: boolean): void => {
		answer(overhead);
		set({ ...change, place: { ...at.place, overhead } });
	};
	const box = (key: 'x' | 'y' | 'throw', least: number, most: number): JSX.Element => (
		<NumberBox
			key={`${row.id} ${key} ${units}`}
			label={lightWords.fields[key](unit)}
			value={round(at.place[key])}
			least={round(least)}
			most={round(most)}
			isWhole={false}
			onNumber={(length) => place({ [key]: Math.min(most, Math.max(least, metresFrom(units, length))) })}
		/>
	);
	return (
		<section class="light-move" aria-labelledby={`${id} title`}>
			<Title level={2} id={`${id} title`}>
				{lightWords.move}
			</Title>
			<div class="rig-fields">
				<div class="rig-field">
					<label for={id}>{lightWords.which}</label>
					<select
						id={id}
						value={row.id}
						onChange={(event) => {
							pick(event.currentTarget.value);
							set({});
							answer(null);
							say('');
						}}
					>
						<Choices of={plan.rows.map((each) => ({ value: each.id, name: each.name }))} value={row.id} />
					</select>
				</div>
				{box('x', 0, plan.hall.width)}
				{box('y', 0, plan.hall.height)}
				{box('throw', 0.2, 100)}
				<NumberBox
					key={`${row.id} tilt`}
					label={lightWords.fields.tilt}
					value={at.tilt ?? 0}
					least={-80}
					most={80}
					isWhole={false}
					onNumber={(tilt) => set({ ...change, tilt })}
				/>
			</div>
			{changes && (
				<>
					<h3>{lightWords.changes}</h3>
					{changes.length === 0 ? (
						<p>{lightWords.same}</p>
					) : (
						<ul>
							{changes.map((each) => (
								<li key={each}>{each}</li>
							))}
						</ul>
					)}
					{asks && (
						<fieldset class="rig-from">
							<legend>{lightWords.hangs.ask(row.name)}</legend>
							{([true, false] as const).map((each) => (
								<label key={String(each)} class="rig-check">
									<input type="radio" name={`${id} hangs`} checked={hangs === each} onChange={() => hang(each)} />
									<span>{lightWords.hangs[each ? 'hangs' : 'stands']}</span>
								</label>
							))}
						</fieldset>
					)}
					{/* of the light as it would hang, which the cautions of the plan may not have yet */}
					{cautionsOf(next, [next.rows.find((each) => each.id === row.id) ?? row])
						.filter((each) => !cautionsOf(plan, plan.rows).includes(each))
						.map((each) => (
							<CautionLine key={each} caution={cautions[each]} siteFirst={siteFirst} />
						))}
					<p>{lightWords.planOnly}</p>
					{asks && hangs === null && <p class="rig-soft">{lightWords.hangs.first}</p>}
					<Button
						look="main"
						disabled={asks && hangs === null}
						onClick={() => {
							store.change(() => next);
							set({});
							answer(null);
							say(lightWords.moved);
						}}
					>
						{lightWords.doMove}
					</Button>
				</>
			)}
			<p aria-hidden="true">{said}</p>
			<Live text={[said, ...(changes ?? [])].filter(Boolean).join('. ')} />
		</section>
	);
}
