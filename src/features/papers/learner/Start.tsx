import type { JSX } from 'preact';
import { sitWords } from '#words/papers/index.ts';
import { Button, Title } from '../../../ui/index.ts';
import type { PaperView } from '../view.ts';

/** Before the first question: what it is, how long, and when one is told. */
export function Start({ paper, onBegin }: { paper: PaperView; onBegin: () => void }): JSX.Element {
	return (
		<section class="sit-start" aria-labelledby="sit-title">
			<Title level={2} id="sit-title">
				{paper.title}
			</Title>
			<p class="sit-lead">{sitWords.about(paper.questions.length, paper.pass)}</p>
			<ul>
				<li>{paper.minutes === null ? sitWords.noLimit : sitWords.limit(paper.minutes)}</li>
				<li>{sitWords.told[paper.feedback]}</li>
				<li>{sitWords.savedHere}</li>
			</ul>
			<Button look="main" onClick={onBegin}>
				{sitWords.begin}
			</Button>
		</section>
	);
}
