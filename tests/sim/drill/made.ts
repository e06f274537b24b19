import { type Drill, type DrillKind, makeDrill as make } from '../../../sim/drill/index.ts';
import { unseen } from '../../../src/features/invented/index.ts';

/** A drill of any kind, with what invents a fixture where the kind takes one. */
export const makeDrill = (kind: DrillKind, seed: number): Drill => make(kind, seed, unseen);
