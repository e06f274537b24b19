import { expect, test } from 'vitest';
import { complaintsOf, meantWitness } from '../../../sim/finder/index.ts';
import { boxed } from './boxed.ts';
import { closedLoop } from './closedLoop.ts';

test('the closed loop on all complaints of a rig with a splitter and switches', () => {
	const { missed, kinds, ...row } = closedLoop(boxed, complaintsOf(meantWitness(boxed), boxed));
	console.table([{ ...row, kinds: kinds.size }]);
	expect(missed).toEqual([]);
});
