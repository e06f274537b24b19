import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { partWords } from '#words/ui/index.ts';
import { Field, readNumber } from '../../ui/index.ts';

interface Props {
	label: string;
	value: number;
	/** Least and most, both allowed. */
	from: number;
	to: number;
	/** Fractions are taken too. */
	broken?: boolean;
	unit?: string;
	/** What is said of anything else. */
	bad: string;
	onChange: (value: number) => void;
}

/** A number to type: taken on Enter or when the box is left; nonsense stays where it is, with a sentence. */
export function NumberField({ label, value, from, to, broken = false, unit, bad, onChange }: Props): JSX.Element {
	const [typed, type] = useState<string | null>(null);
	const [wrong, mark] = useState<string | undefined>(undefined);
	const take = () => {
		if (typed === null) return;
		const number = readNumber(typed, from, to, !broken);
		if (typeof number === 'string') return mark(number === 'grouped' ? partWords.grouped : bad);
		mark(undefined);
		type(null);
		if (number !== value) onChange(number);
	};
	return (
		<Field
			label={label}
			value={typed ?? `${value}`}
			inputMode={broken ? 'decimal' : 'numeric'}
			autoComplete="off"
			size={6}
			{...(unit === undefined ? {} : { unit })}
			error={wrong}
			onInput={(event) => type(event.currentTarget.value)}
			onBlur={take}
			onKeyDown={(event) => {
				if (event.key === 'Enter') take();
				if (event.key === 'Escape') {
					type(null);
					mark(undefined);
				}
			}}
		/>
	);
}
