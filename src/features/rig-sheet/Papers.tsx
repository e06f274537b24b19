import type { JSX } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { cautions, siteFirst } from '#words/cautions/index.ts';
import { changeWords, planWords, printWords, slipWords } from '#words/plan/index.ts';
import {
	digestsOf,
	figuresOf,
	linksOf,
	type Plan,
	type PlanDigests,
	type PlanRow,
	profileOf,
	rowFootprint,
	type SlipFrom,
} from '../../../shared/plan/index.ts';
import type { Slip } from '../../../sim/slip/index.ts';
import { openEngine, troubleText } from '../../engine/index.ts';
import { Button, CautionBox, Live, Notice } from '../../ui/index.ts';
import { useDrawn } from './growing.ts';
import { Labels } from './Labels.tsx';
import { LineSheet } from './LineSheet.tsx';
import { LoadSheet } from './LoadSheet.tsx';
import type { Move } from './moving.ts';
import { SheetTable } from './SheetTable.tsx';
import { SlipBlock } from './SlipBlock.tsx';
import { cautionsOf, circuitSays, modeTitle, threeDigits } from './view.ts';

interface Props {
	plan: Plan;
	kind: 'slips' | 'labels' | 'patch' | 'line' | 'load';
	/** Sheets of these rows alone, which begin from the plan they were set by before. */
	changed?: { readonly only: readonly string[]; readonly before: Plan };
	/** Moves a fixture on the line plan, m along the room; left out where it is only looked at. */
	onMove?: Move;
	/** Told before anything is printed. */
	onPrint?: () => void;
}

/** Prep slips drawn at once: each has some thirty lines. */
const SLIPS_AT_ONCE = 6;

const makeAsk = () => openEngine().ask;

/** What goes on paper: prep slips, labels, the patch list, the line plan, load sheet and charge plan. */
export default function Papers({ plan, kind, changed, onMove, onPrint }: Props): JSX.Element {
	const rows = changed ? plan.rows.filter(({ id }) => changed.only.includes(id)) : plan.rows;
	const digests = useMemo(() => digestsOf(plan), [plan]);
	// by this page's button, or from the browser's own menu
	useEffect(() => {
		if (!onPrint) return;
		addEventListener('beforeprint', onPrint);
		return () => removeEventListener('beforeprint', onPrint);
	}, [onPrint]);
	return (
		<article class="papers-rig" data-kind={kind}>
			<div class="rig-ways no-print">
				<Button look="main" disabled={rows.length === 0} onClick={printWhole}>
					{printWords.print}
				</Button>
				<span class="rig-soft">{printWords.paper}</span>
			</div>
			{kind === 'slips' && <Slips {...{ plan, rows, digests }} before={changed?.before ?? null} />}
			{kind === 'labels' && <Labels {...{ plan, rows, digests }} isPart={changed !== undefined} />}
			{kind === 'line' && <LineSheet plan={plan} digest={digests.line} {...(onMove && { onMove })} />}
			{kind === 'load' && <LoadSheet plan={plan} digests={digests} />}
			{kind === 'patch' && <PatchList plan={plan} digest={digests.patch} />}
		</article>
	);
}

/** Prints once all is drawn: what grows bit by bit hears of it first, and the page needs a turn to draw the rest. */
function printWhole(): void {
	dispatchEvent(new Event('beforeprint'));
	setTimeout(() => print(), 0);
}

interface SheetProps {
	plan: Plan;
	rows: readonly PlanRow[];
	digests: PlanDigests;
}

function Slips({ plan, rows, digests, before }: SheetProps & { before: Plan | null }): JSX.Element {
	const [ask] = useState(makeAsk);
	const [picked, pick] = useState<SlipFrom>('defaults');
	const from = before ? 'before' : picked;
	const only = rows.map(({ id }) => id).join(' ');
	const [slips, set] = useState<readonly (Slip | null)[] | null>(null);
	const [trouble, tell] = useState<string | null>(null);
	const links = useMemo(() => linksOf(plan), [plan]);
	const hours = useMemo(
		() => new Map(figuresOf(plan).flatMap(({ id, of, value }) => (id === 'battery-hours' ? [[of, value]] : []))),
		[plan],
	);
	useEffect(() => {
		let isWanted = true;
		set(null);
		ask('slips.slips', { plan, from, before, only: only.split(' ') }).then(
			(made) => {
				if (isWanted) set(made);
			},
			(error) => {
				if (isWanted) tell(troubleText(error, slipTroubles));
			},
		);
		return () => {
			isWanted = false;
		};
	}, [plan, from, before, only, ask]);
	const drawn = useDrawn(
		slips === null ? [] : rows,
		(row, i) => (
			<SlipBlock
				key={row.id}
				plan={plan}
				row={row}
				slip={slips?.[i] ?? null}
				link={links.get(row.id) ?? null}
				hours={hours.get(row.profile) ?? null}
				n={plan.rows.indexOf(row) + 1}
				digest={digests.slip(row, from, before)}
			/>
		),
		[slips, plan, from, before],
		SLIPS_AT_ONCE,
	);
	return (
		<>
			<p class="no-print">{slipWords.lead}</p>
			{before ? (
				<p>{changeWords.fromBefore}</p>
			) : (
				<fieldset class="rig-from no-print">
					<legend>{slipWords.from}</legend>
					{(['defaults', 'shown'] as const).map((each) => (
						<label key={each} class="rig-check">
							<input type="radio" name="from" checked={picked === each} onChange={() => pick(each)} />
							<span>{each === 'defaults' ? slipWords.fromDefaults : slipWords.fromShown}</span>
						</label>
					))}
				</fieldset>
			)}
			{trouble !== null && <Notice kind="wrong">{trouble}</Notice>}
			{slips === null && trouble === null && <p class="coming">{slipWords.working}</p>}
			<Live text={slips === null ? '' : planWords.fixtures(slips.length)} />
			{slips && <div class="slips">{drawn}</div>}
			{slips && (
				<section class="slips-read">
					<p>
						{plan.name} · {changeWords.mark(digests.whole)}
					</p>
					<p>{siteFirst}</p>
					{cautionsOf(plan, rows).map((id) => (
						<CautionBox key={id} caution={cautions[id]} level={2} />
					))}
				</section>
			)}
		</>
	);
}

const slipTroubles = { noWorker: planWords.failed, broke: planWords.failed };

function PatchList({ plan, digest }: { plan: Plan; digest: string }): JSX.Element {
	const rows = useMemo(() => plan.rows.toSorted((a, b) => a.universe - b.universe || a.address - b.address), [plan]);
	const numbers = useMemo(() => new Map(plan.rows.map((row, i) => [row, i + 1])), [plan]);
	const { patch } = printWords;
	const drawn = useDrawn(
		rows,
		(row) => {
			const profile = profileOf(plan, row.profile);
			return (
				<tr key={row.id}>
					<td>{printWords.number(numbers.get(row) ?? 0)}</td>
					<td>{row.name}</td>
					<td>{profile?.name ?? row.profile}</td>
					<td>{modeTitle(profile, row.mode)}</td>
					<td>{row.universe}</td>
					<td>{threeDigits(row.address)}</td>
					<td>{threeDigits(row.address + rowFootprint(plan, row) - 1)}</td>
					<td>{row.place.x}</td>
					<td>{circuitSays(row.circuit)}</td>
				</tr>
			);
		},
		[plan],
	);
	return (
		<>
			<h2 class="patch-title">{plan.name}</h2>
			<p>{printWords.patchLead}</p>
			<SheetTable
				label={planWords.tabs.patch}
				heads={patch}
				top={`${plan.name} · ${changeWords.mark(digest)}`}
				look="patch"
			>
				{drawn}
			</SheetTable>
		</>
	);
}
