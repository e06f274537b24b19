import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { benchWords } from '#words/bench/index.ts';
import type { HandsOn as Touch } from '../../../sim/drill/index.ts';
import { Button, Live, Notice } from '../../ui/index.ts';
import { type OnFrame, type RigClock, type RigStore, runClock, useRig } from '../rig/index.ts';
import { FixtureBack } from './FixtureBack.tsx';
import { lightCautions } from './fixtureBack.ts';
import { type InHand, stillHeld } from './hand.ts';
import { Row } from './Row.tsx';
import { Tools } from './Tools.tsx';
import { type Pace, useLessMotion } from './usePainting.ts';
import { useTelling } from './useTelling.ts';
import { BenchContext, type BenchView, later } from './view.ts';
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
	/** A panel of somebody else's, such as a drill's marks, after the fixture in hand. */
	side?: ComponentChildren;
	/** The fixture in hand at first; the first of the row unless told. */
	first?: string | null;
	/** What hands may touch; everything where it is left out. */
	hands?: readonly Touch[];
	/** Whether it may be asked why the light is as it is: not where what is done is marked. */
	explains?: boolean;
	/** Tools left out: a drill has no drawer of things to break. */
	without?: readonly ('desk' | 'cables' | 'remote' | 'sound' | 'breaker' | 'log' | 'clock')[];
}

/** A rig on the bench: the wall, the row, the fixture in hand, the tools. Everything done goes to the store. */
export function Bench({
	store,
	bar,
	side,
	first = null,
	hands,
	explains = true,
	without = [],
}: BenchProps): JSX.Element {
	useRig(store);
	const { rig } = store;
	const [picked, select] = useState<string | null>(first);
	const [held, hold] = useState<InHand | null>(null);
	const [asked, ask] = useState<string | null>(null);
	const [next, setNext] = useState<BenchView['next']>({ kind: 'data', length: 5 });
	const [real, setReal] = useState(false);
	const less = useLessMotion();
	const pace: Pace = less ? 'still' : real ? 'real' : 'limited';
	const telling = useTelling(store);
	const handBox = useRef<HTMLDivElement>(null);
	const listeners = useRef(new Set<OnFrame>());

	const clock = useRef<RigClock | null>(null);
	useEffect(() => {
		const run = runClock(store, (at) =>
			Math.min(...[...listeners.current].map((listener) => listener(at) ?? Number.POSITIVE_INFINITY)),
		);
		clock.current = run;
		return run.stop;
	}, [store]);

	// how tall the fixture in hand stands decides where it stays while the page scrolls
	useEffect(() => {
		const box = handBox.current;
		if (!box) return;
		const watch = new ResizeObserver(() => box.style.setProperty('--hand-height', `${box.offsetHeight}px`));
		watch.observe(box);
		return () => watch.disconnect();
	}, [rig.sheet.fixtures.length === 0]);

	const selected = picked !== null && rig.gear.units.has(picked) ? picked : (rig.sheet.fixtures[0]?.id ?? null);
	const hand = stillHeld(rig, held) ? held : null;
	const onFrame = useMemo(
		() => (listener: OnFrame) => {
			listeners.current.add(listener);
			// it is to be called once though nothing moves
			clock.current?.wake();
			return () => void listeners.current.delete(listener);
		},
		[],
	);
	const view: BenchView = {
		store,
		selected,
		select,
		hand,
		hold,
		onFrame,
		why: explains ? ask : null,
		can: (touch) => hands?.includes(touch) ?? true,
		free: hands === undefined,
		tell: telling.tell,
		next,
		setNext,
	};
	const sights = rig.sheet.fixtures.map(({ id }) => store.look(id));
	const lights = lightCautions(sights);
	return (
		<BenchContext.Provider value={view}>
			<div class="bench">
				<div class="bench-bar">{bar}</div>
				{store.said && (
					<div class="bench-said">
						<Notice kind="wrong">
							<p>{store.said.words}</p>
							<Button look="quiet" onClick={() => store.say(null)}>
								{benchWords.dismiss}
							</Button>
						</Notice>
					</div>
				)}
				{rig.sheet.fixtures.length === 0 ? (
					<p class="bench-empty">{benchWords.empty}</p>
				) : (
					<div class="stage">
						<Wall pace={pace} />
						<div class="stage-row">
							{(real || sights.some(isRestless)) && <WallNotes pace={pace} onReal={setReal} />}
							{lights.length > 0 && <Cautions ids={lights} level={2} />}
							<Row />
							{hand && <HandBar />}
						</div>
						<div class="stage-hand" ref={handBox}>
							{selected !== null && <FixtureBack fixture={selected} />}
							{side}
						</div>
						<Tools without={without} />
					</div>
				)}
				<Live text={telling.text} turn={telling.turn} />
				<Live text={store.said?.words ?? ''} turn={store.said?.turn ?? 0} urgent />
				{explains && asked !== null && rig.gear.units.has(asked) && <Why fixture={asked} onClose={() => ask(null)} />}
			</div>
		</BenchContext.Provider>
	);
}
