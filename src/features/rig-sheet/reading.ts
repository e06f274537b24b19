import { isInputError } from '../../../shared/error/index.ts';
import { loadPlan, type Plan, type RigTicks, readTicks } from '../../../shared/plan/index.ts';
import { fromBase64url, inflateText, KEPT, MOST_READ, readRecord } from '../../storage/index.ts';

/** What a text was found to be. */
export type PlanReading =
	| {
			readonly is: 'plan';
			readonly plan: Plan;
			/** The rig's id where it was sent from. */
			readonly id?: string;
			readonly ticks?: RigTicks;
			/** The plan that sheets were printed from. */
			readonly before?: Plan;
	  }
	| { readonly is: 'newer' }
	| { readonly is: 'damaged' };

/** A plan as it is kept, saved or sent. @throws NotFetched */
export async function readPlanText(text: string): Promise<PlanReading> {
	const found = readRecord(text, KEPT.rigs);
	if (found.is !== 'record') return found;
	try {
		const { plan, id, ticks, before } = found.record;
		return {
			is: 'plan',
			plan: await loadPlan(plan),
			...(typeof id === 'string' && KEPT.rigs.names.test(id) ? { id } : {}),
			...(ticks === undefined ? {} : { ticks: readTicks(ticks) }),
			...(before === undefined ? {} : { before: await loadPlan(before) }),
		};
	} catch (error) {
		if (!isInputError(error)) throw error;
		return { is: 'damaged' };
	}
}

/** A plan out of a fragment that `planLink` wrote. @throws NotFetched */
export async function readPlanLink(fragment: string): Promise<PlanReading> {
	const [, version, packed = ''] = /^#?plan=(\d{1,6})\.([\w-]*)$/.exec(fragment) ?? [];
	if (version === undefined || packed.length > MOST_READ.link) return { is: 'damaged' };
	if (Number(version) > KEPT.rigs.version) return { is: 'newer' };
	const bytes = fromBase64url(packed);
	const text = bytes && (await inflateText(bytes, KEPT.rigs.bounds.characters));
	return text ? readPlanText(text) : { is: 'damaged' };
}
