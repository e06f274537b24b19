import { describe, expect, it } from 'vitest';
import { cautions } from '#words/cautions/index.ts';
import { conditions, drills, findings, hints } from '#words/drills/index.ts';
import { DRILL_IDS, DRILL_KINDS } from '../../sim/drill/index.ts';
import { asked } from '../../src/wording/fill.ts';
import { makeDrill } from '../sim/drill/made.ts';

describe('words of the drills', () => {
	it('name every kind, and no other', () => {
		expect(Object.keys(drills).sort()).toEqual([...DRILL_IDS].sort());
	});

	it.each(DRILL_IDS)('%s: a short title, one sentence of why', (kind) => {
		const { title, why } = drills[kind];
		expect(title.length).toBeLessThanOrEqual(40);
		expect(why).toMatch(/^[A-Z][^.!?]*\.$/);
	});

	it('titles are told apart', () => {
		expect(new Set(Object.values(drills).map(({ title }) => title)).size).toBe(DRILL_IDS.length);
	});

	it.each(DRILL_KINDS)('$id: its task asks for facts that its drills give', ({ id, facts }) => {
		const given = facts.map((fact) => fact.replace('?', ''));
		for (const fact of asked(drills[id].task).facts)
			if (fact !== 'hasAddress') expect(given, `${id} asks for ${fact}`).toContain(fact);
	});

	it('a title gives no answer away: no digits in it', () => {
		for (const { title } of Object.values(drills)) expect(title.replace('512', '')).not.toMatch(/\d/);
		expect(drills['past-512'].title).not.toContain('512');
	});

	it('every condition that drills ask for has words, and words are for such conditions only', () => {
		const used = new Set(
			DRILL_IDS.flatMap((kind) =>
				Array.from({ length: 12 }, (_, seed) => makeDrill(kind, seed)).flatMap(({ goal }) => goal.map(({ is }) => is)),
			),
		);
		expect(Object.keys(conditions).sort()).toEqual([...used].sort());
		expect(Object.keys(findings).length).toBeGreaterThan(0);
		expect(Object.keys(hints).length).toBeGreaterThan(0);
	});

	it('every caution that drills carry is there', () => {
		for (const kind of DRILL_IDS)
			for (let seed = 0; seed < 20; seed++)
				for (const id of makeDrill(kind, seed).cautions) expect(Object.keys(cautions)).toContain(id);
	});
});
