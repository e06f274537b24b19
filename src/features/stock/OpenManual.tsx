import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { manualWords as words } from '#words/stock/index.ts';
import { Button } from '../../ui/index.ts';

/** The way to a manual's file. */
export function OpenManual({ onFile }: { onFile: (file: File) => void }): JSX.Element {
	const file = useRef<HTMLInputElement>(null);
	return (
		<div class="manual-open">
			<Button onClick={() => file.current?.click()}>{words.open}</Button>
			<input
				ref={file}
				type="file"
				accept="application/pdf,.pdf"
				aria-label={words.name}
				hidden
				onChange={({ currentTarget: input }) => {
					const [chosen] = input.files ?? [];
					if (chosen) onFile(chosen);
					input.value = '';
				}}
			/>
			<p class="field-hint">{words.openHint(words.size)}</p>
		</div>
	);
}
