import type { JSX } from 'preact';
import { useEffect, useId, useState } from 'preact/hooks';
import { handOnWords } from '#words/finder/index.ts';
import { Button, Live } from '../../ui/index.ts';
import { walkLink } from './handOn.ts';
import type { FinderRecord } from './walk.ts';

/** Fails too where the browser has no clipboard to give, as on a page that came unsafely. */
const copied = async (text: string): Promise<void> => navigator.clipboard.writeText(text);

/** The walk as a link, for whoever goes on with it. Made anew with each step. */
export function HandOn({ allows, walk }: FinderRecord): JSX.Element {
	const field = useId();
	const [link, set] = useState('');
	const [said, say] = useState({ words: '', turn: 0 });
	const tell = (words: string) => say(({ turn }) => ({ words, turn: turn + 1 }));
	useEffect(() => {
		let isLast = true;
		// there is no link to copy then, and the button stays off; one of an earlier step would lead elsewhere
		const none = (why: string) => {
			if (!isLast) return;
			set('');
			tell(why);
		};
		walkLink({ allows, walk }).then(
			(fragment) => {
				if (fragment === null) none(handOnWords.tooLong);
				else if (isLast) {
					set(`${location.origin}${location.pathname}${fragment}`);
					// what was said is of another step's link
					say(({ turn }) => ({ words: '', turn }));
				}
			},
			() => none(handOnWords.noLink),
		);
		return () => {
			isLast = false;
		};
	}, [allows, walk]);
	return (
		<div class="field">
			<label for={field}>{handOnWords.label}</label>
			<textarea id={field} data-link rows={2} readOnly spellcheck={false} value={link} />
			<p class="hint">{handOnWords.says}</p>
			<Button
				data-way="hand-on"
				disabled={link === ''}
				onClick={() =>
					copied(link).then(
						() => tell(handOnWords.copied),
						() => tell(handOnWords.copyFailed),
					)
				}
			>
				{handOnWords.copy}
			</Button>
			<p aria-hidden="true">{said.words}</p>
			<Live text={said.words} turn={said.turn} />
		</div>
	);
}
