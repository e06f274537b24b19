import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { trainerWords } from '#words/papers/index.ts';
import type { AskRoute } from '../../../engine/index.ts';
import { Button, Live, Notice, Toggle } from '../../../ui/index.ts';
import { troubleText } from '../asking.ts';
import { Chart } from '../Chart.tsx';
import type { OpenedPaper } from '../protocol.ts';
import type { AskView, KeyView } from '../view.ts';

interface Props {
	ask: AskRoute;
	opened: OpenedPaper | null;
	/** Why there is no paper; empty where there is, or it is being set. */
	trouble: string;
	/** False while nobody has asked for a paper. */
	started: boolean;
	onStart: () => void;
	onAnother: () => void;
}

/** Questions shown before one asks for all. */
const FIRST = 3;

/** The paper as its boxes stand: its first questions, with what is right if one asks. */
export function Preview({ ask, opened, trouble, started, onStart, onAnother }: Props): JSX.Element {
	const [all, showAll] = useState(false);
	const [keyed, showKey] = useState(false);
	const [keys, setKeys] = useState<readonly KeyView[]>([]);
	const [failed, fail] = useState('');
	useEffect(() => {
		if (!keyed || !opened) return;
		let gone = false;
		ask('papers.keys', { recipe: opened.recipe, seed: opened.seed }).then(
			(found) => {
				if (!gone) setKeys(found);
			},
			(error: unknown) => fail(troubleText(error)),
		);
		return () => {
			gone = true;
		};
	}, [keyed, opened]);
	const questions = opened?.view.questions ?? [];
	const shown = all ? questions : questions.slice(0, FIRST);
	const wrong = trouble || failed;
	if (!started) {
		return (
			<section class="preview" aria-labelledby="preview">
				<h3 id="preview">{trainerWords.preview}</h3>
				<p>{trainerWords.notSet}</p>
				<div class="papers-ways">
					<Button look="main" onClick={onStart}>
						{trainerWords.setIt}
					</Button>
				</div>
			</section>
		);
	}
	return (
		<section class="preview" aria-labelledby="preview" aria-busy={!opened && wrong === ''}>
			<header class="preview-head">
				<h3 id="preview">{trainerWords.preview}</h3>
				{opened && (
					<span class="build-soft">
						{trainerWords.previewOf(shown.length, questions.length)} · {trainerWords.seed(opened.seed)}
					</span>
				)}
			</header>
			<div class="papers-ways">
				<Button disabled={!opened} onClick={onAnother} title={trainerWords.anotherHint}>
					{trainerWords.another}
				</Button>
				<Toggle label={trainerWords.key} on={keyed} onChange={showKey} />
			</div>
			{wrong !== '' && (
				<Notice kind="wrong">
					<p role="alert">{wrong}</p>
				</Notice>
			)}
			{!opened && wrong === '' && <p class="papers-wait">{trainerWords.setting}</p>}
			<ol class="preview-list">
				{shown.map(({ id, text, chart, topicName, levelName, ask: how }) => {
					const key = keyed ? keys.find(({ item }) => item === id) : undefined;
					return (
						<li key={id}>
							<p class="preview-tags">
								{topicName} · {levelName}
							</p>
							<p class="preview-ask">{text}</p>
							<Chart chart={chart} />
							<Asked ask={how} />
							{key && (
								<p class="preview-key">
									<strong>{trainerWords.right}:</strong> {key.right}
									{key.working !== '' && <span class="preview-working">{key.working}</span>}
								</p>
							)}
						</li>
					);
				})}
			</ol>
			<Live text={opened ? trainerWords.isSet(opened.view.title, questions.length, opened.seed) : ''} />
			{questions.length > FIRST && (
				<Button look="quiet" onClick={() => showAll(!all)}>
					{all ? trainerWords.previewFewer : trainerWords.previewMore}
				</Button>
			)}
		</section>
	);
}

/** What a question is answered with, in short. */
function Asked({ ask }: { ask: AskView }): JSX.Element {
	if ('options' in ask) {
		return (
			<ul class="preview-options">
				{ask.options.map(({ id, text }) => (
					<li key={id}>{text}</li>
				))}
			</ul>
		);
	}
	if (ask.form === 'match') {
		return (
			<ul class="preview-options">
				{ask.left.map(({ id, text }) => (
					<li key={id}>{text}</li>
				))}
			</ul>
		);
	}
	return <p class="build-soft">{trainerWords.formShort[ask.form]}</p>;
}
