import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { lessonWords as words } from '#words/lessons/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { Button, fetchedWith, Notice, SaidAbove } from '../../ui/index.ts';
import { OnPhone } from './OnPhone.tsx';
import { Predict } from './Predict.tsx';
import type { Manual, PracticeData } from './practice.ts';

const STEPS = ['try', 'slip', 'task'] as const;
type PracticeStep = (typeof STEPS)[number];

// fetched when the bench comes into view: what opens rigs is no small part
const atWork = () => import('./atWork.ts');

const Fetched = fetchedWith(
	{ coming: words.benchComing, failed: words.benchFailed, again: words.benchRetry },
	'coming',
);

/** A lesson's one bench, used three ways: to try things on, to see a slip, and to do the task that is marked. */
export function Practice({ data }: { data: PracticeData }): JSX.Element {
	const [[step, turn], go] = useState<readonly [PracticeStep, number]>(['try', 0]);
	const [done, finish] = useState(false);
	const [shown, set] = useState<readonly RigEvent[]>([]);
	const { sheet, log, slip, hand, tools, task, under, more } = data;
	const manualsFor = ({ fixtures }: RigSheet) =>
		data.manuals.filter(({ id }) => fixtures.some(({ profile }) => profile === id));
	const stand = { sheet, hand, tools };
	const bench = async () => (await atWork()).onBench(sheet);
	const turnTo = (next: PracticeStep) => {
		set([]);
		go([next, turn + 1]);
	};
	const show = (events: readonly RigEvent[]) => {
		set(events);
		go(['try', turn + 1]);
	};
	return (
		<div class="practice">
			<fieldset class="practice-steps">
				<legend class="visually-hidden">{words.stepsLabel}</legend>
				{STEPS.map((each, i) => (
					<button
						key={each}
						type="button"
						class="practice-step"
						aria-pressed={step === each}
						onClick={() => turnTo(each)}
					>
						<span class="practice-number" aria-hidden="true">
							{i + 1}
						</span>
						{words.steps[each]}
					</button>
				))}
			</fieldset>
			{/* a question says by itself what came of it */}
			<div class="practice-words" aria-live={step === 'try' || (step === 'slip' && data.slipAsked) ? 'off' : 'polite'}>
				{step === 'try' && (
					<>
						{data.predict.length > 0 && (
							<div class="practice-part">
								<p class="practice-lead">{words.predictLead}</p>
								{data.predict.map((asked) => (
									<Predict
										key={asked.ask}
										asked={asked}
										between={{ words: words.predictDo, show: words.predictShow, onShow: () => show(asked.done) }}
									/>
								))}
							</div>
						)}
						<Try lines={data.try} />
					</>
				)}
				{step === 'slip' && (
					<>
						{data.slipAsked ? (
							<Predict key={turn} asked={{ ask: words.slipAsk, ...data.slipAsked }} isWord={words.slipIs}>
								<p>{data.slipWords}</p>
							</Predict>
						) : (
							<p>{data.slipWords}</p>
						)}
						<p class="hint">{words.slipLead}</p>
					</>
				)}
				{step === 'task' && <p class="hint">{words.taskWords}</p>}
			</div>
			<SaidAbove.Provider value={data.said}>
				{step === 'try' && <Fetched key={turn} load={bench} props={{ ...stand, log: [...log, ...shown] }} />}
				{step === 'slip' && <Fetched key={turn} load={bench} props={{ ...stand, log: [...log, ...slip] }} />}
				{step === 'task' && (
					<Fetched
						key={turn}
						load={async () => (await atWork()).onTask()}
						props={{
							set: task,
							under,
							onDone: () => finish(true),
							about: (on: RigSheet) => <Manuals all={manualsFor(on)} />,
						}}
					/>
				)}
			</SaidAbove.Provider>
			<div class="practice-foot">
				{step === 'task' ? (
					<>
						{done && (
							<Notice kind="good" word={words.done}>
								<p>{words.taskDone}</p>
							</Notice>
						)}
						{more !== null && (
							<p>
								<a href={more}>{words.more}</a>
							</p>
						)}
					</>
				) : (
					<>
						<Manuals all={manualsFor(sheet)} />
						<Button look="quiet" onClick={() => turnTo(step)}>
							{words.again}
						</Button>
					</>
				)}
			</div>
		</div>
	);
}

/** What to try on the bench. */
function Try({ lines }: { lines: readonly string[] }): JSX.Element {
	const [isOpen, open] = useState(false);
	return (
		<div class="practice-part" data-open={isOpen}>
			<OnPhone line={words.tryOpen(lines.length)} isOpen={isOpen} onPress={() => open(!isOpen)} />
			<p class="practice-lead">{words.tryLead}</p>
			<ol class="practice-rest">
				{lines.map((line) => (
					<li key={line}>{line}</li>
				))}
			</ol>
		</div>
	);
}

/** Links to the charts of the fixtures at hand: what the label or the manual would tell. One that nobody has seen has none. */
function Manuals({ all }: { all: readonly Manual[] }): JSX.Element | null {
	if (all.length === 0) return null;
	return (
		<p class="practice-manuals">
			{words.manuals}
			{all.map(({ name, href }) => (
				<a key={href} href={href}>
					{name}
				</a>
			))}
		</p>
	);
}
