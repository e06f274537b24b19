import type { RigSheet } from '../../../shared/sheet/index.ts';
import { type BrowserStore, KEPT, moveAside, textAt } from '../../storage/index.ts';
import { keepWalk } from './keep.ts';
import { ALLOWS_ALL, freshWalk } from './walk.ts';

/**
 * Has the finder's page begin with a fixture of this sheet when it is next opened. A walk that stands there is set aside.
 * @param plan id of the plan that the sheet is of, which is told what came of the walk
 * @param now ms since 1970
 * @returns false where the device keeps nothing
 */
export function beginOn(store: BrowserStore, sheet: RigSheet, fixture: string, plan: string, now: number): boolean {
	const { key } = KEPT.walk;
	const text = textAt(store, key);
	if (text !== null && !moveAside(store, { place: key, text, why: 'link', now })) return false;
	const walk = { ...freshWalk({ kind: 'sheet', sheet }, {}, now), fixture, plan };
	return keepWalk(store, { allows: ALLOWS_ALL, walk }) === 'kept';
}
