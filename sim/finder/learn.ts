import type { PlacedFault } from '../event/index.ts';

/** How often each kind of fault was the verdict on this device: fault id to count. */
export type Learnt = Readonly<Record<string, number>>;

/** What one verdict of this device's own counts for, against weights of the catalogue that run from 1 to 10. */
const ONE_VERDICT = 1.5;

/** A fault's weight with what this device has seen. It never takes a suspect away: what the rig shows comes first. */
export const weighBy =
	(learnt: Learnt) =>
	({ fault }: PlacedFault, weight: number): number =>
		weight + ONE_VERDICT * (learnt[fault] ?? 0);

/** The count with one more verdict. */
export function learn(learnt: Learnt, faults: readonly PlacedFault[]): Learnt {
	const next: Record<string, number> = { ...learnt };
	for (const { fault } of faults) next[fault] = (next[fault] ?? 0) + 1;
	return next;
}
