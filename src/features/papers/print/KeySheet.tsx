import type { JSX } from 'preact';
import { printWords } from '#words/papers/index.ts';
import type { KeyView } from '../view.ts';
import { Head, keyLetters, type SheetProps } from './Head.tsx';

/** What is right, and how one comes by it. */
export function KeySheet({ paper, seed, keys }: SheetProps & { keys: readonly KeyView[] }): JSX.Element {
	return (
		<article class="sheet">
			<Head paper={paper} seed={seed} what={printWords.keyTitle} blanks={false} />
			<ol class="sheet-key">
				{paper.questions.map(({ id, text, ask }) => {
					const key = keys.find(({ item }) => item === id);
					const letters = keyLetters(ask, key?.rightIds ?? []);
					return (
						<li key={id}>
							<p class="sheet-key-ask">{text}</p>
							{key && (
								<p class="sheet-key-right">
									{letters.length > 0 && <b>{letters.join(' ')}: </b>}
									{key.right}
								</p>
							)}
							{key && key.working !== '' && <p class="sheet-working">{key.working}</p>}
						</li>
					);
				})}
			</ol>
		</article>
	);
}
