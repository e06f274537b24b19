import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { trainerWords } from '#words/papers/index.ts';
import { OWN_MOST, type PaperRecipe } from '../../../../shared/paper/index.ts';
import { useOwnFixtures } from '../../stock/index.ts';
import { Chips } from './Chips.tsx';
import { withOrWithout } from './draft.ts';

type Own = PaperRecipe['own'];

interface Props {
	/** Those that the quiz is on. */
	own: Own;
	onOwn: (own: Own) => void;
}

/** The crew's own fixtures, before the house's. One that is picked goes with the quiz as it is now, whatever is changed later. */
export default function OwnChips({ own, onOwn }: Props): JSX.Element | null {
	const entries = useOwnFixtures();
	/** Profiles of entries as they are now, by entry; null for one that has none yet. */
	const [made, make] = useState<ReadonlyMap<string, Own[number] | null>>(new Map());
	const [wrong, tell] = useState<string | null>(null);
	useEffect(() => {
		// which of them the quiz is on already: only their profiles tell
		if (entries.length === 0) return;
		void Promise.all(entries.map(async (entry) => [entry.id, await entry.profile()] as const)).then((all) =>
			make(new Map(all.map(([id, each]) => [id, 'profile' in each ? each.profile : null]))),
		);
	}, [entries]);
	const now = useRef(own);
	now.current = own;
	const picked = own.map(({ id }) => id);
	const options = [
		...own.map(({ id, name }) => ({ id, name })),
		...entries
			.filter(({ id }) => own.length === 0 || (made.has(id) && !picked.includes(made.get(id)?.id ?? '')))
			.map(({ id, name }) => ({ id, name, off: own.length >= OWN_MOST })),
	];
	const pick = async (id: string) => {
		tell(null);
		const there = own.find((profile) => profile.id === id);
		if (there) return onOwn(withOrWithout(own, there));
		const found = await entries.find((entry) => entry.id === id)?.profile();
		if (!found) return;
		if ('wrong' in found) return tell(found.wrong);
		make((before) => new Map(before).set(id, found.profile));
		// others may have been picked meanwhile, or this one twice
		const { current } = now;
		if (current.length >= OWN_MOST || current.some((profile) => profile.id === found.profile.id)) return;
		onOwn([...current, found.profile]);
	};
	if (options.length === 0) return null;
	return (
		<>
			<Chips
				legend={trainerWords.ownFixtures}
				hint={own.length > 0 ? trainerWords.ownPicked : trainerWords.ownHint}
				many
				options={options}
				chosen={picked}
				onPick={(id) => void pick(id)}
			/>
			{wrong !== null && (
				<p class="field-error" role="alert">
					{wrong}
				</p>
			)}
		</>
	);
}
