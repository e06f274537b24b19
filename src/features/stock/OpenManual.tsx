import type { JSX } from 'preact';
import { manualWords as words } from '#words/stock/index.ts';
import { FileButton } from '../../ui/index.ts';

interface Props {
	/** Reads it, and says so itself where it can't. */
	onFile: (file: File) => void;
}

/** The way to a manual's file. */
export function OpenManual({ onFile }: Props): JSX.Element {
	return (
		<div class="manual-open">
			<FileButton name={words.name} accept="application/pdf,.pdf" onFile={onFile}>
				{words.open}
			</FileButton>
			<p class="field-hint">{words.openHint(words.size)}</p>
		</div>
	);
}
