import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { hiddenWords } from '#words/hidden-faults/index.ts';
import type { AskRoute } from '../../engine/index.ts';
import { useUnderWay } from '../../site/updates/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { Button, Live, Title } from '../../ui/index.ts';
import { timeText } from '../finder/index.ts';
import { CheckList } from './CheckList.tsx';
import { Copy } from './Copy.tsx';
import { Fitting } from './Fitting.tsx';
import { keep, keptOf } from './keep.ts';
import { Review } from './Review.tsx';
import { type DrillOf, type DrillView, drillLink, type ReviewView, type StandView, TONIGHT } from './view.ts';

interface Props {
	ask: AskRoute;
	drill: DrillOf;
	onFail: (error: unknown) => void;
	onAnother: () => void;
	onLeave: () => void;
}

/** One drill, from its complaint to the review of what was done. Key it by its link. */
export function Drill({ ask, drill, onFail, onAnother, onLeave }: Props): JSX.Element {
	const [view, setView] = useState<DrillView | null>(null);
	const [stand, setStand] = useState<StandView | null>(null);
	const [review, setReview] = useState<ReviewView | null>(null);
	const [busy, setBusy] = useState(true);
	const [told, setTold] = useState('');
	const steps = useRef<readonly string[]>([]);
	const gone = useRef(false);
	useUnderWay(review === null, true);

	/** Does what is in `steps`, shows where that leads, and the review where it ends. */
	const go = async (next: readonly string[], gaveUp: boolean): Promise<void> => {
		setBusy(true);
		try {
			const stood = await ask('hidden.stand', { drill, steps: next });
			if (gone.current) return;
			// kept are those that the rig knew
			steps.current = stood.done.map(({ check }) => check);
			keep(DEVICE, { drill: drillLink(drill), steps: steps.current, gaveUp });
			setStand(stood);
			const last = stood.done.at(-1);
			if (!stood.cleared && !gaveUp) {
				setTold(last ? hiddenWords.shows(last.title, last.seen) : '');
				return;
			}
			setTold(hiddenWords.working);
			const reviewed = await ask('hidden.review', { drill, steps: steps.current });
			if (gone.current) return;
			setReview(reviewed);
			setTold(stood.cleared ? hiddenWords.cleared : hiddenWords.gaveUp);
		} catch (error) {
			if (!gone.current) onFail(error);
		} finally {
			if (!gone.current) setBusy(false);
		}
	};

	// once: a drill's key makes it anew
	useEffect(() => {
		const open = async (): Promise<void> => {
			try {
				const opened = await ask('hidden.open', drill);
				if (gone.current) return;
				setView(opened);
				const kept = keptOf(DEVICE, drillLink(drill));
				await go(kept?.steps ?? [], kept?.gaveUp ?? false);
			} catch (error) {
				if (!gone.current) onFail(error);
			}
		};
		void open();
		return () => {
			gone.current = true;
		};
	}, []);

	if (!view || !stand) return <p class="hidden-wait">{hiddenWords.opening}</p>;
	const last = stand.done.at(-1);
	return (
		<section class="hidden-one" data-busy={busy} data-done={stand.done.length}>
			<header class="hidden-head">
				<Title level={2}>{view.complaint}</Title>
				<p>
					{hiddenWords.on(view.rig)}. {hiddenWords.count(drill.count)}
				</p>
				{drill.rig === TONIGHT && <p>{hiddenWords.tonight}</p>}
				{view.isOwn && <p>{hiddenWords.ownPanels}</p>}
			</header>
			<p class="hidden-spent">
				{hiddenWords.spent} <strong class="value">{timeText(stand.spent)}</strong>
				{last && <span class="hidden-last">{hiddenWords.shows(last.title, last.seen)}</span>}
			</p>
			{review ? (
				<Review review={review} cleared={stand.cleared} />
			) : (
				<>
					<CheckList
						checks={view.checks}
						rows={view.rows}
						busy={busy}
						onDo={(check) => void go([...steps.current, check], false)}
					/>
					<Done stand={stand} />
					<Fitting fitting={stand.fitting} />
					<Button disabled={busy} data-way="give-up" onClick={() => void go(steps.current, true)}>
						{hiddenWords.giveUp}
					</Button>
				</>
			)}
			<div class="hidden-ways">
				<Button look={review ? 'main' : 'quiet'} onClick={onAnother}>
					{hiddenWords.another}
				</Button>
				<Button look="quiet" onClick={onLeave}>
					{hiddenWords.again}
				</Button>
				<Copy />
			</div>
			<Live text={told} turn={stand.done.length} />
		</section>
	);
}

/** What was done so far. */
function Done({ stand: { done } }: { stand: StandView }): JSX.Element {
	return (
		<section class="hidden-log">
			<h3>{hiddenWords.log}</h3>
			{done.length === 0 && <p>{hiddenWords.logNone}</p>}
			<ol>
				{done.map(({ check, title, seen, seconds }, at) => (
					<li key={`${at} ${check}`}>
						{hiddenWords.shows(title, seen)} <span class="value">{timeText(seconds)}</span>
					</li>
				))}
			</ol>
		</section>
	);
}
