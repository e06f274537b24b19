import { describe, expect, test } from 'vitest';
import { readSheet } from '../../../shared/sheet/index.ts';
import { saySeen, seenOf, tellsApart } from '../../../sim/paper/seen.ts';
import { openRig } from '../../../sim/rig/index.ts';

// Symptom: a bar half red and half blue, told as one colour, left every test green. Cause: what was said of cells was never held to what
// they do. Here a bar in two halves is set by hand, slot by slot, and what is told of it stands beside.

/** A bar in two halves on a desk; each half is blue, green, red, warm white, and then come intensity and its fine half, and the shutter. */
function bar(left: readonly number[], right: readonly number[], intensity = 255) {
	const levels = [...left, ...right, intensity, intensity, 40].map((level, i) => ({ universe: 1, slot: i + 1, level }));
	return openRig(
		readSheet({
			version: 1,
			name: 'one bar',
			fixtures: [
				{
					id: 'bar-1',
					name: 'bar 1',
					profile: 'picket-8',
					place: { x: 2, y: 1, throw: 3 },
					plug: 'wall',
					settings: { work: 'line', mode: 'halves', address: 1, curve: 'straight' },
				},
			],
			desk: {
				name: 'desk',
				outputs: [{ id: 'a', universe: 1 }],
				patch: [{ fixture: 'bar-1', universe: 1, address: 1, mode: 'halves' }],
				levels,
			},
			cables: [{ id: 'c1', kind: 'data', length: 5, from: 'desk:a', to: 'bar-1:in' }],
			terminators: ['bar-1:out'],
		}),
	);
}

function seen(...asked: Parameters<typeof bar>) {
	const found = seenOf(bar(...asked), 'bar-1');
	if (!found) throw new Error('it was to be told in a few words');
	return found;
}

const BLUE = [255, 0, 0, 0];
const RED = [0, 0, 255, 0];
const OUT = [0, 0, 0, 0];
const HALF = [0, 0, 128, 0];

const LEFT = [1, 2, 3, 4];
const RIGHT = [5, 6, 7, 8];

describe('what is told of a bar in two halves', () => {
	test.each([
		[RED, RED, [{ cells: [...LEFT, ...RIGHT], colour: 'deep red', percent: 100 }]],
		[
			RED,
			BLUE,
			[
				{ cells: LEFT, colour: 'deep red', percent: 100 },
				{ cells: RIGHT, colour: 'deep blue', percent: 100 },
			],
		],
		[
			RED,
			HALF,
			[
				{ cells: LEFT, colour: 'deep red', percent: 100 },
				{ cells: RIGHT, colour: 'deep red', percent: 50 },
			],
		],
		[
			OUT,
			BLUE,
			[
				{ cells: LEFT, colour: 'dark', percent: 0 },
				{ cells: RIGHT, colour: 'deep blue', percent: 100 },
			],
		],
		[OUT, OUT, [{ cells: [...LEFT, ...RIGHT], colour: 'dark', percent: 0 }]],
	])('%j and %j', (left, right, runs) => {
		expect(seen(left, right)).toMatchObject({ flashes: 0, programme: null, runs });
	});

	test.each([
		[RED, RED, { say: 'look-lit', facts: { colour: 'deep red', percent: 100, rate: 0 } }],
		[OUT, OUT, { say: 'look-dark', facts: {} }],
		[
			OUT,
			BLUE,
			{
				say: 'look-cells',
				facts: {
					cells: LEFT,
					colour: null,
					percent: 0,
					otherCells: RIGHT,
					otherColour: 'deep blue',
					otherPercent: 100,
					rate: 0,
				},
			},
		],
		[
			RED,
			BLUE,
			{
				say: 'look-cells',
				facts: {
					cells: LEFT,
					colour: 'deep red',
					percent: 100,
					otherCells: RIGHT,
					otherColour: 'deep blue',
					otherPercent: 100,
					rate: 0,
				},
			},
		],
		[
			BLUE,
			OUT,
			{
				say: 'look-cells',
				facts: {
					cells: LEFT,
					colour: 'deep blue',
					percent: 100,
					otherCells: RIGHT,
					otherColour: null,
					otherPercent: 0,
					rate: 0,
				},
			},
		],
	])('%j and %j, said as %j', (left, right, said) => {
		expect(saySeen(seen(left, right))).toEqual(said);
	});

	test('is nothing where it is too faint to be asked about: below a tenth', () => {
		const at = (level: number) => seenOf(bar([level, 0, 0, 0], [level, 0, 0, 0]), 'bar-1');
		expect(at(24)).toBeNull();
		expect(at(26)).not.toBeNull();
	});
});

describe('two looks are told apart', () => {
	type Halves = readonly [left: readonly number[], right: readonly number[]];

	test.each<readonly [string, Halves, Halves, boolean]>([
		['the halves change places', [RED, BLUE], [BLUE, RED], true],
		['one half goes out', [RED, RED], [RED, OUT], true],
		['both the same', [RED, BLUE], [RED, BLUE], false],
		['by a fifth of full', [RED, RED], [[0, 0, 204, 0], RED], true],
		['not by less', [RED, RED], [[0, 0, 207, 0], RED], false],
		['by a colour', [RED, RED], [RED, BLUE], true],
		['not by a colour nobody sees for another', [[0, 40, 255, 0], RED], [[0, 44, 255, 0], RED], false],
	])('%s', (_, a, b, apart) => {
		expect(tellsApart(seen(...a), seen(...b))).toBe(apart);
		expect(tellsApart(seen(...b), seen(...a))).toBe(apart);
	});

	test.each([
		[4, 6, true],
		[4, 5.9, false],
		[0, 1, true],
		[2, 2, false],
	])('%d flashes a second and %d', (a, b, apart) => {
		const look = seen(RED, RED);
		expect(tellsApart({ ...look, flashes: a }, { ...look, flashes: b })).toBe(apart);
		expect(tellsApart({ ...look, flashes: b }, { ...look, flashes: a })).toBe(apart);
	});

	test('by the kind of programme, and by whether there is one', () => {
		const look = seen(RED, RED);
		const fade = { ...look, runs: [], programme: { id: 'tide', name: 'tide', kind: 'fade' as const } };
		const pulse = { ...fade, programme: { id: 'breath', name: 'breath', kind: 'pulse' as const } };
		expect([tellsApart(fade, pulse), tellsApart(fade, look), tellsApart(look, fade)]).toEqual([true, true, true]);
		expect(tellsApart(fade, { ...fade, programme: { ...fade.programme, id: 'other' } })).toBe(false);
		expect(saySeen(fade)).toEqual({ say: 'look-programme', facts: { name: 'tide', does: 'fade' } });
	});
});
