import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';

export interface DialogProps {
	open: boolean;
	/** Called when it is closed in any way: its button, Escape, or a press beside it. */
	onClose: () => void;
	title: string;
	/** The words on the button that closes it. */
	closeWords: string;
	children: ComponentChildren;
}

/** A modal dialog on the browser's own `<dialog>`: it holds the focus, and gives it back where it came from. */
export function Dialog({ open, onClose, title, closeWords, children }: DialogProps): JSX.Element {
	const box = useRef<HTMLDialogElement>(null);
	const heading = useRef<HTMLHeadingElement>(null);
	const id = useId();
	useEffect(() => {
		if (open && !box.current?.open) {
			box.current?.showModal();
			// reading starts at the top: the first control may stand below what shows
			heading.current?.focus();
		}
		if (!open && box.current?.open) box.current.close();
	}, [open]);
	return (
		// biome-ignore lint/a11y/useKeyWithClickEvents: a press beside the box closes it; by keyboard Escape does
		<dialog
			ref={box}
			class="dialog"
			aria-labelledby={id}
			onClose={onClose}
			onClick={(event) => {
				if (event.target === box.current) box.current?.close();
			}}
		>
			<div class="dialog-sheet">
				<h2 class="title title-2" id={id} ref={heading} tabIndex={-1}>
					<span>{title}</span>
				</h2>
				{children}
				<div class="dialog-end">
					<button type="button" class="button button-main" onClick={() => box.current?.close()}>
						{closeWords}
					</button>
				</div>
			</div>
		</dialog>
	);
}
