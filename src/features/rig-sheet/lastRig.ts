import type { Plan } from '../../../shared/plan/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { keptRigs, rigText } from './keep.ts';
import { readPlanText } from './reading.ts';

export interface LastRig {
	/** The rig's id on the device. */
	readonly id: string;
	readonly plan: Plan;
}

/** The rig changed last that can be read; null where there is none: its own page says what is wrong with one that can't be. @throws NotFetched */
export async function lastRig(): Promise<LastRig | null> {
	const [last] = keptRigs(DEVICE);
	const text = last && rigText(DEVICE, last.id);
	const found = text == null ? null : await readPlanText(text);
	return last && found?.is === 'plan' ? { id: last.id, plan: found.plan } : null;
}
