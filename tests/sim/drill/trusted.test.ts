import { describe, expect, it } from 'vitest';
import * as checked from '../../../sim/drill/index.ts';
import * as trusted from '../../../sim/drill/trusted.ts';
import { saidBy } from '../../shared/thrown.ts';
import { makeDrill } from './made.ts';

describe.each(checked.DRILL_IDS)('%s', (kind) => {
	it('has the same way and marks through the door that trusts', () => {
		const drill = makeDrill(kind, 3);
		const way = checked.shortestWay(drill);
		expect(trusted.shortestWay(drill)).toEqual(way);
		for (const log of [way, way.slice(0, 1)])
			expect(trusted.markDrill(drill, log)).toEqual(checked.markDrill(drill, log));
	});
});

it('is held to no schema there, and to one here', () => {
	const drill = { ...checked.makeDrill('held-colour', 1), hands: ['panel', 'elbow'] } as unknown as checked.Drill;
	expect(saidBy(() => checked.markDrill(drill, []))).toMatch(/The drill doesn’t fit at hands\[1\]/);
	expect(trusted.markDrill(drill, []).done).toBe(false);
});
