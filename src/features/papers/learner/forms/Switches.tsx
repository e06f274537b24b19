import type { JSX } from 'preact';
import { sitWords } from '#words/papers/index.ts';

interface Props {
	labelledby: string;
	count: number;
	/** Numbers of those that are up, from 1. */
	up: readonly number[];
	disabled: boolean;
	onChange: (up: readonly number[]) => void;
}

/** Small switches made large, each up or down, its state in words under it. */
export function Switches({ labelledby, count, up, disabled, onChange }: Props): JSX.Element {
	const all = Array.from({ length: count }, (_, i) => i + 1);
	return (
		<fieldset class="sit-switches" aria-labelledby={labelledby}>
			{all.map((n) => {
				const isUp = up.includes(n);
				return (
					<button
						key={n}
						type="button"
						role="switch"
						class="sit-switch"
						aria-checked={isUp}
						aria-label={sitWords.switchName(n)}
						disabled={disabled}
						onClick={() => onChange(all.filter((each) => (each === n ? !isUp : up.includes(each))))}
					>
						<span class="sit-switch-slot" aria-hidden="true">
							<span class="sit-switch-knob" />
						</span>
						<span class="sit-switch-n" aria-hidden="true">
							{n}
						</span>
						<span class="sit-switch-state" aria-hidden="true">
							{isUp ? sitWords.switchUp : sitWords.switchDown}
						</span>
					</button>
				);
			})}
		</fieldset>
	);
}
