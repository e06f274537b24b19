import { describe, expect, it } from 'vitest';
import { formatLevel, levelsShownAs } from '../../../shared/dmx/index.ts';
import { makeDrill, shortestWay } from '../../../sim/drill/index.ts';
import { openRig, replay, why } from '../../../sim/rig/index.ts';
import { describeRig, fixtureLight, reasonText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { led, mixed } from '../../sim/rig/sheets.ts';

// Symptom: a right answer to 'show amber at 85 %' read 'amber at 67 %', and red held at full 'deep red at 47 %'. Cause: how bright a light
// looks to an eye was printed as percent, which everywhere else is the level that was asked for.

describe('percent means the level that was asked for', () => {
	it('a right answer to a drill at a percent reads as that percent', () => {
		for (let seed = 0; seed < runs(40, 1000); seed++) {
			const drill = makeDrill('desk-percent', seed);
			const rig = replay(drill.sheet, shortestWay(drill));
			const said = fixtureLight(rig, drill.facts['fixture'] as string);
			const percent = drill.facts['percent'] as number;
			const levels = levelsShownAs(percent).map((level) => `level ${formatLevel(level)}`);
			expect(
				levels.some((level) => said.endsWith(level)),
				`seed ${seed}: ${said}, of ${percent}`,
			).toBe(true);
			expect(said.match(/%/g), `seed ${seed}`).toHaveLength(1);
		}
	});

	it('a colour held at full is at full, and at its own brightness says that', () => {
		const rig = openRig(led);
		rig.send({
			type: 'settings.become',
			fixture: 'lead',
			change: { work: 'held', held: 'red', level: 100, strobe: 0 },
		});
		expect(fixtureLight(rig, 'lead')).toBe('deep red, at full, level 255 (100 %)');
		rig.send({ type: 'settings.become', fixture: 'lead', change: { level: 80 } });
		expect(fixtureLight(rig, 'lead')).toBe('deep red, very bright, level 204 (80 %)');
		rig.send({ type: 'settings.become', fixture: 'lead', change: { level: 0 } });
		expect(fixtureLight(rig, 'lead')).toBe('dark');
	});

	it('no sentence of what is seen has another percent in it', () => {
		const rig = openRig(mixed);
		for (const line of describeRig(rig)) expect(line.replaceAll(/level \d+ \(\d+ %\)/g, '')).not.toContain('%');
		for (const { id } of mixed.fixtures)
			for (const reason of why(rig, id).filter((each) => each.id.startsWith('light.')))
				expect(reasonText(rig, id, reason)).not.toContain('%');
	});

	it('what moves by itself has no one level', () => {
		const rig = openRig(led);
		rig.send({
			type: 'settings.become',
			fixture: 'lead',
			change: { work: 'programme', programme: 'drift', strobe: 0 },
		});
		rig.wait(500);
		expect(fixtureLight(rig, 'lead')).not.toContain('level');
	});
});
