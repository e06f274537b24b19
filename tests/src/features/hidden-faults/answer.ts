import type { RigId } from '../../../../shared/sheet/index.ts';
import { faultOf } from '../../../../sim/fault/index.ts';
import { makeFaultDrill, triedBy } from '../../../../sim/finder/index.ts';

/** Repairs of what a drill hides, as ids of their checks, worked out with no page at hand. */
export function repairsOf({ rig, seed, count }: { rig: RigId; seed: number; count: 1 | 2 }): string[] {
	const { sheet, faults } = makeFaultDrill(rig, seed, count);
	return faults.map((placed) => {
		const { repair, repairAt: mendAt } = faultOf(placed.fault);
		return triedBy({ id: repair, place: mendAt?.(sheet, placed) ?? placed.place });
	});
}
