import type { JSX } from 'preact';
import { ownWords as words } from '#words/stock/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import { useOwnFixtures } from '../stock/index.ts';
import { Choices } from './Choices.tsx';

interface Props {
	onChosen: (profile: Profile) => void;
	onTrouble: (words: string | null) => void;
}

/** The crew's own fixtures, before the house's. */
export default function OwnChoices({ onChosen, onTrouble }: Props): JSX.Element {
	const own = useOwnFixtures();
	return (
		<Choices
			choices={own.map(({ id, name }) => ({ id, name, more: `${words.from} ${words.standIn}` }))}
			onChoose={async (id) => {
				const made = await own.find((fixture) => fixture.id === id)?.profile();
				if (!made) return;
				onTrouble('wrong' in made ? made.wrong : null);
				if ('profile' in made) onChosen(made.profile);
			}}
		/>
	);
}
