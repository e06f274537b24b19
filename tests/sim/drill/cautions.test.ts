import { describe, expect, it } from 'vitest';
import { cautionIds } from '#words/cautions/index.ts';
import { DRILL_IDS, type Drill } from '../../../sim/drill/index.ts';
import { runs } from '../../runs.ts';
import { makeDrill } from './made.ts';

function* drills(): Generator<Drill> {
	for (const kind of DRILL_IDS) for (let seed = 0; seed < runs(15, 500); seed++) yield makeDrill(kind, seed);
}

describe('the cautions of a drill', () => {
	const all = [...drills()];

	it('are ids of content, each once', () => {
		for (const { cautions } of all) {
			expect(new Set(cautions).size).toBe(cautions.length);
			expect(cautionIds).toEqual(expect.arrayContaining([...cautions]));
		}
	});

	it('come with what the hands touch', () => {
		for (const drill of all) {
			const { cautions, hands, scene, sheet } = drill;
			const at = `${drill.kind} ${drill.seed}`;
			if (hands.includes('mains')) expect(cautions, at).toContain('mains');
			if (scene === 'show') expect(cautions[0], at).toBe('live-show');
			const isOverhead = sheet.fixtures.some(({ place }) => place.overhead);
			if (isOverhead && hands.includes('panel'))
				expect(cautions, at).toEqual(expect.arrayContaining(['hanging', 'height']));
			if (drill.disturbs) expect(scene, at).toBe('show');
		}
	});

	it('come with what the lamps do', () => {
		for (const drill of all) {
			const at = `${drill.kind} ${drill.seed}`;
			if (drill.kind === 'strobe-left-on') expect(drill.cautions, at).toContain('flashing');
			if (drill.facts['held'] === 'ultraviolet') expect(drill.cautions, at).toContain('ultraviolet');
		}
	});

	// a cable that still carries data is lifted out with the lamps on it
	it('say so where the way takes light or data from a running show, and only there', () => {
		const changed = all.filter(({ kind, facts }) => kind === 'cable-missing' && facts['what'] === 'microphone');
		expect(changed.length).toBeGreaterThan(0);
		for (const drill of changed) expect(drill.disturbs, `seed ${drill.seed}`).toBe(true);
		const added = all.filter(({ kind, facts }) => kind === 'cable-missing' && facts['what'] === 'missing');
		expect(added.length).toBeGreaterThan(0);
		for (const drill of added) expect(drill.disturbs, `seed ${drill.seed}`).toBe(false);
	});
});
