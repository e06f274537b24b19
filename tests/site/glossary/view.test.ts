import { describe, expect, it } from 'vitest';
import { terms } from '../../../content/glossary/index.ts';
import { byLetter } from '../../../src/glossary/index.ts';

describe('the glossary as shown', () => {
	const letters = byLetter(terms);

	it('has every term once, under its own letter, letters in order', () => {
		expect(letters.map(({ letter }) => letter)).toEqual([...new Set(letters.map(({ letter }) => letter))].sort());
		expect(letters.flatMap(({ terms: list }) => list.map(({ id }) => id)).sort()).toEqual(
			terms.map(({ id }) => id).sort(),
		);
		for (const { letter, terms: list } of letters)
			for (const { term } of list) expect(term.charAt(0).toUpperCase()).toBe(letter);
	});

	it('names what to read next, and the standard in words', () => {
		const shown = letters.flatMap(({ terms: list }) => list);
		for (const { see } of shown)
			for (const next of see) expect(next.term).toBe(terms.find(({ id }) => id === next.id)?.term);
		expect(shown.find(({ id }) => id === 'footprint')?.from).toBe('ANSI E1.20, remote device management');
	});
});
