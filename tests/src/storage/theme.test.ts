import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTheme, themes, writeTheme } from '../../../src/storage/index.ts';

function store(kept: string | null = null) {
	let value = kept;
	return () => ({
		getItem: () => value,
		setItem: (_key: string, next: string) => {
			value = next;
		},
		removeItem: () => {
			value = null;
		},
	});
}
const refuses = () => {
	throw new Error('refused');
};

describe('the choice of look', () => {
	it('is read back as it was written', () => {
		for (const theme of themes) {
			const kept = store('dark');
			expect(writeTheme(theme, kept)).toBe(true);
			expect(readTheme(kept)).toBe(theme);
		}
	});

	it('is the device’s where what is kept is anything else', () => {
		fc.assert(
			fc.property(
				fc.string().filter((text) => !(themes as readonly string[]).includes(text)),
				(text) => {
					expect(readTheme(store(text))).toBe('system');
				},
			),
		);
	});

	it('is the device’s where the store refuses, and says that it was not kept', () => {
		expect(readTheme(refuses)).toBe('system');
		expect(writeTheme('dark', refuses)).toBe(false);
	});
});
