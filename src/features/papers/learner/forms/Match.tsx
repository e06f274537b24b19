import type { JSX } from 'preact';
import { sitWords } from '#words/papers/index.ts';
import type { OptionView } from '../../view.ts';

interface Props {
	name: string;
	labelledby: string;
	left: readonly OptionView[];
	right: readonly OptionView[];
	pairs: Readonly<Record<string, string>>;
	disabled: boolean;
	onChange: (pairs: Readonly<Record<string, string>>) => void;
}

/** Each on the left with a list to choose its right one from. */
export function Match({ name, labelledby, left, right, pairs, disabled, onChange }: Props): JSX.Element {
	return (
		<fieldset class="sit-match" aria-labelledby={labelledby}>
			{left.map(({ id, text }) => (
				<div key={id} class="sit-pair">
					<label for={`${name}-${id}`}>{text}</label>
					<select
						id={`${name}-${id}`}
						disabled={disabled}
						value={pairs[id] ?? ''}
						onChange={({ currentTarget: { value } }) => {
							const { [id]: _, ...rest } = pairs;
							onChange(value === '' ? rest : { ...rest, [id]: value });
						}}
					>
						<option value="" selected={pairs[id] === undefined}>
							{sitWords.choose}
						</option>
						{right.map((option) => (
							<option key={option.id} value={option.id} selected={pairs[id] === option.id}>
								{option.text}
							</option>
						))}
					</select>
				</div>
			))}
		</fieldset>
	);
}
