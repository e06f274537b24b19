import { readdirSync, rmSync } from 'node:fs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { checks } from '../../../content/en/checks/index.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { RIG_IDS } from '../../../shared/sheet/index.ts';
import { FAULTS } from '../../../sim/fault/index.ts';
import {
	ALLOWS_ALL,
	freshWalk,
	type RigChoice,
	type SetWalk,
	type WalkStep,
} from '../../../src/features/finder/walk.ts';
import * as whole from '../../../src/features/finder/work.ts';
import { leanLate } from '../../../src/slim/index.ts';
import { leanDoorIn, leanFolder } from './lean.ts';

const folder = leanFolder();
let lean: typeof whole;

beforeAll(async () => {
	lean = await leanDoorIn(folder, 'src/features/finder/work.ts', leanLate(/entry\.ts$/, /entry\.ts$/));
});
afterAll(() => rmSync(folder, { recursive: true }));

it('has each rig and profile, the words of each spot and of each family of faults, in a file of its own', () => {
	const files = readdirSync(folder);
	for (const name of [
		...RIG_IDS.map((id) => `rig-${id}`),
		...BUNDLED.map(({ id }) => `profile-${id}`),
		...Object.values(checks).map(({ spot }) => `check-${spot}`),
		...FAULTS.map(({ family }) => `fault-${family}`),
	])
		expect(files.filter((file) => file.startsWith(`prep-bay-late_${name}-`))).toHaveLength(1);
	expect(files.filter((file) => file.includes('undefined'))).toEqual([]);
});

const RIGS: readonly [RigChoice, string, SetWalk['complaint']][] = [
	[{ kind: 'quick', count: 4, linked: 'desk', profile: 'tallow-6' }, 'wash-2', 'dark'],
	[{ kind: 'quick', count: 3, linked: 'desk', profile: 'cobble' }, 'wash-2', 'no-answer'],
	[{ kind: 'bundled', id: 'mixed-panels' }, 'bar-1', 'flicker'],
];

it.each(RIGS)(
	'shows the same, from the first screen to the verdict and past a mend that failed: %o',
	async (rig, fixture, complaint) => {
		const both = [whole.makeWork(), lean.makeWork()] as const;
		const same = async <T>(ask: (work: whole.Work) => Promise<T>): Promise<T> => {
			const [one, other] = [await ask(both[0]), await ask(both[1])];
			expect(other).toEqual(one);
			return one;
		};
		await same((work) => work.lay({ rig }));
		await same((work) => work.complaints({ rig, fixture }, () => undefined));
		const steps: WalkStep[] = [];
		for (let n = 0; n < 9; n++) {
			const walk: SetWalk = { ...freshWalk(rig, {}, 0), fixture, complaint, steps };
			const { check, verdict } = await same((work) =>
				work.look({ walk, allows: ALLOWS_ALL, isPartEnough: true }, () => undefined),
			);
			const mend = verdict?.mends[0];
			if (check) steps.push({ did: 'answer', check: check.id, outcome: check.answers[n % 2]?.id ?? '' });
			else if (mend) steps.push({ did: 'answer', check: mend.check, outcome: n < 6 ? 'still' : 'cleared' });
			else break;
		}
		expect(steps.length).toBeGreaterThan(2);
	},
);
