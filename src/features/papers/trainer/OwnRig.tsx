import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { trainerWords } from '#words/papers/index.ts';
import type { AskRoute } from '../../../engine/index.ts';
import { Button, Notice } from '../../../ui/index.ts';
import { troubleText } from '../asking.ts';
import type { PastedRig } from '../protocol.ts';

interface Props {
	ask: AskRoute;
	pasted: PastedRig | null;
	onPasted: (rig: PastedRig) => void;
}

/** A rig of the crew's own: its sheet as text, or a link that a bench made. */
export function OwnRig({ ask, pasted, onPasted }: Props): JSX.Element {
	const id = useId();
	const [text, type] = useState('');
	const [trouble, tell] = useState('');
	const use = () => {
		tell('');
		ask('papers.pasted', { text }).then(onPasted, (error: unknown) => tell(troubleText(error)));
	};
	return (
		<div class="build-own">
			{pasted && <p class="build-own-is">{trainerWords.ownIs(pasted.name, pasted.fixtures)}</p>}
			<label for={id}>{trainerWords.paste}</label>
			<textarea id={id} rows={3} spellcheck={false} value={text} onInput={(event) => type(event.currentTarget.value)} />
			<Button onClick={use}>{trainerWords.pasteUse}</Button>
			{trouble !== '' && (
				<Notice kind="wrong">
					<p role="alert">{trouble}</p>
				</Notice>
			)}
		</div>
	);
}
