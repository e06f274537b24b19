import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type CautionId, cautionIds, cautions, siteFirst } from '#words/cautions/index.ts';
import { drillWords } from '#words/drills/index.ts';
import { sitWords } from '#words/papers/index.ts';
import { isInputError } from '../../../../../shared/error/index.ts';
import { BUNDLED_KINDS, type Drill, makeDrill, pressesOf } from '../../../../../sim/drill/index.ts';
import { type RigEvent, readLog } from '../../../../../sim/event/index.ts';
import { Button, CautionBox } from '../../../../ui/index.ts';
import { Bench } from '../../../bench/index.ts';
import { drillStore, handsText, type RigStore } from '../../../rig/index.ts';
import { worthKeeping } from '../logs.ts';

interface Props {
	kind: string;
	seed: number;
	disabled: boolean;
	/** What was done so far, as it was kept. */
	log: readonly unknown[];
	onLog: (log: readonly RigEvent[]) => void;
}

/** Milliseconds between something done and its keeping. */
const KEEP_AFTER_MS = 400;
/** What the bench itself shows where it applies. */
const ON_BENCH = ['hanging', 'batteries', 'mains', 'ultraviolet', 'flashing'];

/** A task done on the bench, in place: no hints and no marks; what is done is the answer. */
export default function Practical({ kind, seed, disabled, log, onLog }: Props): JSX.Element {
	const drill = useMemo(() => {
		const known = BUNDLED_KINDS.find((id) => id === kind);
		return known === undefined ? null : makeDrill(known, seed);
	}, [kind, seed]);
	const [store, open] = useState<RigStore | null>(() => (drill && log.length > 0 ? reopened(drill, log) : null));
	const [starts, count] = useState(0);
	if (!drill) return <p>{sitWords.notPaper}</p>;
	const start = () => {
		open(drillStore(drill));
		count((n) => n + 1);
	};
	const rest = drill.cautions.filter((id) => !ON_BENCH.includes(id));
	return (
		<div class="sit-practical">
			<p class="sit-soft">{`${drillWords.scene[drill.scene]} ${drillWords.hands}: ${handsText(drill)}.`}</p>
			{!store && (
				<>
					<Cautions ids={drill.cautions} />
					<Button look="main" disabled={disabled} onClick={start}>
						{sitWords.benchOpen}
					</Button>
				</>
			)}
			{store && (
				<>
					<AtWork key={starts} drill={drill} store={store} disabled={disabled} onLog={onLog} />
					<Cautions ids={rest} />
					{!disabled && (
						<Button
							look="quiet"
							onClick={() => {
								onLog([]);
								start();
							}}
						>
							{sitWords.benchAgain}
						</Button>
					)}
				</>
			)}
		</div>
	);
}

interface AtWorkProps {
	drill: Drill;
	store: RigStore;
	disabled: boolean;
	onLog: (log: readonly RigEvent[]) => void;
}

function AtWork({ drill, store, disabled, onLog }: AtWorkProps): JSX.Element {
	const [presses, tell] = useState(() => pressesOf(store.rig.log));
	const latest = useRef(onLog);
	latest.current = onLog;
	useEffect(() => {
		let timer = 0;
		let kept = JSON.stringify(worthKeeping(store.rig.log));
		const save = () => {
			timer = 0;
			store.upToNow();
			const log = worthKeeping(store.rig.log);
			const text = JSON.stringify(log);
			if (text === kept) return;
			kept = text;
			tell(pressesOf(log));
			latest.current(log);
		};
		const stop = store.subscribe(() => {
			if (timer === 0) timer = window.setTimeout(save, KEEP_AFTER_MS);
		});
		return () => {
			stop();
			window.clearTimeout(timer);
			save();
		};
	}, [store]);
	const out = (['desk', 'cables', 'remote'] as const).filter(
		(tool) => !drill.hands.includes(tool === 'cables' ? 'line' : tool),
	);
	return (
		<div class="sit-bench drill" inert={disabled}>
			<p class="sit-soft">{sitWords.benchDone(presses)}</p>
			<Bench
				store={store}
				hands={drill.hands}
				explains={false}
				without={['sound', 'breaker', 'clock', 'log', ...out]}
			/>
		</div>
	);
}

function Cautions({ ids }: { ids: readonly string[] }): JSX.Element | null {
	const known = ids.filter((id): id is CautionId => (cautionIds as readonly string[]).includes(id));
	if (known.length === 0) return null;
	return (
		<div class="sit-cautions">
			{known.map((id) => (
				<CautionBox key={id} caution={cautions[id]} siteFirst={siteFirst} />
			))}
		</div>
	);
}

/** The bench as it was left; null where what was kept does not fit it any more. */
function reopened(drill: Drill, log: readonly unknown[]): RigStore | null {
	try {
		return drillStore(drill, readLog(log));
	} catch (error) {
		if (!isInputError(error)) throw error;
		return null;
	}
}
