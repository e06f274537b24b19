import type { JSX } from 'preact';
import { useId, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { changeWords, labelWords, printWords, slipWords } from '#words/plan/index.ts';
import {
	cableKey,
	type NumberedCable,
	numberedCables,
	type Plan,
	type PlanDigests,
	type PlanRow,
	profileOf,
} from '../../../shared/plan/index.ts';
import { Notice } from '../../ui/index.ts';
import { endName } from './changesView.ts';
import { useDrawn } from './growing.ts';
import {
	FIRST_GRID,
	isLargeEnough,
	LABEL_PAPERS,
	type LabelGrid,
	type LabelPaper,
	LEAST_LABEL,
	labelSize,
	onSheets,
} from './labelGrid.ts';
import { NumberBox } from './Rows.tsx';
import { modeTitle, threeDigits } from './view.ts';

interface Props {
	plan: Plan;
	rows: readonly PlanRow[];
	digests: PlanDigests;
	/** Whether these are only some of the rig's: cables are left out then. */
	isPart: boolean;
}

type What = 'fixtures' | 'cables';

/** Labels on any grid of a sheet, or one by one on a strip: for fixtures, and for both ends of each cable. */
export function Labels({ plan, rows, digests, isPart }: Props): JSX.Element {
	const [grid, setGrid] = useState(FIRST_GRID);
	const [what, pick] = useState<What>('fixtures');
	const [cut, tell] = useState(0);
	const box = useRef<HTMLElement>(null);
	const cables = useMemo(() => numberedCables(plan), [plan]);
	const things = useMemo(
		() =>
			what === 'fixtures' ? rows : cables.flatMap((cable) => (['from', 'to'] as const).map((end) => ({ cable, end }))),
		[what, rows, cables],
	);
	const labels = useDrawn<PlanRow | { readonly cable: NumberedCable; readonly end: 'from' | 'to' }>(
		things,
		(thing) =>
			'cable' in thing ? (
				<CableLabel key={`${thing.cable.n} ${thing.end}`} {...{ plan, ...thing, digests }} />
			) : (
				<FixtureLabel key={thing.id} {...{ plan, row: thing, digests }} />
			),
		[plan, what, digests],
	);
	const fits = isLargeEnough(grid);
	const { width, height } = labelSize(grid);
	// what a label has no room for must not come out of the printer half told
	useLayoutEffect(() => {
		// once all are there: to measure some makes the page lay out all of them
		if (labels.length < things.length) return;
		const all = [...(box.current?.querySelectorAll('.label') ?? [])];
		tell(all.filter((it) => it.scrollHeight > it.clientHeight + 1 || it.scrollWidth > it.clientWidth + 1).length);
	}, [plan, rows, what, grid, labels.length, things.length]);
	return (
		<>
			<div class="no-print label-choices">
				<p>{labelWords.lead}</p>
				{!isPart && (
					<fieldset class="rig-from">
						<legend>{labelWords.what}</legend>
						{(['fixtures', 'cables'] as const).map((each) => (
							<label key={each} class="rig-check">
								<input type="radio" name="labels" checked={what === each} onChange={() => pick(each)} />
								<span>{labelWords.whats[each]}</span>
							</label>
						))}
					</fieldset>
				)}
				<GridFields grid={grid} onGrid={setGrid} />
				<p>{labelWords.size(width, height)}</p>
				{!fits && <Notice kind="wrong">{labelWords.small(LEAST_LABEL.width, LEAST_LABEL.height)}</Notice>}
				{fits && cut > 0 && <Notice kind="wrong">{labelWords.cut(cut)}</Notice>}
			</div>
			{fits && (
				// biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls sideways on a phone, and by keys too
				<section class="patch-scroll" tabIndex={0} aria-label={labelWords.whats[what]} ref={box}>
					{onSheets(grid, labels).map((sheet, i) => (
						<div key={i} class="label-sheet" data-paper={grid.paper} style={gridStyle(grid, width, height)}>
							{sheet.map((label, j) => label ?? <span key={j} class="label-used" />)}
						</div>
					))}
				</section>
			)}
		</>
	);
}

const gridStyle = ({ columns, top, side, gapAcross, gapDown, paper }: LabelGrid, width: number, height: number) => ({
	'--label-columns': paper === 'strip' ? 1 : columns,
	'--label-width': `${width}mm`,
	'--label-height': `${height}mm`,
	'--label-top': `${paper === 'strip' ? 0 : top}mm`,
	'--label-side': `${paper === 'strip' ? 0 : side}mm`,
	'--label-across': `${gapAcross}mm`,
	'--label-down': `${gapDown}mm`,
});

type Numbers = Exclude<keyof LabelGrid, 'paper'>;
/** What each number of a grid may come to; whole where it counts. */
const BOUNDS: Readonly<Record<Numbers, readonly [least: number, most: number, isWhole: boolean]>> = {
	columns: [1, 20, true],
	rows: [1, 20, true],
	top: [0, 60, false],
	side: [0, 60, false],
	gapAcross: [0, 30, false],
	gapDown: [0, 30, false],
	used: [0, 399, true],
	tape: [6, 110, false],
	length: [20, 300, false],
};
const ON_SHEET: readonly Numbers[] = ['columns', 'rows', 'top', 'side', 'gapAcross', 'gapDown', 'used'];
const ON_STRIP: readonly Numbers[] = ['tape', 'length'];

function GridFields({ grid, onGrid }: { grid: LabelGrid; onGrid: (grid: LabelGrid) => void }): JSX.Element {
	const id = useId();
	return (
		<div class="rig-fields">
			<div class="rig-field">
				<label for={id}>{labelWords.paper}</label>
				<select
					id={id}
					value={grid.paper}
					onChange={(event) => onGrid({ ...grid, paper: event.currentTarget.value as LabelPaper })}
				>
					{LABEL_PAPERS.map((paper) => (
						<option key={paper} value={paper}>
							{labelWords.papers[paper]}
						</option>
					))}
				</select>
			</div>
			{(grid.paper === 'strip' ? ON_STRIP : ON_SHEET).map((each) => {
				const [least, most, isWhole] = BOUNDS[each];
				return (
					<NumberBox
						key={each}
						label={labelWords.numbers[each]}
						value={grid[each]}
						{...{ least, most, isWhole }}
						onNumber={(value) => onGrid({ ...grid, [each]: value })}
					/>
				);
			})}
		</div>
	);
}

function FixtureLabel({ plan, row, digests }: { plan: Plan; row: PlanRow; digests: PlanDigests }): JSX.Element {
	return (
		<div class="label">
			<span class="label-number">{printWords.number(plan.rows.indexOf(row) + 1)}</span>
			<span class="label-name">{row.name}</span>
			<span class="label-address">{threeDigits(row.address)}</span>
			<span class="label-mark">{changeWords.mark(digests.label(row))}</span>
			<span class="label-more">
				{slipWords.universe(row.universe)} · {modeTitle(profileOf(plan, row.profile), row.mode)}
			</span>
		</div>
	);
}

interface CableProps {
	plan: Plan;
	cable: NumberedCable;
	/** The end it is stuck to. */
	end: 'from' | 'to';
	digests: PlanDigests;
}

function CableLabel({ plan, cable, end, digests }: CableProps): JSX.Element {
	const other = end === 'from' ? 'to' : 'from';
	const name = (which: 'from' | 'to'): string => endName([plan], cable[which]);
	return (
		<div class="label label-cable">
			<span class="label-number">{labelWords.cable(cable.n)}</span>
			<span class="label-mark">
				{changeWords.mark(digests.cable(cableKey(cable)))} · {labelWords.metres(cable.length)}
			</span>
			<span class="label-name">{labelWords.here[end](name(end))}</span>
			<span class="label-more">{labelWords.there[other](name(other))}</span>
		</div>
	);
}
