import type { JSX } from 'preact';
import { type CautionId, cautions } from '#words/cautions/index.ts';
import { changeWords, slipSteps, slipWords } from '#words/plan/index.ts';
import { type DataLink, isOnBattery, type Plan, type PlanRow, profileOf, roleOf } from '../../../shared/plan/index.ts';
import { type Profile, panelFrom } from '../../../shared/profile/index.ts';
import type { Slip, SlipStep } from '../../../sim/slip/index.ts';
import { keyName } from '../../wording/index.ts';
import { cautionsOf, circuitSays, modeTitle, threeDigits } from './view.ts';

interface Props {
	plan: Plan;
	row: PlanRow;
	/** Null where no presses lead there. */
	slip: Slip | null;
	/** Its data links; null where it has none. */
	link: DataLink | null;
	/** Hours on its battery; null on the mains. */
	hours: number | null;
	/** Its number in the list, from 1. */
	n: number;
	/** The mark of what it says. */
	digest: string;
}

/** Steps past which they stand in two columns on paper. */
const LONG = 9;

/** What to tick, in the order it is done: bonded as soon as it is clamped, mains linked with the supply off. */
export const boxesOf = (isOverhead: boolean, isBattery: boolean) =>
	[
		...(isBattery ? (['charged', 'set'] as const) : (['set', 'off'] as const)),
		...(isOverhead ? (['hung', 'bond'] as const) : (['stood'] as const)),
		isBattery ? ('linked' as const) : ('linkedAll' as const),
		'answers' as const,
	] as const;

/** What a slip has room for; all of each caution stands on a page of its own beside the slips. */
const CARE: Readonly<Partial<Record<CautionId, number>>> = {
	hanging: 0,
	height: 0,
	mains: 0,
	batteries: 2,
	ultraviolet: 0,
};

/** A prep slip: what one fixture is to be, and what to press for it. */
export function SlipBlock({ plan, row, slip, link, hours, n, digest }: Props): JSX.Element {
	const profile = profileOf(plan, row.profile);
	const panelIs = profile ? panelFrom(profile) : 'stand-in';
	const role = roleOf(plan, row);
	const switches = slip?.steps.find((step) => step.do === 'switches');
	const { from, to } = wires(plan, link, plan.source === 'leader');
	const isBattery = isOnBattery(plan, row);
	return (
		<section class="slip" data-row={row.id}>
			<header class="slip-head">
				<span class="slip-number">{n}</span>
				<h2>{row.name}</h2>
				<span class="slip-rig">{plan.name}</span>
				<span class="slip-unit">{profile?.name ?? row.profile}</span>
				<span class="slip-mark">{changeWords.mark(digest)}</span>
			</header>
			<p class="slip-set">
				<span>{slipWords.universe(row.universe)}</span>
				<strong>{threeDigits(row.address)}</strong>
				<span>
					{slipWords.mode}: {modeTitle(profile, row.mode)}
				</span>
			</p>
			{switches?.do === 'switches' && <Switches up={switches.up} />}
			<p class="slip-role">{slipWords.role[role]}.</p>
			<div class="slip-keys">
				<p>
					<strong>{slipWords.panelFrom[panelIs]}</strong>
				</p>
				{slip === null ? (
					<p>{slipWords.none}</p>
				) : slip.steps.length === 0 ? (
					// what the panel has no way to is not as planned
					slip.cannot.length === 0 && <p>{slipWords.nothing}</p>
				) : (
					<>
						<p>
							<strong>{slipWords.keys}</strong> ({slipWords.presses(slip.presses)})
						</p>
						<ol data-long={slip.steps.length > LONG}>
							{slip.steps.map((step, i) => (
								<li key={i}>{stepText(step, profile?.panel)}</li>
							))}
						</ol>
					</>
				)}
				{slip && slip.cannot.length > 0 && (
					<p>{slipWords.cannot(slip.cannot.map((key) => settingName(key)).join(', '))}</p>
				)}
			</div>
			<p class="slip-wires">
				{slipWords.dataFrom(from)}. {to}.
			</p>
			<p class="slip-power">
				{isBattery && hours !== null ? slipWords.battery(hours) : slipWords.mains(circuitSays(row.circuit))}.{' '}
				{slipWords.volts}.
			</p>
			{isBattery && <p class="slip-power">{slipWords.noCircuit}.</p>}
			<p class="slip-boxes">
				{boxesOf(row.place.overhead, isBattery).map((box) => (
					<Box key={box} words={slipWords.boxes[box]} />
				))}
			</p>
			{!row.place.overhead && <p class="slip-stands">{slipWords.notOverhead}</p>}
			<ul class="slip-care">
				{cautionsOf(plan, [row]).flatMap((id) => {
					// charged elsewhere, by the charge plan: the slip has the volts, and the page beside it all of the mains
					const at = id === 'mains' && isBattery ? undefined : CARE[id];
					return at === undefined ? (
						[]
					) : (
						<li key={id}>
							<strong>{cautions[id].title}.</strong> {cautions[id].care[at]}
						</li>
					);
				})}
				<li>{slipWords.siteFirst}</li>
			</ul>
		</section>
	);
}

const settingName = (key: string): string => (slipWords.settings as Readonly<Record<string, string>>)[key] ?? key;

const shownText = (lines: readonly string[]): string => lines.map((line) => line.replace(/^> /, '')).join(' ');

/** A step in words, its key by what the panel calls it. */
export function stepText(step: SlipStep, panel: Profile['panel'] | undefined): string {
	switch (step.do) {
		case 'tap':
			return slipSteps.tap(keyName(panel, step.key), step.times, shownText(step.shows));
		case 'hold':
			return slipSteps.hold(keyName(panel, step.key), shownText(step.until), step.again, shownText(step.shows));
		case 'unlock':
		case 'long':
			return slipSteps[step.do](keyName(panel, step.key), step.seconds, shownText(step.shows));
		case 'switches':
			return slipSteps.switches(step.up.flatMap((isUp, i) => (isUp ? [i + 1] : [])));
		case 'slide':
			return slipSteps.slide(step.title, step.to);
		default:
			return slipSteps.power;
	}
}

/** Where a row's data comes from and goes on to, in words. */
function wires(plan: Plan, link: DataLink | null, isLeader: boolean): { from: string; to: string } {
	const nameOf = (id: string): string => plan.rows.find((each) => each.id === id)?.name ?? id;
	if (!link) return { from: slipWords.nothingIn, to: slipWords.nothingOut };
	const start = isLeader ? slipWords.nothingIn : link.split ? slipWords.splitter : slipWords.desk;
	const end = link.terminates ? slipWords.end : slipWords.nothingOut;
	return {
		from: link.from === null ? start : nameOf(link.from),
		to: link.to === null ? end : slipWords.to(nameOf(link.to)),
	};
}

function Box({ words }: { words: string }): JSX.Element {
	return (
		<span class="slip-box">
			<i aria-hidden="true" />
			{words}
		</span>
	);
}

/** Ten switches as they are to stand: the dark end is where the slide is. */
function Switches({ up }: { up: readonly boolean[] }): JSX.Element {
	const text = slipSteps.switches(up.flatMap((isUp, i) => (isUp ? [i + 1] : [])));
	return (
		<p class="slip-switches" role="img" aria-label={text}>
			{up.map((isUp, i) => (
				<span key={i} class="slip-switch" data-up={isUp}>
					<i />
					<b>{i + 1}</b>
				</span>
			))}
		</p>
	);
}
