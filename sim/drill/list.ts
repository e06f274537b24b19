import { DRILL_IDS, type DrillKind } from './ids.ts';
import { KINDS, type Level } from './kinds/index.ts';

export interface DrillKindInfo {
	readonly id: DrillKind;
	readonly level: Level;
	/** Larger comes later when learning; unique, and free to grow between. */
	readonly order: number;
	/** Names of the facts its drills give to words; those after a `?` come with some seeds only. */
	readonly facts: readonly string[];
	/** Its words say that something is wrong to be seen, and so its start shows it. */
	readonly claims: boolean;
}

/** The kinds of drill, in the order to learn in. */
export const DRILL_KINDS: readonly DrillKindInfo[] = Object.freeze(
	DRILL_IDS.map((id): DrillKindInfo => {
		const { level, order, facts, claims = false } = KINDS[id];
		return Object.freeze({ id, level, order, facts, claims });
	}).toSorted((a, b) => a.order - b.order),
);
