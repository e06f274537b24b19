import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { backWords } from '#words/bench/index.ts';
import { isSwitchedOn } from '../../../sim/fixture/index.ts';
import { Toggle } from '../../ui/index.ts';
import { fixtureLight } from '../../wording/index.ts';
import { type OnFrame, type RigClock, type RigStore, runClock } from '../rig/index.ts';
import { KeyedPanel } from './KeyedPanel.tsx';
import { useBenchView } from './useBenchView.ts';
import { BenchContext, later, useBench, useSeen } from './view.ts';

const DipPanel = later(() => import('./DipPanel.tsx'));

const HANDS = ['panel', 'power'] as const;
const NONE = [] as const;

/** The panel of a rig's only fixture, to press with nothing else of the bench around it; its light is told in words. */
export function LonePanel({ store }: { store: RigStore }): JSX.Element {
	const tell = useRef<(words: string) => void>(() => {});
	const listeners = useRef(new Set<OnFrame>());
	const clock = useRef<RigClock | null>(null);
	useEffect(() => {
		const run = runClock(store, () => Number.POSITIVE_INFINITY);
		clock.current = run;
		return run.stop;
	}, [store]);
	const view = useBenchView(store, {
		first: null,
		hands: HANDS,
		startsOpen: NONE,
		why: null,
		listeners: listeners.current,
		clock,
		tell,
	});
	return (
		<BenchContext.Provider value={view}>
			<Lone />
		</BenchContext.Provider>
	);
}

function Lone(): JSX.Element | null {
	const { store } = useBench();
	const fixture = store.rig.sheet.fixtures[0]?.id ?? '';
	const [unit, sight, light] = useSeen(({ store: { rig, look } }) => {
		const now = rig.gear.units.get(fixture);
		return now ? [now, look(fixture), fixtureLight(rig, fixture), isSwitchedOn(now.state)] : [null, null, ''];
	});
	if (!unit || !sight) return null;
	const { name } = unit.placed;
	const { panel, shape } = unit.profile;
	const { display } = sight;
	return (
		<div class="back lone-panel">
			<div class={`case case-${shape}`}>
				{panel.kind === 'dip'
					? display.kind === 'switches' && <DipPanel {...{ fixture, name, panel, display }} />
					: display.kind === 'keyed' && <KeyedPanel {...{ fixture, name, panel, display }} />}
				<div class="case-foot">
					<Toggle
						label={backWords.powerSwitch}
						on={isSwitchedOn(unit.state)}
						onChange={(on) => store.send({ type: 'power.switch', fixture, on })}
					/>
				</div>
			</div>
			<p class="back-light">{backWords.lightIs(light)}</p>
		</div>
	);
}
