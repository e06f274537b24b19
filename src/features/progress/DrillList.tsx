import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { drillWords, levels, progressWords } from '#words/drills/index.ts';
import { DEVICE, Trouble } from '../../storage/index.ts';
import { Button, Live, Title } from '../../ui/index.ts';
import { RigPractise } from '../rig-sheet/index.ts';
import { DrillKeeping } from './DrillKeeping.tsx';
import { asideText, type OpenedProgress, openProgress } from './keep.ts';
import { FIRM, type KindRecord, minutesText, NO_PROGRESS, suggestNext } from './result.ts';

/** A kind as the page hands it in, so that the list need not carry the drills themselves. */
export interface ListedKind {
	readonly id: string;
	readonly level: keyof typeof levels;
	readonly title: string;
	readonly why: string;
}

const hrefOf = (kind: string): string => `/drills/do/#kind=${kind}`;

interface Props {
	kinds: readonly ListedKind[];
	/** What else is offered before them, after practice on tonight's rig. */
	children?: ComponentChildren;
}

/** Every kind, easy to hard, with how it went so far, what to practise next, and the ways to keep and carry results. */
export function DrillList({ kinds, children }: Props): JSX.Element {
	const [opened, open] = useState<OpenedProgress | null>(null);
	const [said, say] = useState('');
	useEffect(() => void openProgress(DEVICE).then(open), []);
	return (
		<div class="drills">
			{opened && (
				<Trouble
					words={progressWords}
					found={opened}
					aside={() => asideText(DEVICE)}
					onDone={() => open({ ...opened, damaged: null })}
				/>
			)}
			<RigPractise />
			{children}
			<Next kinds={kinds} progress={opened?.progress ?? null} />
			{(['easy', 'middle', 'hard'] as const).map((level) => (
				<section key={level} class="drills-level" aria-labelledby={`level-${level}`}>
					<Title level={2} id={`level-${level}`}>
						{levels[level]}
					</Title>
					<ol class="drills-list">
						{kinds
							.filter((kind) => kind.level === level)
							.map((kind) => (
								<Kind key={kind.id} kind={kind} record={opened?.progress.get(kind.id)} known={opened !== null} />
							))}
					</ol>
				</section>
			))}
			{opened && (
				<DrillKeeping
					progress={opened.progress}
					onChange={(next, words) => {
						open(next);
						say(words);
					}}
					said={said}
				/>
			)}
			<Live text={said} />
		</div>
	);
}

interface NextProps {
	kinds: readonly ListedKind[];
	/** Null until the device was asked: the place of what comes is held, since the list would be pushed down. */
	progress: OpenedProgress['progress'] | null;
}

function Next({ kinds, progress }: NextProps): JSX.Element | null {
	const had = progress ?? NO_PROGRESS;
	const suggestion = suggestNext(
		had,
		kinds.map(({ id }) => id),
		Date.now(),
	);
	const kind = kinds.find(({ id }) => id === suggestion?.kind);
	if (!suggestion || !kind) return null;
	const why = progressWords.nextWhy[suggestion.why];
	return (
		<section class="drills-next" data-coming={progress === null} aria-labelledby="drills-next">
			<h2 id="drills-next">{progressWords.next}</h2>
			<p class="drills-next-title">{kind.title}</p>
			<p>{typeof why === 'string' ? why : why(had.get(kind.id)?.streak ?? 0, FIRM)}</p>
			<Button look="main" href={hrefOf(kind.id)}>
				{progressWords.go}
			</Button>
		</section>
	);
}

interface KindProps {
	kind: ListedKind;
	record: KindRecord | undefined;
	/** Whether the device was asked yet: before that nothing is said of results. */
	known: boolean;
}

function Kind({ kind, record, known }: KindProps): JSX.Element {
	const best = record?.best;
	const firm = record !== undefined && record.streak >= FIRM;
	return (
		<li class="drills-kind" data-kind={kind.id} data-firm={firm} data-done={Boolean(best)}>
			<h3>
				<a href={hrefOf(kind.id)} aria-label={progressWords.practiseOne(kind.title)}>
					{kind.title}
				</a>
			</h3>
			<p class="drills-why">{kind.why}</p>
			<p class="drills-result">
				{!known ? '\u00a0' : null}
				{known && !best ? progressWords.notDone : null}
				{best && record ? (
					<>
						{firm && <strong class="drills-firm">{progressWords.firm}. </strong>}
						{`${progressWords.best}: ${drillWords.result(best.presses, best.fewest, minutesText(best.milliseconds), best.hints)}. `}
						{`${progressWords.row(record.streak, record.longest)}. ${progressWords.doneTimes(record.done)}.`}
					</>
				) : null}
			</p>
		</li>
	);
}
