import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { CautionId } from '#words/cautions/index.ts';
import { finderWords, quickWords, startWords } from '#words/finder/index.ts';
import { useUnderWay } from '../../site/updates/index.ts';
import { Button, useAwake } from '../../ui/index.ts';
import { Allowed } from './Allowed.tsx';
import { CheckCard } from './CheckCard.tsx';
import { Log } from './Log.tsx';
import { Note } from './Note.tsx';
import { Suspects } from './Suspects.tsx';
import type { FinderScene } from './scene.ts';
import type { FinderStore } from './store.ts';
import { VerdictCard } from './VerdictCard.tsx';
import { timeText } from './verdict.ts';
import { later } from './view.ts';
import { Working } from './Working.tsx';

/** Only where a plan is behind the walk. */
const PlanMayBeWrong = later(() => import('./PlanMayBeWrong.tsx'), true);

/** The walk: one check or the verdict, the suspects beside it, the log under it. */
export function WalkScreen({ store, scene }: { store: FinderStore; scene: FinderScene }): JSX.Element {
	const { view, laid, allows, stage, walk } = scene;
	const met = useRef(new Set<CautionId>());
	useAwake();
	useUnderWay(view !== null && !view.verdict, true);
	return (
		<div class="walk">
			<header class="walk-head">
				<p class="walk-what">
					<strong>{view?.complaint}</strong> {laid && finderWords.on(laid.name)}
				</p>
				<StartAgain store={store} />
			</header>
			{view ? (
				<>
					<span class="walk-top" data-top />
					<Suspects suspects={view.suspects} isRepaired={view.verdict?.because === 'mended'} turn={scene.turn} />
					<div class="walk-main">
						<Note store={store} note={scene.note} />
						{view.check && (
							<CheckCard
								key={`${view.log.length} ${view.check.id}`}
								store={store}
								check={view.check}
								stage={stage}
								met={met.current}
							/>
						)}
						{view.verdict && (
							<VerdictCard
								key={view.log.length}
								store={store}
								verdict={view.verdict}
								allows={allows}
								stage={stage}
								counted={(walk?.counted.length ?? 0) > 0}
								plan={walk?.plan ?? null}
							/>
						)}
						{walk?.plan !== undefined && <PlanMayBeWrong store={store} view={view} plan={walk.plan} />}
						{view.isPart && <p class="hint">{finderWords.isPart}</p>}
						{laid?.isQuick && <p class="hint">{quickWords.assumed}</p>}
						<div class="walk-foot">
							<Allowed store={store} allows={allows} />
							<p class="walk-spent">{finderWords.spent(timeText(view.spent))}</p>
						</div>
						<Log scene={scene} />
					</div>
				</>
			) : (
				<div class="walk-main">
					{stage !== null && <Working stage={stage} />}
					<Button look="quiet" onClick={() => store.back()}>
						{startWords.back}
					</Button>
				</div>
			)}
		</div>
	);
}

/** Asked twice: a walk is minutes of somebody's work. */
function StartAgain({ store }: { store: FinderStore }): JSX.Element {
	const [asking, ask] = useState(false);
	if (!asking)
		return (
			<Button look="quiet" onClick={() => ask(true)}>
				{finderWords.startAgain}
			</Button>
		);
	return (
		<fieldset class="sure">
			<legend>{finderWords.startAgainSure}</legend>
			<Button onClick={() => store.startAgain()}>{finderWords.startAgainYes}</Button>
			<Button onClick={() => store.otherComplaint()}>{finderWords.otherComplaint}</Button>
			<Button look="quiet" onClick={() => ask(false)}>
				{finderWords.keepOn}
			</Button>
		</fieldset>
	);
}
