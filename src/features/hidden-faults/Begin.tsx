import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { bundledWords } from '#words/finder/index.ts';
import { hiddenWords } from '#words/hidden-faults/index.ts';
import { Button, Field, Toggle } from '../../ui/index.ts';
import { type OwnFixture, useOwnFixtures } from '../stock/index.ts';
import { type DrillOf, OWN, SEEDS, UNSEEN } from './view.ts';

const RIGS = Object.entries(bundledWords);
/** Two bays of work and no long wait: what most begin with. */
const FIRST = 'four-in-line';

interface Props {
	/** `seed` null for any. */
	onBegin: (want: Omit<DrillOf, 'seed'>, seed: number | null) => void;
}

/** Which rig, how many faults, and the number of the drill for those who share one. */
export function Begin({ onBegin }: Props): JSX.Element {
	const own = useOwnFixtures();
	const [rig, setRig] = useState<string>(FIRST);
	const [two, setTwo] = useState(false);
	const [digits, setDigits] = useState('');
	const [wrong, setWrong] = useState(false);
	const [trouble, tell] = useState<string | null>(null);
	const id = useId();
	const begin = async (): Promise<void> => {
		const text = digits.trim();
		const isGood = /^\d{0,10}$/.test(text) && Number(text) < SEEDS;
		setWrong(!isGood);
		tell(null);
		if (!isGood) return;
		const found = await rigOf(rig, own).catch(() => ({ wrong: hiddenWords.unfetched }));
		if ('wrong' in found) tell(found.wrong);
		else onBegin({ ...found, count: two ? 2 : 1 }, text === '' ? null : Number(text));
	};
	return (
		<form
			class="hidden-begin"
			onSubmit={(event) => {
				event.preventDefault();
				void begin();
			}}
		>
			<p class="hidden-field">
				<label for={id}>{hiddenWords.rig}</label>
				<select id={id} value={rig} onChange={({ currentTarget }) => setRig(currentTarget.value)}>
					{own.length > 0 && (
						<optgroup label={hiddenWords.ownRigs}>
							{own.map(({ id: each, name }) => (
								<option key={each} value={each} selected={each === rig}>
									{hiddenWords.ownRig(name)}
								</option>
							))}
						</optgroup>
					)}
					<optgroup label={hiddenWords.madeRigs}>
						<option value={UNSEEN} selected={rig === UNSEEN}>
							{hiddenWords.unseenRig}
						</option>
					</optgroup>
					<optgroup label={hiddenWords.hallRigs}>
						{RIGS.map(([each, { name }]) => (
							<option key={each} value={each} selected={each === rig}>
								{name}
							</option>
						))}
					</optgroup>
				</select>
			</p>
			{trouble !== null && (
				<p class="field-error" role="alert">
					{trouble}
				</p>
			)}
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

/** The rig that was picked; of one's own fixture the whole fixture goes with it. */
async function rigOf(
	picked: string,
	own: readonly OwnFixture[],
): Promise<Pick<DrillOf, 'rig' | 'on'> | { readonly wrong: string }> {
	const entry = own.find(({ id }) => id === picked);
	if (!entry) return { rig: picked };
	const found = await entry.profile();
	if ('wrong' in found) return found;
	const { packProfile } = await import('../profile-link/index.ts');
	return { rig: OWN, on: await packProfile(found.profile) };
}
