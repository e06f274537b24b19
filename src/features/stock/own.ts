import { useEffect, useState } from 'preact/hooks';
import { ownWords as words } from '#words/stock/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import type { OpenRows, StockEntry } from '../../../shared/stock/index.ts';
import { DEVICE, followKept } from '../../storage/index.ts';
import { openStock } from './keep.ts';
import { inOrder } from './stock.ts';

/** A fixture of the crew's own, as it is offered wherever fixtures are chosen. */
export interface OwnFixture {
	/** Of its entry: the id of its profile is another, and changes with all that is in it. */
	readonly id: string;
	readonly name: string;
	/** Where it is from, and that its panel is a stand-in. */
	readonly about: string;
	/** Its profile, made when it is chosen; or a sentence where it cannot be. */
	profile(): Promise<{ readonly profile: Profile } | { readonly wrong: string }>;
	/** The rows of its charts that nobody has held against the manual yet: to be asked once it has a profile. */
	openRows(): Promise<OpenRows>;
}

/** What an entry is called, with a name for one that has none. */
export const nameOf = ({ name }: Pick<StockEntry, 'name'>): string => (name.trim() === '' ? words.unnamed : name);

/** An entry as it is offered. */
export const ownFixture = (entry: StockEntry): OwnFixture => ({
	id: entry.id,
	name: nameOf(entry),
	// whether a panel that was written down can be used is known once it is made: the bench says so then
	about: entry.panel ? words.from : `${words.from} ${words.standIn}`,
	async profile() {
		try {
			const { profile } = (await import('./maker.ts')).fixtureOf(entry);
			return profile ? { profile } : { wrong: words.notReady(nameOf(entry)) };
		} catch {
			return { wrong: words.failed };
		}
	},
	openRows: async () => (await import('./maker.ts')).openRowsOf(entry),
});

/** The crew's own fixtures, the latest first: the one list behind every place where fixtures are chosen. */
export const ownFixtures = async (): Promise<OwnFixture[]> => inOrder((await openStock(DEVICE)).kept).map(ownFixture);

/** The same, followed over every tab. */
export function useOwnFixtures(): readonly OwnFixture[] {
	const [own, set] = useState<readonly OwnFixture[]>([]);
	useEffect(() => {
		const look = () => void ownFixtures().then(set);
		look();
		return followKept(look);
	}, []);
	return own;
}
