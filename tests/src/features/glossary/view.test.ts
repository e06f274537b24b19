import { describe, expect, it } from 'vitest';
import { terms } from '#words/glossary/index.ts';
import { byLetter } from '../../../../src/features/glossary/index.ts';

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
		const from = (term: string) => shown.find(({ id }) => id === term)?.from;
		expect(from('beam-angle')).toBe('CIE S 017, the international lighting vocabulary');
		expect(from('footprint')).toBe('ANSI E1.20, remote device management (as others restate it)');
		expect(from('data-in')).toBe('ANSI E1.11, levels on a line (from memory)');
		expect(from('throw')).toBe('Common practice of the trade');
	});
});
