import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { sitWords } from '../../../content/papers/index.ts';
import { Button, Notice } from '../../ui/index.ts';
import { lastPaper } from './keepSitting.ts';

/** Bytes of a file that is read at all. */
const MOST_BYTES = 2_000_000;

/** Ways to open a paper when the address holds none: a link pasted, or a file. */
export function OpenPaper({ onText }: { onText: (text: string) => void }): JSX.Element {
	const id = useId();
	const [text, type] = useState('');
	const [wrong, tell] = useState(false);
	const [last] = useState(() => lastPaper(() => localStorage));
	const takeFile = async (file: File | undefined) => {
		if (!file) return;
		const read = file.size > MOST_BYTES ? null : await file.text().catch(() => null);
		tell(read === null);
		if (read !== null) onText(read);
	};
	return (
		<section class="sit-open" aria-labelledby={`${id}-none`}>
			<h2 id={`${id}-none`}>{sitWords.none}</h2>
			{last !== null && (
				<Button look="main" onClick={() => onText(last)}>
					{sitWords.last}
				</Button>
			)}
			<p>{sitWords.noneWays}</p>
			<form
				class="sit-open-paste"
				onSubmit={(event) => {
					event.preventDefault();
					if (text.trim() !== '') onText(text);
				}}
			>
				<label for={`${id}-paste`}>{sitWords.paste}</label>
				<textarea
					id={`${id}-paste`}
					rows={3}
					spellcheck={false}
					value={text}
					onInput={(event) => type(event.currentTarget.value)}
				/>
				<Button look={last === null ? 'main' : 'plain'} type="submit">
					{sitWords.openPasted}
				</Button>
			</form>
			<div class="sit-open-file">
				<label for={`${id}-file`}>{sitWords.file}</label>
				<input
					id={`${id}-file`}
					type="file"
					accept=".json,.txt,application/json,text/plain"
					onChange={(event) => void takeFile(event.currentTarget.files?.[0])}
				/>
			</div>
			{wrong && (
				<Notice kind="wrong">
					<p role="alert">{sitWords.notPaper}</p>
				</Notice>
			)}
		</section>
	);
}
