import type { JSX } from 'preact';
import { useId } from 'preact/hooks';

interface Props<T extends string> {
	legend: string;
	hint?: string;
	/** One at most, or several. */
	many: boolean;
	options: readonly { readonly id: T; readonly name: string; readonly note?: string; readonly off?: boolean }[];
	chosen: readonly T[];
	onPick: (id: T) => void;
}

/** Things to pick from, side by side: the browser's own boxes, made large enough for a thumb. */
export function Chips<T extends string>({ legend, hint, many, options, chosen, onPick }: Props<T>): JSX.Element {
	const id = useId();
	return (
		<fieldset class="chips" {...(hint === undefined ? {} : { 'aria-describedby': `${id}-hint` })}>
			<legend>{legend}</legend>
			{hint !== undefined && (
				<p class="field-hint" id={`${id}-hint`}>
					{hint}
				</p>
			)}
			<div class="chips-row">
				{options.map((option) => (
					<label key={option.id} class="chip">
						<input
							type={many ? 'checkbox' : 'radio'}
							name={`${id}-chips`}
							value={option.id}
							checked={chosen.includes(option.id)}
							disabled={option.off ?? false}
							onChange={() => onPick(option.id)}
						/>
						<span>
							{option.name}
							{option.note !== undefined && <small> {option.note}</small>}
						</span>
					</label>
				))}
			</div>
		</fieldset>
	);
}
