import type { RigSheet } from '../../schema.ts';
import { HALL, wash, wholeSheet } from '../parts.ts';

export const oneWash: RigSheet = wholeSheet({
	name: `${HALL}: one wash by the door`,
	fixtures: [wash('wash-1', 'wash by the door', 8, { work: 'held', held: 'rose', level: 80 }, { plug: 'wall' })],
	remote: { code: 1 },
});
