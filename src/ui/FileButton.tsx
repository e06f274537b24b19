import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { partWords } from '#words/ui/index.ts';
import { Button } from './Button.tsx';

export interface FileButtonProps {
	/** What the button says. */
	children: string;
	/** What it is called among the page's fields, where the button says too little. */
	name?: string;
	/** Which files the device offers; any where left out, since some phones know no kind for a rare ending and would grey it out. */
	accept?: string;
	/** Takes the file, and may read it. */
	onFile: (file: File) => void | Promise<void>;
	/** Told what to do where the device doesn't hand the file over, such as one that stays in a cloud; nothing where `onFile` says so itself. */
	onUnread?: (sentence: string) => void;
}

/** So a browser says that a file has gone, or may not be read. */
const isUnread = (error: unknown): boolean =>
	error instanceof DOMException &&
	['NotFoundError', 'NotReadableError', 'NotAllowedError', 'SecurityError'].includes(error.name);

/** A button to choose a file by. The same file may be chosen again. */
export function FileButton({ children, name = children, accept, onFile, onUnread }: FileButtonProps): JSX.Element {
	const input = useRef<HTMLInputElement>(null);
	return (
		<>
			<Button onClick={() => input.current?.click()}>{children}</Button>
			<input
				ref={input}
				type="file"
				accept={accept}
				aria-label={name}
				hidden
				onChange={async ({ currentTarget: chosen }) => {
					const [file] = chosen.files ?? [];
					// at once: the same one may be chosen while it is still read
					chosen.value = '';
					try {
						if (file) await onFile(file);
					} catch (error) {
						if (!isUnread(error)) throw error;
						onUnread?.(partWords.unread);
					}
				}}
			/>
		</>
	);
}
