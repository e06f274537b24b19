import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { layOutWords } from '#words/bench/index.ts';
import { ownWords as words } from '#words/stock/index.ts';
import { Button } from '../../ui/index.ts';
import { type RigStore, withFixture } from '../rig/index.ts';
import { type OwnFixture, useOwnFixtures } from '../stock/index.ts';

/** The crew's own fixtures, to be set down before the house's; and the way to where they are made. */
export function OwnFixtures({ store }: { store: RigStore }): JSX.Element {
	const own = useOwnFixtures();
	const [wrong, tell] = useState<string | null>(null);
	const add = async (chosen: OwnFixture) => {
		const made = await chosen.profile();
		if ('profile' in made) {
			const { profile } = made;
			store.edit((before) => withFixture(before, profile, layOutWords.kinds[profile.shape]));
		}
		tell('wrong' in made ? made.wrong : null);
	};
	return (
		<>
			{wrong !== null && <p role="alert">{wrong}</p>}
			<ul class="presets">
				{own.map((fixture) => (
					<li key={fixture.id}>
						<Button onClick={() => add(fixture)}>{layOutWords.addOne(fixture.name)}</Button>
						<p>{fixture.about}</p>
					</li>
				))}
				<li>
					<a href={words.href}>{words.toStock}</a>
				</li>
			</ul>
		</>
	);
}
