import type { JSX } from 'preact';
import { partWords } from '#words/ui/index.ts';

export interface ToggleProps {
	label: string;
	on: boolean;
	/** Its two states in words, off then on. */
	words?: readonly [off: string, on: string];
	onChange: (on: boolean) => void;
	disabled?: boolean;
}

/** A switch with its state in words beside it. */
export function Toggle({
	label,
	on,
	words = [partWords.off, partWords.on],
	onChange,
	disabled = false,
}: ToggleProps): JSX.Element {
	return (
		<button
			type="button"
			role="switch"
			class="toggle"
			aria-checked={on}
			disabled={disabled}
			onClick={() => onChange(!on)}
		>
			<span class="toggle-label">{label}</span>
			<span class="toggle-slot" aria-hidden="true">
				<span class="toggle-knob" />
			</span>
			<span class="toggle-state" aria-hidden="true">
				{words[on ? 1 : 0]}
			</span>
		</button>
	);
}
