import { beforeAll, expect, it } from 'vitest';
import * as whole from '../../../shared/sheet/index.ts';
import { leanWorker } from '../../../src/slim/index.ts';
import { leanDoor } from './lean.ts';

let lean: typeof whole;

beforeAll(async () => {
	lean = await leanDoor('shared/sheet/index.ts', leanWorker());
});

it('has the bundled rigs in a worker as they are read', () => {
	expect(lean.RIG_IDS).toEqual(whole.RIG_IDS);
	for (const id of whole.RIG_IDS) {
		expect(lean.bundledRig(id)).toEqual(whole.bundledRig(id));
		expect(lean.bundledRig(id)).toBe(lean.bundledRig(id));
	}
});
