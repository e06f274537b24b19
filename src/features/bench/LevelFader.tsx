import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { deskWords } from '#words/bench/index.ts';
import { formatLevel, middleOf, parseLevel } from '../../../shared/dmx/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import { errorTextLater } from '../../wording/index.ts';
import type { Fader } from './desk.ts';

interface EntryProps {
	/** What the level belongs to, for those who do not see where it stands. */
	label: string;
	slider: string;
	level: number;
	onType: (level: number) => void;
	onSlide: (level: number) => void;
	onRest: () => void;
}

/** One level: typed as value, percent or hexadecimal, or slid; shown as value and percent together. */
export function LevelEntry({ label, slider, level, onType, onSlide, onRest }: EntryProps): JSX.Element {
	const id = useId();
	const [typed, type] = useState<string | null>(null);
	const [wrong, mark] = useState('');
	const take = () => {
		if (typed === null) return;
		try {
			const value = parseLevel(typed);
			type(null);
			mark('');
			if (value !== level) onType(value);
		} catch (error) {
			if (!isInputError(error)) throw error;
			void errorTextLater(error).then(mark);
		}
	};
	return (
		<div class="entry">
			<input
				class="entry-typed"
				aria-label={label}
				aria-invalid={wrong !== ''}
				{...(wrong === '' ? {} : { 'aria-describedby': id })}
				autoComplete="off"
				value={typed ?? formatLevel(level)}
				onFocus={(event) => event.currentTarget.select()}
				onInput={(event) => type(event.currentTarget.value)}
				onBlur={take}
				onKeyDown={(event) => {
					if (event.key === 'Enter') take();
					if (event.key === 'Escape') {
						type(null);
						mark('');
					}
				}}
			/>
			<input
				class="entry-slider"
				type="range"
				min="0"
				max="255"
				aria-label={slider}
				aria-valuetext={formatLevel(level)}
				value={level}
				onInput={(event) => onSlide(event.currentTarget.valueAsNumber)}
				onChange={onRest}
			/>
			{wrong === '' ? null : (
				<p class="field-error" id={id}>
					{wrong}
				</p>
			)}
		</div>
	);
}

interface Props extends Pick<EntryProps, 'onType' | 'onSlide' | 'onRest'> {
	fader: Fader;
}

/** One strip: its slot, its name, its level, and for a function slot what the level means. */
export function LevelFader({ fader, ...acts }: Props): JSX.Element {
	const { slot, fine, level, bands, band } = fader;
	const name = fine ? deskWords.fine(fader.name) : fader.name;
	return (
		<li class="strip">
			<span class="strip-slot value">{slot}</span>
			<span class="strip-name">{name}</span>
			<LevelEntry {...acts} level={level} label={deskWords.level(name, slot)} slider={deskWords.slider(name, slot)} />
			{bands.length > 0 && !fine && (
				<select
					class="strip-band"
					aria-label={deskWords.band(name, slot)}
					value={band?.id ?? ''}
					onChange={(event) => {
						const chosen = bands.find(({ id }) => id === event.currentTarget.value);
						if (chosen) acts.onType(middleOf(chosen));
					}}
				>
					{bands.map(({ id, name: words, from, to }) => (
						<option key={id} value={id}>
							{deskWords.bandOption(words, from, to)}
						</option>
					))}
				</select>
			)}
		</li>
	);
}
