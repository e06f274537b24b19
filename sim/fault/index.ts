/** Placeholder door. */
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { PlacedFault, RigEvent } from '../event/index.ts';
export function faultEvents(_sheet: RigSheet, _placed: PlacedFault): RigEvent[] {
	return [];
}
