import type { JSX } from 'preact';
import type { Profile } from '../../../shared/profile/index.ts';
import { useOwnFixtures } from '../stock/index.ts';

interface Props {
	onChosen: (profile: Profile) => void;
	onTrouble: (words: string | null) => void;
}

/** The crew's own fixtures, before the house's. */
export default function OwnChoices({ onChosen, onTrouble }: Props): JSX.Element {
	return (
		<>
			{useOwnFixtures().map((fixture) => (
				<button
					key={fixture.id}
					type="button"
					class="rig-choice"
					onClick={async () => {
						const made = await fixture.profile();
						if ('wrong' in made) onTrouble(made.wrong);
						else onChosen(made.profile);
					}}
				>
					<strong>{fixture.name}</strong>
					<span>{fixture.about}</span>
				</button>
			))}
		</>
	);
}
