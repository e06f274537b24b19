import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { stockWords as words } from '#words/stock/index.ts';
import { partWords } from '#words/ui/index.ts';
import { ENTRY_LIMITS, FEEDS, SHAPES, type StockEntry } from '../../../shared/stock/index.ts';
import { Field, readNumber } from '../../ui/index.ts';

type LabelOf = Pick<StockEntry, keyof typeof ENTRY_LIMITS | 'shape' | 'feed' | 'link'>;

interface Props {
	entry: LabelOf;
	onChange: (part: Partial<LabelOf>) => void;
	/** What is said of a box left empty. */
	hint?: string;
}

/** Light and power, as the label has them; what is left empty is assumed. */
export function Label({ entry, onChange, hint = words.lightHint }: Props): JSX.Element {
	const number = (key: keyof typeof ENTRY_LIMITS) => (
		<NumberBox
			label={words[key]}
			value={entry[key]}
			limits={ENTRY_LIMITS[key]}
			onValue={(value) => onChange({ [key]: value })}
		/>
	);
	return (
		<fieldset class="stock-label">
			<legend>{words.light}</legend>
			<p class="field-hint">{hint}</p>
			<div class="stock-boxes">
				<Choice
					label={words.shape}
					value={entry.shape}
					options={SHAPES.map((shape) => [shape, words.shapes[shape]])}
					onPick={(shape) => onChange({ shape: shape === 'bar' ? 'bar' : 'wash' })}
				/>
				{number('beam')}
				{number('watts')}
				{number('lumens')}
				<Choice
					label={words.feed}
					value={entry.feed ?? ''}
					options={[['', words.feeds.unknown], ...FEEDS.map((feed) => [feed, words.feeds[feed]] as const)]}
					onPick={(picked) => onChange({ feed: FEEDS.find((feed) => feed === picked) ?? null })}
				/>
				{entry.feed !== 'mains' && number('wattHours')}
				{entry.feed !== 'battery' && (
					<Choice
						label={words.link}
						value={entry.link === null ? '' : String(entry.link)}
						options={[
							['', words.links.unknown],
							['true', words.links.yes],
							['false', words.links.no],
						]}
						onPick={(picked) => onChange({ link: picked === '' ? null : picked === 'true' })}
					/>
				)}
			</div>
		</fieldset>
	);
}

interface ChoiceProps {
	label: string;
	value: string;
	options: readonly (readonly [value: string, words: string])[];
	onPick: (value: string) => void;
}

function Choice({ label, value, options, onPick }: ChoiceProps): JSX.Element {
	const id = useId();
	return (
		<div class="field">
			<label for={id}>{label}</label>
			<select id={id} value={value} onChange={(event) => onPick(event.currentTarget.value)}>
				{options.map(([each, said]) => (
					<option key={each} value={each}>
						{said}
					</option>
				))}
			</select>
		</div>
	);
}

interface NumberProps {
	label: string;
	value: number | null;
	limits: readonly [least: number, most: number];
	onValue: (value: number | null) => void;
}

/** A number or nothing; what is no number stays in its box with a sentence, and changes nothing. */
function NumberBox({ label, value, limits: [least, most], onValue }: NumberProps): JSX.Element {
	const [typed, type] = useState<string | null>(null);
	const error =
		typed === null
			? undefined
			: readNumber(typed, least, most) === 'grouped'
				? partWords.grouped
				: words.notNumber(least, most);
	const shown = typed ?? (value === null ? '' : String(value));
	return (
		<Field
			label={label}
			inputMode="decimal"
			size={8}
			value={shown}
			error={error}
			onInput={(event) => {
				const text = event.currentTarget.value;
				const number = text.trim() === '' ? null : readNumber(text, least, most);
				if (typeof number === 'string') return type(text);
				onValue(number);
				type(null);
			}}
		/>
	);
}
