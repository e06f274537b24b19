import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bundledRig, RIG_IDS, type RigSheet } from '../../../shared/sheet/index.ts';
import type { PlacedFault, RigEvent } from '../../../sim/event/index.ts';
import { faultEvents, placedFaults } from '../../../sim/fault/index.ts';
import { openRig, type Rig, why } from '../../../sim/rig/index.ts';
import { reasonText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { anyEvent } from '../../sim/rig/events.ts';
import { readsWell } from './wording.ts';

/** So many fixtures of a rig are asked: past those a long row says nothing new. */
const MOST = 6;

function reads(rig: Rig, sheet: RigSheet): void {
	for (const { id } of sheet.fixtures.slice(0, MOST))
		for (const reason of why(rig, id)) readsWell(reasonText(rig, id, reason));
}

const tries = (rig: Rig, event: RigEvent): void => {
	try {
		if (event.type === 'clock.wait') rig.wait(event.ms);
		else rig.send(event);
	} catch {}
};

const rigs = RIG_IDS.map((id) => bundledRig(id));
const faults = rigs.map((sheet) => placedFaults(sheet).map(({ placed }) => placed));

/** A bundled rig, faults of its own, and what is done to it before and after they come. */
const anyRig = fc.nat(rigs.length - 1).chain((i) => {
	const sheet = rigs[i] as RigSheet;
	return fc.record({
		sheet: fc.constant(sheet),
		faults: fc.array(fc.constantFrom(...(faults[i] as PlacedFault[])), { minLength: 1, maxLength: 4 }),
		before: fc.array(anyEvent(sheet), { maxLength: 8 }),
		after: fc.array(anyEvent(sheet), { maxLength: 12 }),
	});
});

// symptom: 'these are up: .'. cause: a wording chosen by what a link does, and filled from a list that was empty all the same
describe('the words of the reason trail leave no list empty and no colon in the air', () => {
	test('on any rig with any faults, whatever is done to it', () => {
		fc.assert(
			fc.property(anyRig, ({ sheet, faults, before, after }) => {
				const rig = openRig(sheet);
				for (const event of before) tries(rig, event);
				for (const event of faults.flatMap((fault) => faultEvents(sheet, fault))) tries(rig, event);
				reads(rig, sheet);
				for (const event of after) tries(rig, event);
				reads(rig, sheet);
			}),
			{ numRuns: runs(100) },
		);
	});

	test.each(RIG_IDS.slice(0, 5))('with every fault at every place, on %s', (id) => {
		const sheet = bundledRig(id);
		const all = placedFaults(sheet);
		for (const { placed } of all) {
			const rig = openRig(sheet, { faults: [placed] });
			reads(rig, sheet);
			rig.wait(2000);
			reads(rig, sheet);
			if (sheet.desk) {
				rig.sendTogether([{ type: 'desk.recall', levels: [] }]);
				reads(rig, sheet);
			}
		}
		expect(all.length).toBeGreaterThan(20);
	});
});
