import { type Plan, planSheet } from '../../../shared/plan/index.ts';
import { type BrowserStore, deflateText, toBase64url } from '../../storage/index.ts';
import { type BesidePlan, planText, rigVersion } from './keep.ts';

/** Most fixtures that bench and finder take. @throws NotFetched */
export const mostOnBench = async (): Promise<number> => (await import('../rig/index.ts')).MOST.fixtures;

/** Whether a fragment says that it holds a plan. */
export const holdsPlan = (fragment: string): boolean => /^#?plan=/.test(fragment);

/** The fragment, with its `#`, that opens this plan. @param now ms since 1970 */
export async function planLink(plan: Plan, now: number, beside: BesidePlan = {}): Promise<string> {
	return `#plan=${rigVersion(plan, beside.before)}.${toBase64url(await deflateText(planText(plan, now, beside)))}`;
}

/** The address of the bench with this rig on it. @throws InputError `rig-plan.universes`, NotFetched */
export async function benchAddress(plan: Plan): Promise<string> {
	const { linkOf } = await import('../rig/index.ts');
	return `/bench/${await linkOf({ sheet: planSheet(plan), log: [] })}`;
}

/** Has the finder begin on a fixture of this rig. @param id the rig's id on the device @returns whether it will @throws InputError `rig-plan.universes`, NotFetched */
export async function finderOn(
	plan: Plan,
	id: string,
	row: string,
	store: BrowserStore,
	now: number,
): Promise<boolean> {
	const { beginOn } = await import('../finder/index.ts');
	return beginOn(store, planSheet(plan), row, id, now);
}
