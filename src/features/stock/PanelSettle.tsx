import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { panelQuestions, panelSettle as words } from '#words/stock/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import type { PanelEntry, Question, StockEntry } from '../../../shared/stock/index.ts';
import type { Seen, SettlePress } from '../../../sim/settle/index.ts';
import { Button, Live } from '../../ui/index.ts';
import { keyName, settingTitle, settingValueText } from '../../wording/index.ts';
import { fileTrouble, settlePanel } from './askFile.ts';
import { answerText, withAnswer } from './PanelQuestions.tsx';
import type { SettleAnswer } from './routes.ts';

type Left = Partial<Record<Question, readonly string[]>>;

interface Props {
	entry: StockEntry;
	panel: PanelEntry;
	profile: Profile;
	onAnswer: (answers: PanelEntry['answers']) => void;
	/** Says what became of a check, where it is heard after this part is gone too. */
	onSay: (said: string) => void;
}

/** The check on the real fixture that settles an open question in the fewest presses, one at a time. */
export function PanelSettle({ entry, panel, profile, onAnswer, onSay }: Props): JSX.Element {
	const [found, set] = useState<Settling>(null);
	const [left, keepLeft] = useState<Left>({});
	const [said, say] = useState('');
	const [settler] = useState(() => settlerTo(set));
	/** A check was shown that was neither answered nor given up: the real one may stand changed. */
	const isBegun = useRef(false);
	const tellGone = () => {
		if (isBegun.current) onSay(words.gone);
		isBegun.current = false;
	};
	if (found !== null && typeof found === 'object' && 'question' in found) isBegun.current = true;
	// what was found goes for the panel as it was then, and so does what is still being worked out
	useEffect(() => {
		settler.letGo();
		tellGone();
		set(null);
		keepLeft({});
		// an answer as it was assumed leaves the profile as it is
	}, [profile.id, JSON.stringify(panel.answers)]);
	useEffect(
		() => () => {
			settler.letGo();
			tellGone();
		},
		[],
	);
	const begin = () => {
		onSay('');
		say('');
		void ask(left);
	};
	/** The check is over: what is to be set back has been said. */
	const end = (sentence: string) => {
		isBegun.current = false;
		set(null);
		say(sentence);
	};
	const ask = (still: Left) => settler.ask((signal) => settlePanel(entry, still, signal));
	const see = (question: Question, answers: readonly string[]) => {
		const [only, other] = answers;
		if (only !== undefined && other === undefined) {
			end(words.settled(answerText(question, only, profile.panel)));
			onAnswer(withAnswer(panel.answers, question, only));
			return;
		}
		const still = { ...left, [question]: answers };
		keepLeft(still);
		void ask(still);
	};
	return (
		<section class="stock-settle" aria-labelledby="stock-settle">
			<h3 id="stock-settle">{words.heading}</h3>
			<p>{words.lead}</p>
			{found === null && (
				<div class="stock-ways">
					<Button onClick={begin}>{words.begin}</Button>
				</div>
			)}
			{found === 'working' && <p role="status">{words.working}</p>}
			{found === 'none' && <p role="status">{words.none}</p>}
			{found !== null && typeof found === 'object' && 'wrong' in found && (
				<>
					<p class="field-error" role="alert">
						{found.wrong}
					</p>
					<div class="stock-ways">
						<Button onClick={begin}>{words.begin}</Button>
					</div>
				</>
			)}
			{found !== null && typeof found === 'object' && 'question' in found && (
				<Check
					check={found}
					profile={profile}
					onSee={(answers) => see(found.question, answers)}
					onNeither={() => end(words.neitherSays)}
				/>
			)}
			<p aria-hidden="true">{said}</p>
			<Live text={said} />
		</section>
	);
}

interface CheckProps {
	check: SettleAnswer;
	profile: Profile;
	onSee: (answers: readonly string[]) => void;
	onNeither: () => void;
}

/** How far the next check is: not asked for, being worked out, there is none, it could not be worked out, or it is here. */
export type Settling = SettleAnswer | { readonly wrong: string } | 'none' | 'working' | null;

/** Has checks worked out. */
interface Settler {
	/** Works one out and shows how far it is; what breaks is told as what broke. One that was asked for before shows no more. Never throws. */
	ask(settle: (signal: AbortSignal) => Promise<SettleAnswer | null>): Promise<void>;
	/** Ends what is still being worked out: it shows no more. */
	letGo(): void;
}

/** One check at a time: only the last that was asked for is shown. */
export function settlerTo(show: (settling: Settling) => void): Settler {
	let last = new AbortController();
	const letGo = () => {
		last.abort();
		last = new AbortController();
	};
	return {
		letGo,
		async ask(settle) {
			letGo();
			const { signal } = last;
			show('working');
			const found: Settling = await settle(signal).then(
				(check) => check ?? 'none',
				(error: unknown) => ({ wrong: fileTrouble(error, words) }),
			);
			if (!signal.aborted) show(found);
		},
	};
}

/** One check: what to do, what to watch for, and what each sight answers. */
export function Check({ check, profile, onSee, onNeither }: CheckProps): JSX.Element {
	const { question, steps, seen, starts } = check;
	const { ask, care }: { readonly ask: string; readonly care?: string } = panelQuestions.questions[question];
	const lights = new Set(seen.map(({ light }) => JSON.stringify(light))).size > 1;
	return (
		<div class="stock-check">
			<p>
				<strong>
					{words.care} {words.stop}
				</strong>
			</p>
			<p>{ask}</p>
			{care && <p class="field-hint">{care}</p>}
			<ol>
				<li>{words.start(starts.map((key) => startText(profile, key)))}</li>
				{inRuns(steps).map(([press, times], i) => (
					<li key={i}>{pressText(profile, press, times)}</li>
				))}
			</ol>
			<p>{words.see}</p>
			<div class="stock-sights">
				{seen.map((each) => (
					<Button key={each.answers.join()} onClick={() => onSee(each.answers)}>
						{words.seen(
							seenText(profile, each, lights),
							each.answers.map((answer) => answerText(question, answer, profile.panel)),
						)}
					</Button>
				))}
				<Button look="quiet" onClick={onNeither}>
					{words.neither}
				</Button>
			</div>
		</div>
	);
}

const startText = (profile: Profile, key: SettleAnswer['starts'][number]): string =>
	`${settingTitle(key)}: ${settingValueText(profile, key, profile.defaults[key])}`;

/** The same press several times over as one line. */
function inRuns(steps: readonly SettlePress[]): [press: SettlePress, times: number][] {
	const runs: [SettlePress, number][] = [];
	for (const step of steps) {
		const last = runs.at(-1);
		if (last && step.do === 'tap' && JSON.stringify(last[0]) === JSON.stringify(step)) last[1]++;
		else runs.push([step, 1]);
	}
	return runs;
}

function pressText({ panel }: Profile, press: SettlePress, times: number): string {
	if (press.do === 'wait') return words.wait(press.ms / 1000);
	const key = keyName(panel, press.key);
	return press.do === 'hold' ? words.hold(key, press.ms / 1000) : words.tap(key, times);
}

/** What is seen, the light too where it is what tells them apart. */
function seenText(profile: Profile, { lines, light }: Seen, tellsLight: boolean): string {
	const shows = words.shows(lines.join(' / '));
	if (!tellsLight) return shows;
	if (light === 'dark') return words.both(shows, words.light.dark);
	const setting = 'held' in light ? 'held' : 'programme';
	const value = 'held' in light ? light.held : light.programme;
	return words.both(shows, words.light[setting](settingValueText(profile, setting, value)));
}
