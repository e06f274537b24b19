import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { hiddenWords } from '#words/hidden-faults/index.ts';
import { Button, Live } from '../../ui/index.ts';

/** Copies the page's own address, which asks for this drill and holds no answer. */
export function Copy(): JSX.Element {
	const [said, say] = useState('');
	const copy = async (): Promise<void> => {
		try {
			await navigator.clipboard.writeText(location.href);
			say(hiddenWords.copied);
		} catch {
			say(hiddenWords.copyFailed);
		}
	};
	return (
		<>
			<Button look="quiet" onClick={() => void copy()}>
				{hiddenWords.copy}
			</Button>
			{said !== '' && <p aria-hidden="true">{said}</p>}
			<Live text={said} />
		</>
	);
}
