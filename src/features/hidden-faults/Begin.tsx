import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { bundledWords } from '#words/finder/index.ts';
import { hiddenWords } from '#words/hidden-faults/index.ts';
import { Button, Field, Toggle } from '../../ui/index.ts';
import { type DrillOf, SEEDS } from './view.ts';

const RIGS = Object.entries(bundledWords);
/** Two bays of work and no long wait: what most begin with. */
const FIRST = 'four-in-line';

interface Props {
	/** `seed` null for any. */
	onBegin: (want: Omit<DrillOf, 'seed'>, seed: number | null) => void;
}

/** Which rig, how many faults, and the number of the drill for those who share one. */
export function Begin({ onBegin }: Props): JSX.Element {
	const [rig, setRig] = useState<string>(FIRST);
	const [two, setTwo] = useState(false);
	const [digits, setDigits] = useState('');
	const [wrong, setWrong] = useState(false);
	const id = useId();
	const begin = (): void => {
		const text = digits.trim();
		const isGood = /^\d{0,10}$/.test(text) && Number(text) < SEEDS;
		setWrong(!isGood);
		if (isGood) onBegin({ rig, count: two ? 2 : 1 }, text === '' ? null : Number(text));
	};
	return (
		<form
			class="hidden-begin"
			onSubmit={(event) => {
				event.preventDefault();
				begin();
			}}
		>
			<p class="hidden-field">
				<label for={id}>{hiddenWords.rig}</label>
				<select id={id} value={rig} onChange={({ currentTarget }) => setRig(currentTarget.value)}>
					{RIGS.map(([each, { name }]) => (
						<option key={each} value={each} selected={each === rig}>
							{name}
						</option>
					))}
				</select>
			</p>
			<Toggle label={hiddenWords.two} on={two} onChange={setTwo} />
			<Field
				label={hiddenWords.seed}
				hint={hiddenWords.seedHint}
				inputMode="numeric"
				value={digits}
				error={wrong ? hiddenWords.seedWrong : undefined}
				onInput={({ currentTarget }) => setDigits(currentTarget.value)}
			/>
			<Button look="main" type="submit">
				{hiddenWords.begin}
			</Button>
		</form>
	);
}
