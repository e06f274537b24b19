import type { JSX } from 'preact';
import { backWords } from '#words/bench/index.ts';
import type { DipPanel as Panel } from '../../../shared/profile/index.ts';
import type { Sight } from '../../../sim/rig/index.ts';
import { useBench } from './view.ts';

interface Props {
	fixture: string;
	name: string;
	panel: Panel;
	display: Extract<Sight['display'], { kind: 'switches' }>;
}

/** Ten switches, and the small slides beside them. */
export default function DipPanel({ fixture, name, panel, display }: Props): JSX.Element {
	const { store, can } = useBench();
	const off = !can('panel');
	return (
		<fieldset class="panel">
			<legend class="visually-hidden">{backWords.panel(name)}</legend>
			<fieldset class="switches">
				<legend class="visually-hidden">{backWords.switches}</legend>
				{display.up.map((up, i) => (
					<button
						key={i}
						type="button"
						role="switch"
						class="dip"
						data-buzz="done"
						disabled={off}
						aria-checked={up}
						aria-label={`${backWords.switchName(i + 1)}: ${up ? backWords.up : backWords.down}`}
						onClick={() => store.send({ type: 'switch.flip', fixture, switch: i + 1, up: !up })}
					>
						<span class="dip-slot" aria-hidden="true">
							<span class="dip-knob" />
						</span>
						<span aria-hidden="true">{i + 1}</span>
					</button>
				))}
			</fieldset>
			{panel.slides.map((slide) => {
				const at = display.slides.find(({ id }) => id === slide.id)?.position ?? 0;
				return (
					<fieldset key={slide.id} class="slide">
						<legend>{slide.title}</legend>
						<div class="slide-track">
							{slide.positions.map(({ label }, i) => (
								<label key={label} class="slide-stop">
									<input
										type="radio"
										disabled={off}
										name={`${fixture}-${slide.id}`}
										checked={i === at}
										onChange={() => store.send({ type: 'slide.move', fixture, slide: slide.id, to: i })}
									/>
									<span>{label}</span>
								</label>
							))}
						</div>
					</fieldset>
				);
			})}
		</fieldset>
	);
}
