import { drillWords, rigDrills, ownDrills as words } from '#words/drills/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import type { OwnAsked, RigAsked } from './link.ts';

/** What the address asks for: nothing yet, a task on a fixture or on a rig, or what cannot be read; `again` where the network may be the cause. */
export type Opened =
	| { readonly is: 'list' }
	| { readonly is: 'wait' }
	| { readonly is: 'wrong'; readonly sentence: string; readonly again: boolean }
	| ({ readonly is: 'task' } & OwnAsked)
	| ({ readonly is: 'rig' } & RigAsked);

/** Reads what an address asks for. What cannot be fetched is told apart from a link that is bad. @param load fetches what reads links */
export async function openAt(
	fragment: string,
	load: () => Promise<Pick<typeof import('./link.ts'), 'readOwnLink' | 'readRigTaskLink'>> = () => import('./link.ts'),
): Promise<Opened> {
	if (fragment === '' || fragment === '#') return { is: 'list' };
	const isRig = asksForRig(fragment);
	try {
		const { readOwnLink, readRigTaskLink } = await load();
		if (isRig) return { is: 'rig', ...(await readRigTaskLink(fragment)) };
		return { is: 'task', ...(await readOwnLink(fragment)) };
	} catch (error) {
		const isBad = isInputError(error);
		return { is: 'wrong', sentence: isBad ? (isRig ? rigDrills : words).failed : drillWords.failed, again: !isBad };
	}
}

/** Whether a fragment says that it holds a rig. */
const asksForRig = (fragment: string): boolean => /^#?seed=\d{1,16}&rig=/.test(fragment);
