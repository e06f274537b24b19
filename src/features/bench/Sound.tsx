import type { JSX } from 'preact';
import { useEffect, useId, useState } from 'preact/hooks';
import { soundWords } from '#words/bench/index.ts';
import { Button, Toggle } from '../../ui/index.ts';
import { useRig } from '../rig/index.ts';
import { useBench } from './view.ts';

/** A beat: this loud, for this long, ms. */
const BEAT = { level: 1, ms: 120 } as const;
/** Steady beats: time between them, ms, and how many before it stops by itself, so that a log does not fill up unseen. */
const STEADY = { every: 500, count: 240 } as const;

/** What there is to hear in the hall. */
export default function Sound(): JSX.Element {
	const { store } = useBench();
	useRig(store);
	const id = useId();
	const [steady, setSteady] = useState(false);
	const { sound, units } = store.rig.gear;
	const percent = Math.round(sound * 100);

	const beat = () => {
		const { sound: before } = store.rig.gear;
		const quiet = before >= BEAT.level ? 0 : before;
		store.send({ type: 'sound.play', level: BEAT.level });
		window.setTimeout(() => store.send({ type: 'sound.play', level: quiet }), BEAT.ms);
	};
	useEffect(() => {
		if (!steady) return;
		let left: number = STEADY.count;
		const timer = window.setInterval(() => {
			if (document.hidden || !store.running) return;
			beat();
			left--;
			if (left === 0) setSteady(false);
		}, STEADY.every);
		return () => window.clearInterval(timer);
	}, [steady, store]);

	return (
		<div class="sound">
			{[...units.values()].every(({ profile }) => !profile.microphone) && <p>{soundWords.noMicrophones}</p>}
			<div class="field">
				<label for={id}>{soundWords.level}</label>
				<span class="field-box">
					<input
						id={id}
						class="entry-slider"
						type="range"
						min="0"
						max="100"
						value={percent}
						aria-valuetext={`${percent} %`}
						onInput={(event) => store.slide({ type: 'sound.play', level: event.currentTarget.valueAsNumber / 100 })}
						onChange={store.rest}
					/>
					<span class="field-unit sound-percent">{`${percent} %`}</span>
				</span>
			</div>
			<Button onClick={beat}>{soundWords.beat}</Button>
			<div>
				<Toggle label={soundWords.steady} on={steady} onChange={setSteady} />
				<p class="hint">{soundWords.steadyHint}</p>
			</div>
		</div>
	);
}
