import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { sheetWords } from '#words/finder/index.ts';
import { MOST_READ } from '../../storage/index.ts';
import { Button } from '../../ui/index.ts';
import type { FinderStore } from './store.ts';

/** A rig sheet from a file, from what is pasted, or from a link to a bench. */
export function OwnSheet({ store }: { store: FinderStore }): JSX.Element {
	const fileId = useId();
	const pasteId = useId();
	const [text, type] = useState('');
	const take = (file: File | undefined) => {
		if (!file) return;
		if (file.size > MOST_READ.sheet) {
			store.say(sheetWords.long);
			return;
		}
		file.text().then(
			(read) => store.read(read),
			() => store.say(sheetWords.unreadable),
		);
	};
	return (
		<div class="own-sheet">
			<h3>{sheetWords.own}</h3>
			<div class="field">
				<label for={fileId}>{sheetWords.file}</label>
				<input
					id={fileId}
					type="file"
					accept=".json,.txt,application/json,text/plain"
					onChange={(event) => take(event.currentTarget.files?.[0])}
				/>
			</div>
			<div class="field">
				<label for={pasteId}>{sheetWords.paste}</label>
				<textarea
					id={pasteId}
					rows={3}
					spellcheck={false}
					value={text}
					onInput={(event) => type(event.currentTarget.value)}
				/>
			</div>
			<Button onClick={() => store.read(text)}>{sheetWords.open}</Button>
		</div>
	);
}
