import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { layOutWords } from '#words/bench/index.ts';
import { stockWords as words } from '#words/stock/index.ts';
import type { StockEntry } from '../../../shared/stock/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { Button } from '../../ui/index.ts';
import { type RigStore, withFixture } from '../rig/index.ts';
import { inOrder, loadMaker, nameOf, openStock } from '../stock/index.ts';

/** The crew's own fixtures, to be set down before the house's; and the way to where they are made. */
export function OwnFixtures({ store }: { store: RigStore }): JSX.Element {
	const [entries, set] = useState<readonly StockEntry[]>([]);
	const [wrong, tell] = useState<string | null>(null);
	useEffect(() => {
		openStock(DEVICE).then(({ kept }) => set(inOrder(kept)));
	}, []);
	const add = async (entry: StockEntry) => {
		try {
			const { profile } = (await loadMaker()).fixtureOf(entry);
			if (profile) store.edit((before) => withFixture(before, profile, layOutWords.kinds[profile.shape]));
			tell(profile ? null : words.fixOf(nameOf(entry)));
		} catch {
			tell(words.putFailed);
		}
	};
	return (
		<>
			{wrong !== null && <p role="alert">{wrong}</p>}
			<ul class="presets">
				{entries.map((entry) => (
					<li key={entry.id}>
						<Button onClick={() => add(entry)}>{layOutWords.addOne(nameOf(entry))}</Button>
						<p>
							{words.own} {words.ownStandIn}
						</p>
					</li>
				))}
				<li>
					<a href={words.href}>{words.toStock}</a>
				</li>
			</ul>
		</>
	);
}
