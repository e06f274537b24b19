import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { allowWords, checkWords, finderWords, verdictWords } from '#words/finder/index.ts';
import { Button, Notice, Tape, Title } from '../../ui/index.ts';
import { Cautions } from './Cautions.tsx';
import { Picture } from './Picture.tsx';
import type { FinderStore } from './store.ts';
import { becauseOf, cautionsFirst, disturbsText, lacking, shareText, timeText, titleOf, waysOn } from './verdict.ts';
import { type CauseView, type HingeView, planAddress, type RepairView, type Stage, type VerdictView } from './view.ts';
import type { Allows } from './walk.ts';

interface Props {
	store: FinderStore;
	verdict: VerdictView;
	allows: Allows;
	stage: Stage | null;
	/** Whether this verdict has been added to the device's count. */
	counted: boolean;
	/** The plan that the walk began from, by its id on the device; null for none. */
	plan: string | null;
}

/** The end of a walk: the cause, its repair and how to tell; or that nothing known here fits. */
export function VerdictCard({ store, verdict, allows, stage, counted, plan }: Props): JSX.Element {
	const { because, causes, lost, repairs, asides, hinge } = verdict;
	const repaired = because === 'mended';
	return (
		<section class="verdict" data-because={because}>
			<header class="verdict-head" data-begin tabIndex={-1}>
				<Title level={2}>{titleOf(verdict)}</Title>
				<p>{becauseOf(verdict)}</p>
			</header>
			{stage !== null && <p class="hint">{checkWords.stages[stage]}</p>}
			{causes.length > 0 && (
				<ul class="causes">
					{(repaired ? causes.slice(0, 1) : causes).map((cause) => (
						<Cause key={cause.id} cause={cause} repaired={repaired} alone={causes.length === 1} />
					))}
				</ul>
			)}
			{repaired && causes.length > 1 && (
				<details class="fold">
					<summary class="fold-line">{verdictWords.others(causes.length - 1)}</summary>
					<p>{verdictWords.othersSay}</p>
					<ul>
						{causes.slice(1).map(({ id, name }) => (
							<li key={id} data-suspect={id}>
								{name}
							</li>
						))}
					</ul>
				</details>
			)}
			{lost && (
				<>
					<h3>{verdictWords.unknownWays}</h3>
					<Cautions ids={lost.cautions} />
					<ol class="ways-on">
						{waysOn(verdict).map((way) => (
							<li key={way}>{way}</li>
						))}
					</ol>
					<TapeWords tape={lost.tape} />
				</>
			)}
			{!repaired && repairs.length > 0 && (
				<ol class="mends">
					{repairs.map((repair, i) => (
						<Repair
							key={repair.check}
							repair={repair}
							at={i + 1}
							of={repairs.length}
							isNext={i === 0}
							allows={allows}
							busy={stage !== null}
							onDone={(outcome) => store.answer(repair.check, outcome)}
						/>
					))}
				</ol>
			)}
			{hinge && <HingeSays on={hinge.on} />}
			{repaired && counted && <Notice kind="good">{verdictWords.counted}</Notice>}
			{!repaired && asides > 0 && (
				<p class="asides">
					{verdictWords.asides(asides)}{' '}
					<Button data-way="bring-back" onClick={() => store.bringBack()}>
						{verdictWords.bringBack}
					</Button>
				</p>
			)}
			<div class="verdict-ways">
				<Button look="quiet" data-way="back" onClick={() => store.back()}>
					{verdictWords.back}
				</Button>
				{repaired && plan !== null && (
					<Button look="main" data-way="plan" href={planAddress(plan)}>
						{verdictWords.notePlan}
					</Button>
				)}
				{repaired && (
					<Button look={plan === null ? 'main' : 'plain'} data-way="another" onClick={() => store.startAgain()}>
						{verdictWords.another}
					</Button>
				)}
				<Button data-way="other-complaint" onClick={() => store.otherComplaint()}>
					{finderWords.otherComplaint}
				</Button>
			</div>
		</section>
	);
}

/** Whether one wrong answer would have led here, and the look that settles it. */
function HingeSays({ on }: { on: HingeView | null }): JSX.Element {
	const words = verdictWords.hinge;
	if (!on) return <p class="hint">{words.none}</p>;
	const { name, check, seen, settle, cautions } = on;
	return (
		<details class="fold" data-hinge>
			<summary class="fold-line">{words.title}</summary>
			<p>{words.says(check, seen, name)}</p>
			<Cautions ids={cautions} />
			{settle ? (
				<>
					<p>
						{words.settle(settle.title, settle.does)}
						{settle.disturbs && ` ${disturbsText(settle.sort)}.`}
					</p>
					<p>{words.settled(settle.there, settle.here.join(words.or))}</p>
				</>
			) : (
				<p>{words.again}</p>
			)}
		</details>
	);
}

function Cause({ cause, repaired, alone }: { cause: CauseView; repaired: boolean; alone: boolean }): JSX.Element {
	return (
		<li class="cause" data-suspect={cause.id}>
			{repaired && <p class="cause-was">{alone ? verdictWords.was : verdictWords.wasLikely}</p>}
			<h3>
				{cause.name} {!repaired && !alone && <span class="value">{shareText(cause.share)}</span>}
			</h3>
			<p>{cause.cause}</p>
			{(repaired || alone) && <TapeWords tape={cause.tape} />}
		</li>
	);
}

function TapeWords({ tape }: Pick<CauseView, 'tape'>): JSX.Element {
	return (
		<div class="tape-words">
			<p>{verdictWords.tape}</p>
			{tape.map((words) => (
				<p key={words} class="tape-strip">
					<Tape>{words}</Tape>
				</p>
			))}
		</div>
	);
}

interface RepairProps {
	repair: RepairView;
	at: number;
	of: number;
	/** The one to do now: it stands open. */
	isNext: boolean;
	allows: Allows;
	busy: boolean;
	onDone: (outcome: 'cleared' | 'still') => void;
}

function Repair({ repair, at, of, isNext, allows, busy, onDone }: RepairProps): JSX.Element {
	const title = of > 1 ? verdictWords.ordered(at, of, repair.title) : repair.title;
	return (
		<li class="mend" data-mend={repair.check}>
			{isNext ? (
				<>
					<h3>{title}</h3>
					<RepairBody {...{ repair, allows, busy, onDone }} />
				</>
			) : (
				<details class="fold">
					<summary class="fold-line">{title}</summary>
					<RepairBody {...{ repair, allows, busy, onDone }} />
				</details>
			)}
		</li>
	);
}

function RepairBody({
	repair,
	allows,
	busy,
	onDone,
}: Pick<RepairProps, 'repair' | 'allows' | 'busy' | 'onDone'>): JSX.Element {
	const [isTold, tell] = useState(repair.cautions.length === 0);
	const waits = busy || !isTold;
	const said = <Cautions ids={repair.cautions} onShown={() => tell(true)} />;
	const isFirst = cautionsFirst(repair.cautions);
	return (
		<div class="mend-body">
			{isFirst && said}
			<p class="check-does">{repair.does}</p>
			<p class="check-costs">
				<strong>{checkWords.costs(timeText(repair.seconds))}</strong>.
			</p>
			{lacking(repair, allows).map((spare) => (
				<Notice key={spare}>{verdictWords.lacks(allowWords.lacks[spare])}</Notice>
			))}
			{repair.disturbs && allows.showRunning && <Notice>{verdictWords.disturbs}</Notice>}
			{!isFirst && said}
			<Picture picture={repair.picture} />
			<p>
				<strong>{verdictWords.confirm}</strong> {repair.confirm}
			</p>
			<div class="mend-ways">
				<button type="button" class="answer" data-outcome="cleared" disabled={waits} onClick={() => onDone('cleared')}>
					{verdictWords.done}
				</button>
				<button type="button" class="answer" data-outcome="still" disabled={waits} onClick={() => onDone('still')}>
					{verdictWords.still}
				</button>
			</div>
		</div>
	);
}
