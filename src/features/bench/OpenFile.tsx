import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { fileWords } from '#words/bench/index.ts';
import { Button, Notice } from '../../ui/index.ts';
import type { OpenOther } from './opened.ts';
import { openFile } from './reopening.ts';

/** A button that opens a bench from a file in the place of the one on the page; a sentence where it cannot be opened. */
export function OpenFile({ openOther }: { openOther: OpenOther }): JSX.Element {
	const input = useRef<HTMLInputElement>(null);
	const [wrong, tell] = useState<string | null>(null);
	return (
		<>
			<Button onClick={() => input.current?.click()}>{fileWords.open}</Button>
			<input
				ref={input}
				type="file"
				accept="application/json,.json"
				aria-label={fileWords.open}
				hidden
				onChange={async (event) => {
					const { currentTarget: chosen } = event;
					const [file] = chosen.files ?? [];
					tell(null);
					if (file) tell(await openOther((ways) => openFile(file, ways)));
					// the same file may be chosen again
					chosen.value = '';
				}}
			/>
			{wrong !== null && (
				<Notice kind="wrong">
					<p role="alert">{wrong}</p>
				</Notice>
			)}
		</>
	);
}
