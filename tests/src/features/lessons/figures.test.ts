import fc from 'fast-check';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { figureWords } from '#words/lessons/index.ts';
import { PINS } from '../../../../shared/dmx/index.ts';
import { figures } from '../../../../src/features/lessons/figures/index.tsx';
import { BROKEN_AFTER, looksFor, ROW } from '../../../../src/features/lessons/figures/line.tsx';
import { PIN_ANGLES, Pins } from '../../../../src/features/lessons/figures/plugs.tsx';
import { lessonFiles } from '../../../content/lessons.ts';
import { runs } from '../../../runs.ts';

/** Units to a letter on average, at 15 and at 13: measured in a browser. */
const WIDE = { usual: 6.7, small: 5.8 } as const;

describe.each(Object.entries(figures))('the drawing %s', (id, [Drawing]) => {
	const drawn = renderToString(h(Drawing, null));

	it('is drawn whole: no number that is none, no word that was not filled in', () => {
		expect(drawn).not.toMatch(/NaN|undefined|Infinity|\{\w+\}/);
		expect(drawn.length).toBeGreaterThan(200);
	});

	// symptom: the words under a frame ran off its right edge
	it('keeps its words inside', () => {
		for (const [, attributes = '', words = ''] of drawn.matchAll(/<text([^>]*)>([^<]*)</g)) {
			const wide = words.replace(/&\w+;/g, '.').length * (attributes.includes('f-small') ? WIDE.small : WIDE.usual);
			const x = Number(/ x="([\d.]+)"/.exec(attributes)?.[1]);
			const from = attributes.includes('"middle"') ? x - wide / 2 : attributes.includes('"end"') ? x - wide : x;
			expect(from, words).toBeGreaterThanOrEqual(0);
			expect(from + wide, words).toBeLessThanOrEqual(400);
		}
	});

	it('is used by a lesson, and told in words to those who cannot see it', () => {
		expect(lessonFiles().some(({ body }) => body.includes(`<Figure id="${id}" />`))).toBe(true);
		expect(figureWords.figures[id as keyof typeof figures].shows.length).toBeGreaterThan(40);
	});
});

describe('the looks of a half-split', () => {
	it('are told in words as they are drawn', () => {
		const { shows } = figureWords.figures.half;
		const [, ...told] = /look is at (\d).*second at (\d).*third at (\d).*between (\d) and (\d)/.exec(shows) ?? [];
		const looks = looksFor(ROW, (n) => n <= BROKEN_AFTER);
		expect(told.map(Number)).toEqual([...looks, BROKEN_AFTER, BROKEN_AFTER + 1]);
	});

	it('find the break in a row of any length, each look at one not looked at, and no more than halving takes', () => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 64 }), fc.nat(), (row, n) => {
				const lastGood = n % row;
				const looks = looksFor(row, (at) => at <= lastGood);
				expect(looks.length).toBeLessThanOrEqual(Math.ceil(Math.log2(row)));
				expect(new Set(looks).size).toBe(looks.length);
				// what was seen leaves one place for the break
				const good = Math.max(0, ...looks.filter((at) => at <= lastGood));
				const bad = Math.min(row, ...looks.filter((at) => at > lastGood));
				expect([good, bad]).toEqual([lastGood, lastGood + 1]);
			}),
			{ numRuns: runs(100) },
		);
	});
});

// symptom: the pins stood in a row, which no plug has
describe('the face of a plug', () => {
	it('has a place for each pin, no two the same, evenly either side of its key', () => {
		expect(PIN_ANGLES.five).toHaveLength(PINS.length);
		expect(PIN_ANGLES.three).toHaveLength(3);
		for (const angles of Object.values(PIN_ANGLES)) {
			expect(new Set(angles).size).toBe(angles.length);
			const mirrored = angles.map((degrees) => 360 - degrees);
			expect(mirrored.toSorted()).toEqual([...angles].toSorted());
		}
	});

	it('has 1 to 5 clockwise from the key on a five-pin plug; on three, 1 to its right and 3 at the bottom', () => {
		expect(PIN_ANGLES.five.toSorted((a, b) => a - b)).toEqual(PIN_ANGLES.five);
		const [one = 0, two = 0, three = 0] = PIN_ANGLES.three;
		expect(one).toBeLessThan(180);
		expect(two).toBeGreaterThan(180);
		expect(three).toBe(180);
	});

	it('is drawn mirrored on the socket: each contact as far left of its key as the plug has it right', () => {
		const drawn = renderToString(h(Pins, null));
		const across = (kind: string) =>
			[...drawn.matchAll(new RegExp(`class="${kind}" cx="([\\d.]+)"`, 'g'))].map(([, x]) => Number(x));
		const [plug, socket] = [across('f-pin'), across('f-well')];
		expect(plug).toHaveLength(PIN_ANGLES.five.length + PIN_ANGLES.three.length);
		// the middles of the two columns of faces
		const middles = [66, 186] as const;
		for (const [n, x] of plug.entries()) expect((socket[n] ?? 0) - middles[1]).toBeCloseTo(middles[0] - x, 6);
	});
});
