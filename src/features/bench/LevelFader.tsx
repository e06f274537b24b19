import type { JSX } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { deskWords } from '#words/bench/index.ts';
import { bandOf, formatLevel, middleOf, parseLevel } from '../../../shared/dmx/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import { errorTextLater } from '../../wording/index.ts';
import { type Fader, levelAt } from './desk.ts';
import { useSeen } from './view.ts';

interface EntryProps {
	/** What the level belongs to, for those who do not see where it stands. */
	label: string;
	slider: string;
	level: number;
	onType: (level: number) => void;
	/** As it is slid, once a frame at most: a finger moves more often than a screen can show. */
	onSlide: (level: number) => void;
	onRest: () => void;
}

/** One level: typed as value, percent or hexadecimal, or slid; shown as value and percent together. */
export function LevelEntry({ label, slider, level, onType, onSlide, onRest }: EntryProps): JSX.Element {
	const id = useId();
	const [typed, type] = useState<string | null>(null);
	const [wrong, mark] = useState('');
	const slid = useOnceAFrame(onSlide);
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
				onInput={(event) => slid.put(event.currentTarget.valueAsNumber)}
				onChange={() => {
					slid.flush();
					onRest();
				}}
			/>
			{wrong === '' ? null : (
				<p class="field-error" id={id}>
					{wrong}
				</p>
			)}
		</div>
	);
}

/** Hands the last of what came in on with the next frame, or at once where it is flushed. */
function useOnceAFrame(act: (value: number) => void): { put(value: number): void; flush(): void } {
	const latest = useRef(act);
	latest.current = act;
	const [slid] = useState(() => {
		let frame = 0;
		let value: number | null = null;
		const flush = () => {
			cancelAnimationFrame(frame);
			frame = 0;
			if (value !== null) latest.current(value);
			value = null;
		};
		return {
			put(next: number) {
				value = next;
				if (frame === 0) frame = requestAnimationFrame(flush);
			},
			flush,
		};
	});
	useEffect(() => slid.flush, []);
	return slid;
}

interface Props extends Pick<EntryProps, 'onType' | 'onSlide' | 'onRest'> {
	fader: Fader;
	universe: number;
}

/** One fader: its slot, its name, its level, and for a function slot what the level means. */
export function LevelFader({ fader, universe, ...acts }: Props): JSX.Element {
	const { slot, fine, bands } = fader;
	const [level] = useSeen(({ store }) => [levelAt(store.rig, universe, slot)]);
	const band = bandOf(bands, level);
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
