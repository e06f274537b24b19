import type { RigSheet } from '../../../shared/sheet/index.ts';
import type { PlacedFault } from '../../../sim/event/index.ts';
import { faultFacts } from '../../wording/index.ts';
import type { OtherThanPlan } from './walk.ts';

/**
 * The start address and mode that one fault comes down to, where either is another than the sheet has for that fixture: then the
 * light, or the desk with its start address or universe, may be right and the sheet wrong. Read off the events that bring the fault about; null where it is no such fault.
 */
export function otherThanSheet(sheet: RigSheet, faults: readonly PlacedFault[]): OtherThanPlan | null {
	const [placed] = faults;
	if (faults.length !== 1 || !placed) return null;
	const facts = faultFacts(sheet, placed);
	const number = (name: string): number | null => (typeof facts[name] === 'number' ? facts[name] : null);
	const text = (name: string): string => (typeof facts[name] === 'string' ? facts[name] : '');
	const fixture = placed.place;
	if (typeof facts['isPatchAddress'] === 'number') {
		const [universe, address, mode] = [number('isPatchUniverse'), number('isPatchAddress'), text('isPatchMode')];
		const isElsewhere = universe !== number('patchUniverse') || address !== number('patchAddress');
		// a mode that the desk has wrong is put right at the desk: the light still is in the plan's
		if (address === null || mode === '' || mode !== text('patchMode') || !isElsewhere) return null;
		return { fixture, by: 'desk', universe, address, mode };
	}
	const address = number('isAddress');
	const mode = text('isMode');
	const isSame = address === number('meantAddress') && mode === text('meantMode');
	// one that no longer listens to the desk is no matter of where it listens
	const listens = text('isWork') === text('meantWork');
	if (address === null || mode === '' || isSame || !listens) return null;
	return { fixture, by: 'light', universe: null, address, mode };
}
