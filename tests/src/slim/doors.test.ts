import { beforeAll, describe, expect, it } from 'vitest';
import * as whole from '../../../sim/drill/index.ts';
import { leanDoors } from '../../../src/slim/index.ts';
import { saidBy } from '../../shared/thrown.ts';
import { leanDoor } from './lean.ts';

let lean: typeof whole;

beforeAll(async () => {
	lean = await leanDoor('sim/drill/index.ts', leanDoors());
});

describe.each(whole.DRILL_IDS)('%s', (kind) => {
	it('has the same way and marks in a page, which trusts what it reads itself', () => {
		const drill = whole.makeDrill(kind, 3);
		const way = whole.shortestWay(drill);
		expect(lean.makeDrill(kind, 3)).toEqual(drill);
		expect(lean.shortestWay(drill)).toEqual(way);
		for (const log of [way, way.slice(0, 1)]) expect(lean.markDrill(drill, log)).toEqual(whole.markDrill(drill, log));
	});
});

it('asks no schema there', () => {
	const drill = { ...whole.makeDrill('held-colour', 1), hands: ['panel', 'elbow'] } as unknown as whole.Drill;
	expect(saidBy(() => whole.markDrill(drill, []))).toMatch(/The drill does not fit at hands\[1\]/);
	expect(lean.markDrill(drill, []).done).toBe(false);
});
