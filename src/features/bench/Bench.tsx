import type { ComponentChildren, JSX, RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { benchWords } from '#words/bench/index.ts';
import type { HandsOn as Touch } from '../../../sim/drill/index.ts';
import { Button, Live, Notice } from '../../ui/index.ts';
import { type OnFrame, type RigClock, type RigStore, runClock, useWatched } from '../rig/index.ts';
import { FixtureBack } from './FixtureBack.tsx';
import { handCautions, lightCautions } from './fixtureBack.ts';
import { Row } from './Row.tsx';
import { Told } from './Told.tsx';
import { Faders, SheetTabs, Tools } from './Tools.tsx';
import { useBenchView } from './useBenchView.ts';
import { type Pace, useLessMotion } from './usePainting.ts';
import { BenchContext, later, type Tool, useSeen } from './view.ts';
import { Wall } from './Wall.tsx';
import { isRestless } from './wall.ts';

const Cautions = later(() => import('./Cautions.tsx'));
const HandBar = later(() => import('./HandBar.tsx'));
const WallNotes = later(() => import('./WallNotes.tsx'));
const Why = later(() => import('./Why.tsx'));

export interface BenchProps {
	store: RigStore;
	/** What stands over the bench: its bar of buttons, or a drill's task. */
	bar?: ComponentChildren;
	/** What somebody else says beside it, such as a drill's cautions, after those of the light. */
	side?: ComponentChildren;
	/** What stays at its foot, such as a drill's bar of buttons. */
	foot?: ComponentChildren;
	/** The fixture in hand at first; the first of the row unless told. */
	first?: string | null;
	/** What hands may touch; everything where it is left out. */
	hands?: readonly Touch[];
	/** Whether it may be asked why the light is as it is: not where what is done is marked. */
	explains?: boolean;
	/** Tools left out: a drill has no drawer of things to break. */
	without?: readonly Tool[];
	/** Tools that are open from the start. */
	startsOpen?: readonly Tool[];
}

/** A rig on the bench: the wall, the row, the fixture in hand, the tools. Everything done goes to the store. */
export function Bench({
	store,
	bar,
	side,
	foot,
	first = null,
	hands,
	explains = true,
	without = [],
	startsOpen = [],
}: BenchProps): JSX.Element {
	const [isEmpty] = useWatched(store, () => [store.rig.sheet.fixtures.length === 0]);
	const [asked, ask] = useState<string | null>(null);
	const [real, setReal] = useState(false);
	const less = useLessMotion();
	const pace: Pace = less ? 'still' : real ? 'real' : 'limited';
	const chosen = useRef(false);
	const choose = (to: boolean) => {
		chosen.current = true;
		setReal(to);
	};
	// whoever came for it has taken the focus by now
	useEffect(() => {
		chosen.current = false;
	}, [real]);
	const tell = useRef<(words: string) => void>(() => {});
	const listeners = useRef(new Set<OnFrame>());

	const clock = useRef<RigClock | null>(null);
	useEffect(() => {
		const run = runClock(store, (at) =>
			Math.min(...[...listeners.current].map((listener) => listener(at) ?? Number.POSITIVE_INFINITY)),
		);
		clock.current = run;
		return run.stop;
	}, [store]);

	const why = explains ? ask : null;
	const view = useBenchView(store, { first, hands, startsOpen, why, listeners: listeners.current, clock, tell });
	return (
		<BenchContext.Provider value={view}>
			<div class="bench">
				<div class="bench-bar">{bar}</div>
				<Said />
				{isEmpty ? (
					<p class="bench-empty">{benchWords.empty}</p>
				) : (
					<Stage>
						<Wall pace={pace} />
						<div class="stage-row">
							{/* the wall flashes as fast as the light: the way back stands right below it */}
							{pace === 'real' && <WallNotes pace={pace} onReal={choose} chosen={chosen} />}
							<Row />
							<AtSockets />
						</div>
						<Side>
							<InHand />
							<div class="stage-notes">
								<HandCautions />
							</div>
							{/* in a task a tool is what it is done with: there it stands below the row, and what is to be said stays at the panel */}
							{hands === undefined && <Tools without={without} />}
							<div class="stage-notes">
								<LightNotes pace={pace} onReal={choose} chosen={chosen} />
								{side}
							</div>
						</Side>
						{!without.includes('desk') && <Faders />}
						{hands !== undefined && <Tools without={without} />}
					</Stage>
				)}
				<div class="bench-foot">
					{!isEmpty && <SheetTabs without={without} />}
					{foot}
				</div>
				<Told store={store} tell={tell} />
				{explains && asked !== null && <Asked fixture={asked} onClose={() => ask(null)} />}
			</div>
		</BenchContext.Provider>
	);
}

/** What the rig refused, until the next thing done. */
function Said(): JSX.Element {
	const [store, said] = useSeen(({ store }) => [store, store.said]);
	return (
		<>
			{said && (
				<div class="bench-said">
					<Notice kind="wrong">
						<p>{said.words}</p>
						<Button look="quiet" onClick={() => store.say(null)}>
							{benchWords.dismiss}
						</Button>
					</Notice>
				</div>
			)}
			<Live text={said?.words ?? ''} turn={said?.turn ?? 0} urgent />
		</>
	);
}

/** The cautions for hands at the fixture in hand. They stand whatever is up. */
function HandCautions(): JSX.Element | null {
	const ids = useSeen(({ selected, store: { rig } }) => (selected === null ? [] : handCautions(rig, selected)));
	return ids.length > 0 ? <Cautions ids={ids} /> : null;
}

interface LightNotesProps {
	pace: Pace;
	onReal: (real: boolean) => void;
	chosen: RefObject<boolean>;
}

/** What the light of all asks to be said: cautions, and where the wall is drawn calmer than the light is. Below the panel, so that no key moves when it comes. */
function LightNotes({ pace, onReal, chosen }: LightNotesProps): JSX.Element {
	const [restless, ...cautions] = useSeen(({ store }) => {
		const sights = store.rig.sheet.fixtures.map(({ id }) => store.look(id));
		return [sights.some(isRestless), ...lightCautions(sights)] as const;
	});
	return (
		<>
			{pace !== 'real' && restless && <WallNotes pace={pace} onReal={onReal} chosen={chosen} />}
			{cautions.length > 0 && <Cautions ids={cautions} level={2} />}
		</>
	);
}

function AtSockets(): JSX.Element | null {
	const [hand] = useSeen(({ hand }) => [hand]);
	return hand && <HandBar />;
}

/** All that stands on the bench, marked with what is up where one thing has room below the row. */
function Stage({ children }: { children: ComponentChildren }): JSX.Element {
	const [sheet, tool] = useSeen(({ sheet, tool }) => [sheet, tool]);
	return (
		<div class="stage" data-sheet={sheet} data-tool-up={tool}>
			{children}
		</div>
	);
}

/** Beside the wall, on a wide screen: the fixture in hand, the tools, and what is to be said of the light. */
function Side({ children }: { children: ComponentChildren }): JSX.Element {
	const box = useRef<HTMLDivElement>(null);
	// how tall it stands decides where it stays while the page scrolls
	useEffect(() => {
		const element = box.current;
		if (!element) return;
		const watch = new ResizeObserver(() => element.style.setProperty('--side-height', `${element.offsetHeight}px`));
		watch.observe(element);
		return () => watch.disconnect();
	}, []);
	return (
		<div class="stage-side" ref={box}>
			{children}
		</div>
	);
}

/** The fixture in hand. One that was just selected comes into sight, and stays there: nothing that comes later stands above it. */
function InHand(): JSX.Element {
	const [selected, shown] = useSeen(({ selected, shown }) => [selected, shown]);
	const box = useRef<HTMLDivElement>(null);
	useLayoutEffect(() => {
		if (shown > 0) box.current?.querySelector('.panel')?.scrollIntoView({ block: 'nearest' });
	}, [shown]);
	return (
		<div class="stage-hand" ref={box}>
			{selected !== null && <FixtureBack fixture={selected} />}
		</div>
	);
}

function Asked({ fixture, onClose }: { fixture: string; onClose: () => void }): JSX.Element | null {
	const [isThere] = useSeen(({ store }) => [store.rig.gear.units.has(fixture)]);
	return isThere ? <Why fixture={fixture} onClose={onClose} /> : null;
}
