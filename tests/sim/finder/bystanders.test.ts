import { expect, it } from 'vitest';
import { bundledRig } from '../../../shared/sheet/index.ts';
import { faultEvents, placedFaults } from '../../../sim/fault/index.ts';
import { reachOf } from '../../../sim/finder/bystanders.ts';
import { meantWitness } from '../../../sim/finder/index.ts';
import { witnessesAt } from '../../../sim/finder/witness.ts';
import { runs } from '../../runs.ts';

const RIGS = ['four-in-line', 'leader-and-three', 'mixed-panels', 'two-universes', 'long-line'] as const;

it.each(RIGS)('a fault that is told to leave a fixture of %s alone does', (id) => {
	const sheet = bundledRig(id);
	const meant = meantWitness(sheet);
	const all = placedFaults(sheet);
	let left = 0;
	const every = sheet.fixtures.length > 12 ? runs(6, 1) : 1;
	for (const [at, { id: fixture }] of sheet.fixtures.entries()) {
		if (sheet.fixtures.length > 12 && at % runs(7, 1) !== 0) continue;
		const reaches = reachOf(meant.rig.gear, [fixture]);
		for (const { placed } of all.filter((_, n) => n % every === 0)) {
			if (reaches(faultEvents(sheet, placed))) continue;
			left++;
			expect(witnessesAt(meant, [placed], [fixture]), `${placed.fault}@${placed.place} at ${fixture}`).toEqual([]);
		}
	}
	// nearly all that sits inside one fixture is nothing to another
	expect(left).toBeGreaterThan(sheet.fixtures.length > 1 ? 20 : -1);
});
