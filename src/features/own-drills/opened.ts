import { drillWords, ownDrills as words } from '#words/drills/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import type { OwnAsked } from './link.ts';

/** What the address asks for: nothing yet, a fixture and a task, or what cannot be read; `again` where the network may be the cause. */
export type Opened =
	| { readonly is: 'list' }
	| { readonly is: 'wait' }
	| { readonly is: 'wrong'; readonly sentence: string; readonly again: boolean }
	| ({ readonly is: 'task' } & OwnAsked);

/** Reads what an address asks for. What cannot be fetched is told apart from a link that is bad. @param load fetches what reads links */
export async function openAt(
	fragment: string,
	load: () => Promise<Pick<typeof import('./link.ts'), 'readOwnLink'>> = () => import('./link.ts'),
): Promise<Opened> {
	if (fragment === '' || fragment === '#') return { is: 'list' };
	try {
		const { readOwnLink } = await load();
		return { is: 'task', ...(await readOwnLink(fragment)) };
	} catch (error) {
		const isBad = isInputError(error);
		return { is: 'wrong', sentence: isBad ? words.failed : drillWords.failed, again: !isBad };
	}
}
