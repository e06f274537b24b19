import { isInputError } from '../../../shared/error/index.ts';
import { planFromSheet } from '../../../shared/plan/index.ts';
import { asMeant } from '../../../shared/sheet/index.ts';
import { toSheet } from '../../../sim/rig/index.ts';
import type { BrowserStore } from '../../storage/index.ts';
import { playInStretches, readText, textKept } from '../rig/index.ts';
import type { PlanReading } from './reading.ts';

/** The bench that is kept on the device, as a plan; null where there is none. */
export async function planOfBench(store: BrowserStore): Promise<PlanReading | null> {
	const text = textKept(store);
	if (text === null) return null;
	const found = await readText(text);
	if (found.is !== 'bench') return found;
	try {
		const { sheet, log } = found.kept;
		return { is: 'plan', plan: planFromSheet(asMeant(toSheet(await playInStretches(sheet, log)), sheet)) };
	} catch (error) {
		if (!isInputError(error)) throw error;
		return { is: 'damaged' };
	}
}
