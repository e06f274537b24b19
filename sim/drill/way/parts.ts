import type { Rig, Unit } from '../../rig/index.ts';
import type { Task } from '../types.ts';
import { type Wish, wishFor } from '../wish.ts';

/** A fixture that hands on itself may change, and what its settings must come to. */
export interface PanelPart {
	readonly id: string;
	readonly unit: Unit;
	readonly wish: Wish;
}

/** Each fixture of a rig as a drill leaves its panel to hands; none where its power is out of hand. */
export function panelParts(drill: Task, rig: Rig): PanelPart[] {
	if (!drill.hands.includes('power')) return [];
	const isPanel = drill.hands.includes('panel');
	return [...rig.gear.units].map(([id, unit]) => ({ id, unit, wish: isPanel ? wishFor(drill, id) : new Map() }));
}
