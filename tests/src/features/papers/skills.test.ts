import { expect, it } from 'vitest';
import { readRecipe } from '../../../../shared/paper/index.ts';
import { skillsOf } from '../../../../src/features/papers/learner/sitting.ts';

const questions = [
	{ kind: 'footprint', level: 'easy' },
	{ kind: 'footprint', level: 'easy' },
	{ kind: 'footprint', level: 'hard' },
	{ kind: 'last-slot', level: 'easy' },
] as const;

const recipe = (profiles: string[]) => readRecipe({ version: 1, title: 'A paper', count: 4, profiles });

it('each kind and level that was asked, once, about the one fixture of the paper or any', () => {
	expect(skillsOf({ questions }, recipe(['cobble']))).toEqual([
		{ kind: 'footprint', about: 'cobble', level: 'easy' },
		{ kind: 'footprint', about: 'cobble', level: 'hard' },
		{ kind: 'last-slot', about: 'cobble', level: 'easy' },
	]);
	expect(skillsOf({ questions }, recipe([])).every(({ about }) => about === null)).toBe(true);
	expect(skillsOf({ questions }, recipe(['cobble', 'tallow-6'])).every(({ about }) => about === null)).toBe(true);
});
