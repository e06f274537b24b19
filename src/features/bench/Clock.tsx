import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { clockWords as words } from '#words/bench/index.ts';
import { Toggle } from '../../ui/index.ts';
import { SPEEDS, useRig } from '../rig/index.ts';
import { timeText } from './log.ts';
import { useBench } from './view.ts';

/** The bench's clock: how fast it runs, or that it stands. */
export default function Clock(): JSX.Element {
	const { store, onFrame } = useBench();
	useRig(store);
	const face = useRef<HTMLElement>(null);
	useEffect(
		() =>
			onFrame(() => {
				const text = timeText(store.rig.now);
				if (face.current && face.current.textContent !== text) face.current.textContent = text;
				// at the next second; a clock run fast is read no faster than ten times in one
				return store.running ? Math.max(100, (1000 - (store.rig.now % 1000)) / store.speed) : undefined;
			}),
		[store, onFrame],
	);
	return (
		<div class="clock">
			<p>
				<span class="value" ref={face} /> {words.since}
			</p>
			<fieldset class="slide">
				<legend>{words.speed}</legend>
				<div class="slide-track">
					{SPEEDS.map((speed) => (
						<label key={speed} class="slide-stop">
							<input
								type="radio"
								name="clock-speed"
								checked={store.speed === speed}
								onChange={() => store.setClock(store.running, speed)}
							/>
							<span>{words.speeds[speed]}</span>
						</label>
					))}
				</div>
			</fieldset>
			<Toggle
				label={words.label}
				words={words.runs}
				on={store.running}
				onChange={(runs) => store.setClock(runs, store.speed)}
			/>
			<p class="hint">{words.hint}</p>
		</div>
	);
}
