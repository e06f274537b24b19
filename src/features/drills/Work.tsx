import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { drillWords } from '#words/drills/index.ts';
import type { Mark, Task } from '../../../sim/drill/index.ts';
import { findingName, hintAims, hintOn, markDrill } from '../../../sim/drill/trusted.ts';
import type { Rig } from '../../../sim/rig/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { Button, Live } from '../../ui/index.ts';
import { hintStepAfter, hintStepText } from '../../wording/index.ts';
import { Bench } from '../bench/index.ts';
import { changeProgress, type OpenedProgress, withHint } from '../progress/index.ts';
import type { RigStore } from '../rig/index.ts';
import { type TaskName, useUnfinished } from '../unfinished/index.ts';
import { type Attempt, markedAttempt, progressAfter } from './attempt.ts';
import { DrillCautions } from './DrillCautions.tsx';
import { Marks } from './Marks.tsx';

interface Props {
	drill: Task;
	under: TaskName;
	store: RigStore;
	attempt: Attempt;
	onAttempt: (attempt: Attempt) => void;
	onRestart: () => void;
}

/** Cautions the bench itself shows where they apply. */
const ON_BENCH = ['hanging', 'batteries', 'mains', 'ultraviolet', 'flashing'];
const ALWAYS_OUT = ['sound', 'breaker', 'clock', 'log'] as const;

/** The bench of a drill at work, the bar to mark it and ask for a hint, and the mark. */
export function Work({ drill, under, store, attempt, onAttempt, onRestart }: Props): JSX.Element {
	const [marked, setMarked] = useState<{ mark: Mark; rig: Rig } | null>(null);
	const [kept, keep] = useState<OpenedProgress | null>(null);
	const [hint, say] = useState({ text: '', turn: 0, step: 0 });
	// what was last asked about and how far, and how the attempt stands: at once, as a hint's words may take a moment and Hint may be
	// pressed again meanwhile
	const asked = useRef({ of: '', step: 0 });
	const latest = useRef(attempt);
	latest.current = attempt;
	const change = (next: Attempt) => {
		latest.current = next;
		onAttempt(next);
	};
	const marks = useRef<HTMLDivElement>(null);
	useUnfinished(drill, under, store, attempt);

	const markIt = async () => {
		store.upToNow();
		const got = markDrill(drill, store.rig.log);
		setMarked({ mark: got, rig: store.rig.fork() });
		say(({ turn }) => ({ text: '', turn, step: 0 }));
		asked.current = { of: '', step: 0 };
		const before = latest.current;
		change(markedAttempt(before, got));
		const now = Date.now();
		keep(await changeProgress(DEVICE, (own) => progressAfter(own, under, got, before, now)));
	};
	// brought into sight and read from its top
	useEffect(() => {
		if (marked) marks.current?.querySelector('h3')?.focus();
	}, [marked]);
	const giveHint = async () => {
		store.upToNow();
		// as it stands now: hands may go on before the words are here
		const rig = store.rig.fork();
		const aim = hintAims(drill, rig);
		const hint = hintOn(drill, rig);
		// while the same thing is to be put right each press of Hint tells more, and then press after press
		const of = aim ? findingName(aim) : '';
		const mine = { of, step: asked.current.of === of ? hintStepAfter(asked.current.step, aim) : 1 };
		asked.current = mine;
		if (hint && !latest.current.done) {
			change({ ...latest.current, hints: latest.current.hints + 1 });
			void changeProgress(DEVICE, (own) => withHint(own, under.kind, under.seed));
		}
		const text = await hintStepText(drill, rig, { hint, aim }, mine.step);
		// asked again or marked meanwhile
		if (asked.current !== mine) return;
		say(({ turn }) => ({ text: text ?? drillWords.nothingLeft, turn: turn + 1, step: text === null ? 0 : mine.step }));
	};
	const out = (['desk', 'cables', 'remote'] as const).filter(
		(tool) => !drill.hands.includes(tool === 'cables' ? 'line' : tool),
	);
	const open = (['desk', 'cables', 'remote'] as const).filter((tool) => !out.includes(tool));
	const rest = drill.cautions.filter((id) => !ON_BENCH.includes(id));
	const bar = (
		<section class="thumb-bar" data-task-bar aria-label={drillWords.bar}>
			{hint.text !== '' && (
				<p class="drill-hint">
					<strong>
						{hint.step > 0 ? `${drillWords.hintWord}: ${drillWords.hintSteps[hint.step - 1]}` : drillWords.hintWord}
					</strong>{' '}
					{hint.text}
				</p>
			)}
			<Button look="main" onClick={markIt}>
				{drillWords.mark}
			</Button>
			<Button onClick={giveHint}>{drillWords.hint}</Button>
			<Button look="quiet" onClick={onRestart}>
				{drillWords.startAgain}
			</Button>
		</section>
	);
	return (
		<>
			<Bench
				store={store}
				hands={drill.hands}
				without={[...ALWAYS_OUT, ...out]}
				startsOpen={open}
				bar={<div ref={marks}>{marked && <Marks {...{ drill, under, ...marked, attempt, kept }} />}</div>}
				side={rest.length > 0 && <DrillCautions ids={rest} />}
				foot={bar}
			/>
			<Live text={hint.text} turn={hint.turn} />
		</>
	);
}
