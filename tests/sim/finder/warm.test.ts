import { describe, expect, test } from 'vitest';
import { bundledRig } from '../../../shared/sheet/index.ts';
import { placedFaults } from '../../../sim/fault/index.ts';
import { COMPLAINTS } from '../../../sim/finder/complaints.ts';
import { faultyWitness, openOutcomes } from '../../../sim/finder/index.ts';
import { textOf, walkGig } from './gig.ts';

/**
 * The symptom: a cable pulled while the rig ran left fixtures lit on the look they held, and the walk ended in 'nothing I know fits,
 * hand it to a repairer': 50 of 142 such walks. The cause: every suspect was read from a rig that had been switched on with the fault
 * there, so that a fixture lit without data spoke against every cable.
 */
describe.each([
	['four-in-line', 'no-answer', 'wash-3'],
	['leader-and-three', 'follower-silent', 'wash-2'],
	['mixed-panels', 'no-answer', 'old-2'],
] as const)('%s, %s at %s', (rig, kind, fixture) => {
	const bench = openOutcomes(bundledRig(rig), { kind, fixture });
	const { meant, sheet } = bench;

	test('a fault that came while the rig ran is found as surely as one that was there at power-up', () => {
		const rows = { warm: { walked: 0, found: 0, answers: 0 }, cold: { walked: 0, found: 0, answers: 0 } };
		for (const { placed } of placedFaults(sheet)) {
			const isKept = [...faultyWitness(meant, [placed], 'warm').rig.gear.units.values()].some(({ kept }) => kept);
			if (!isKept) continue;
			for (const came of ['warm', 'cold'] as const) {
				const w = faultyWitness(meant, [placed], came);
				if (!COMPLAINTS[kind].holds(w, meant, fixture)) continue;
				const { cleared, verdict, asked } = walkGig(bench, w);
				rows[came].walked++;
				rows[came].answers += asked;
				const found = cleared && verdict?.suspects.some(({ id }) => id === textOf([placed]));
				if (found) rows[came].found++;
				expect.soft(found, `${textOf([placed])}, ${came}: ${verdict?.because}`).toBe(true);
			}
		}
		console.table(rows);
		expect(rows.warm.walked).toBeGreaterThan(10);
		expect(rows.warm.found).toBe(rows.warm.walked);
		expect(rows.cold.found).toBe(rows.cold.walked);
	});

	test('stands among the suspects once, whenever it came', () => {
		const ids = bench.candidates.map(({ faults }) => textOf(faults));
		expect(new Set(bench.candidates.map(({ came }) => came))).toEqual(new Set(['either', 'cold', 'warm']));
		expect(ids.length).toBeGreaterThan(new Set(ids).size);
	});
});
