import type { JSX } from 'preact';
import type { OptionView } from '../../view.ts';
import { toggled } from '../typed.ts';

interface Props {
	/** For the browser's own grouping. */
	name: string;
	/** Id of what asks. */
	labelledby: string;
	options: readonly OptionView[];
	many: boolean;
	chosen: readonly string[];
	disabled: boolean;
	onChange: (chosen: readonly string[]) => void;
}

/** One of several, or several of many: the browser's own radios and checkboxes, in rows a thumb can hit. */
export function Pick({ name, labelledby, options, many, chosen, disabled, onChange }: Props): JSX.Element {
	const all = options.map(({ id }) => id);
	return (
		<fieldset class="sit-options" aria-labelledby={labelledby}>
			{options.map(({ id, text }) => (
				<label key={id} class="sit-option">
					<input
						type={many ? 'checkbox' : 'radio'}
						name={name}
						value={id}
						checked={chosen.includes(id)}
						disabled={disabled}
						onChange={() => onChange(many ? toggled(all, chosen, id) : [id])}
					/>
					<span>{text}</span>
				</label>
			))}
		</fieldset>
	);
}
