import type { RigId } from '../../../../shared/sheet/index.ts';
import { faultOf } from '../../../../sim/fault/index.ts';
import { makeFaultDrill } from '../../../../sim/finder/index.ts';

/** Mends of what a drill hides, as ids of their checks, worked out with no page at hand. */
export function mendsOf({ rig, seed, count }: { rig: RigId; seed: number; count: 1 | 2 }): string[] {
	const { sheet, faults } = makeFaultDrill(rig, seed, count);
	return faults.map((placed) => {
		const { mend, mendAt } = faultOf(placed.fault);
		return `mend-${mend}@${mendAt?.(sheet, placed) ?? placed.place}`;
	});
}
