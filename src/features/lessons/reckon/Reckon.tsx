import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { calcWords as words } from '#words/lessons/index.ts';
import type { Kit, Picks, SliderValues } from './kit.ts';
import { type ReckonId, reckoners } from './sums.ts';

interface Props {
	id: ReckonId;
	kits: readonly Kit[];
}

/** Sliders, the sum with its numbers in it, and what it comes to. Without scripts it stands as a worked example. */
export function Reckon({ id, kits }: Props): JSX.Element {
	const { formulas, sliders, picks, reckon } = useMemo(() => reckoners[id](kits), [id, kits]);
	const [values, slide] = useState<SliderValues>(() =>
		Object.fromEntries(sliders.map((each) => [each.id, each.start])),
	);
	const [chosen, choose] = useState<Picks>(() =>
		Object.fromEntries(picks.map((each) => [each.id, each.options[0]?.value ?? ''])),
	);
	const slid = sliders.map((each) => ({ ...each, least: Math.max(each.least, each.leastFor?.(chosen) ?? each.least) }));
	const inReach: SliderValues = Object.fromEntries(
		slid.map(({ id: name, least }) => [name, Math.max(least, values[name] ?? least)]),
	);
	return (
		<section class="reckon" aria-labelledby={`reckon-${id}`}>
			<h3 id={`reckon-${id}`}>{words.title[id]}</h3>
			<div class="reckon-in">
				{picks.map(({ id: name, label, options }) => (
					<label key={name} class="reckon-pick">
						<span>{label}</span>
						<select
							value={chosen[name]}
							onChange={({ currentTarget: { value } }) => choose({ ...chosen, [name]: value })}
						>
							{options.map((option) => (
								<option key={option.value} value={option.value}>
									{option.words}
								</option>
							))}
						</select>
					</label>
				))}
				{slid.map(({ id: name, label, unit, least, most, step }) => (
					<label key={name} class="reckon-slider">
						<span>{label}</span>
						<span class="value" aria-hidden="true">{`${inReach[name]}${unit === '' ? '' : ` ${unit}`}`}</span>
						<input
							type="range"
							min={least}
							max={most}
							step={step}
							value={inReach[name]}
							aria-valuetext={`${inReach[name]} ${unit}`}
							onInput={({ currentTarget: { value } }) => slide({ ...values, [name]: Number(value) })}
						/>
					</label>
				))}
			</div>
			<p class="reckon-formula">
				<strong>{words.formula}</strong>
				{formulas.map((line) => (
					<code key={line}>{line}</code>
				))}
			</p>
			<dl class="reckon-out" aria-live="polite">
				{reckon(inReach, chosen).map(({ what, sum, comes, over = false }) => (
					<div key={what} data-over={over}>
						<dt>{what}</dt>
						<dd>
							<code>{sum} =</code> <strong>{comes}</strong>
						</dd>
					</div>
				))}
			</dl>
		</section>
	);
}
