import { expect, it } from 'vitest';
import { colourNames } from '#words/rig/index.ts';
import { colourName, FAMILIES, lightWords } from '../../../sim/light/words.ts';
import { colourText } from '../../../src/wording/colour.ts';

/** Every name the light can go by, but for how strong it is. */
const plain = [
	'dark',
	'violet glow (ultraviolet)',
	'warm white',
	'white',
	'cool white',
	...FAMILIES.flatMap(({ name, deep }) => [
		name,
		...(deep === undefined ? [] : [`deep ${name}`]),
		...(name === 'red' ? [] : [`pale ${name}`]),
	]),
];

it('has words for every name the light can go by, and for no other', () => {
	expect(Object.keys(colourNames).sort()).toEqual(plain.toSorted());
	for (const name of plain)
		for (const weak of ['', 'dim ', 'faint '])
			for (const more of ['', ' with ultraviolet']) expect(colourText(weak + name + more)).toBe(weak + name + more);
});

it('has words for whatever a colour measured anywhere is called', () => {
	for (let x = 0.02; x < 0.74; x += 0.02)
		for (let y = 0.02; x + y < 1; y += 0.02) {
			expect(Object.keys(colourNames)).toContain(colourName([x, y]));
			const name = lightWords([x, y], 0.1, 1);
			expect(colourText(name)).toBe(name);
		}
	for (const level of [0, 0.01, 0.1, 1])
		expect(colourText(lightWords(null, 0, level))).toBe(lightWords(null, 0, level));
});
