import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { fileWords } from '#words/bench/index.ts';
import { FileButton, Notice } from '../../ui/index.ts';
import type { OpenOther } from './opened.ts';
import { openFile } from './reopening.ts';

/** A button that opens a bench from a file in the place of the one on the page; a sentence where it cannot be opened. */
export function OpenFile({ openOther }: { openOther: OpenOther }): JSX.Element {
	const [wrong, tell] = useState<string | null>(null);
	return (
		<>
			<FileButton
				accept="application/json,.json"
				onFile={async (file) => {
					tell(null);
					tell(await openOther((ways) => openFile(file, ways)));
				}}
				onUnread={tell}
			>
				{fileWords.open}
			</FileButton>
			{wrong !== null && (
				<Notice kind="wrong">
					<p role="alert">{wrong}</p>
				</Notice>
			)}
		</>
	);
}
