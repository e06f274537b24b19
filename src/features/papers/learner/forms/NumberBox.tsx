import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { sitWords } from '#words/papers/index.ts';
import type { NumberUnit } from '../../../../../shared/paper/index.ts';
import { Field } from '../../../../ui/index.ts';
import { readTyped, typedText } from '../typed.ts';

interface Props {
	ask: { readonly least: number; readonly most: number; readonly base: 10 | 16; readonly unit: NumberUnit };
	value: number | null;
	disabled: boolean;
	/** Null while what stands there is no number in range. */
	onChange: (value: number | null) => void;
}

/** A number to type, in base 10 or 16. What is wrong with it is said on leaving the box, not while typing. */
export function NumberBox({ ask, value, disabled, onChange }: Props): JSX.Element {
	const { base, least, most, unit } = ask;
	const [text, type] = useState(value === null ? '' : typedText(value, base));
	const [left, leave] = useState(false);
	const read = readTyped(text, base, least, most);
	const [from, to] = [typedText(least, base), typedText(most, base)];
	const error =
		left && read.is === 'wrong'
			? read.why === 'range'
				? sitWords.numberRange(from, to)
				: sitWords.numberWrong[base]
			: undefined;
	return (
		<div class="sit-number">
			<Field
				label={sitWords.numberLabel}
				hint={base === 10 ? sitWords.number(from, to) : sitWords.numberHex(from, to)}
				error={error}
				unit={sitWords.numberUnits[unit]}
				size={6}
				maxLength={12}
				inputMode={base === 10 ? 'numeric' : 'text'}
				autocomplete="off"
				spellcheck={false}
				value={text}
				disabled={disabled}
				onInput={(event) => {
					const typed = event.currentTarget.value;
					type(typed);
					leave(false);
					const next = readTyped(typed, base, least, most);
					onChange(next.is === 'number' ? next.value : null);
				}}
				onBlur={() => leave(true)}
			/>
		</div>
	);
}
