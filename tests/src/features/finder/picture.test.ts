import { describe, expect, test } from 'vitest';
import { SPOTS } from '#words/checks/index.ts';
import { bundledRig, quickSheet, RIG_IDS, type RigSheet } from '../../../../shared/sheet/index.ts';
import { type Picture, pictureOf } from '../../../../src/features/finder/picture.ts';

const four = bundledRig('four-in-line');
const marked = ({ line, mark }: Picture) => mark && `${mark.what} ${line[mark.box]?.id}`;
const ids = ({ line }: Picture) => line.map(({ id }) => id);

describe('the line under the picture', () => {
	test.each([
		['wash-3', 'box wash-3'],
		['wash-3:out', 'box wash-3'],
		['cable-1', 'cable wash-1'],
		['cable-3', 'cable wash-3'],
		['desk', 'box desk'],
		['a', 'box desk'],
		['remote', null],
		['rig', null],
	])('runs from the desk on, with %s marked', (place, mark) => {
		const picture = pictureOf(four, 'cable', place, 'wash-2');
		expect(ids(picture)).toEqual(['desk', 'wash-1', 'wash-2', 'wash-3', 'wash-4']);
		expect(marked(picture)).toBe(mark);
	});

	test('is the one the place hangs on, not the one complained of', () => {
		const two = bundledRig('two-universes');
		expect(ids(pictureOf(two, 'desk-output', 'b', 'bar-1'))).toEqual(['desk', 'bar-3', 'bar-4']);
		expect(ids(pictureOf(two, 'display', 'bar-1', 'bar-4'))).toEqual(['desk', 'bar-1', 'bar-2']);
	});

	test('begins with the leader where nothing feeds it', () => {
		const leader = bundledRig('leader-and-three');
		expect(ids(pictureOf(leader, 'display', 'wash-3', 'wash-3'))[0]).toBe('wash-1');
	});

	test('is not drawn where nothing is linked', () => {
		const alone = quickSheet({ count: 3, linked: 'alone', profile: 'tallow-6' });
		expect(pictureOf(alone, 'display', 'wash-2', 'wash-2')).toMatchObject({ line: [], mark: null });
	});

	test('of a long line shows the part round the mark', () => {
		const picture = pictureOf(bundledRig('long-line'), 'display', 'bar-20', 'bar-20');
		expect(picture.line).toHaveLength(12);
		expect(marked(picture)).toBe('box bar-20');
	});

	test('ends where cables run in a circle, or hang loose', () => {
		const circle: RigSheet = {
			...four,
			cables: four.cables.map((cable) => (cable.id === 'cable-1' ? { ...cable, from: 'wash-4:out' } : cable)),
		};
		expect(new Set(ids(pictureOf(circle, 'display', 'wash-2', 'wash-2'))).size).toBeLessThanOrEqual(5);
		const loose = { ...four, cables: four.cables.map((cable) => ({ ...cable, from: null, to: null })) };
		expect(pictureOf(loose, 'cable', 'cable-2', 'wash-2').line).toEqual([]);
	});

	test('passes a splitter', () => {
		const split: RigSheet = {
			...four,
			splitters: [{ id: 'split', name: 'splitter', outputs: 2, on: true }],
			cables: four.cables.map((cable) => (cable.id === 'cable-3' ? { ...cable, from: 'split:2' } : cable)),
		};
		expect(ids(pictureOf(split, 'display', 'wash-4', 'wash-4'))).toEqual(['split', 'wash-3', 'wash-4']);
	});
});

test('the back has what the fixture has, and a place on no fixture has none', () => {
	const mixed = bundledRig('mixed-panels');
	const backs = ['wash-1', 'bar-1', 'old-1', 'desk'].map((place) => pictureOf(mixed, 'display', place, 'wash-1').back);
	expect(backs).toEqual([
		{ panel: 'code', keys: 4, battery: true, sensor: true, link: false },
		{ panel: 'text', keys: 4, battery: false, sensor: false, link: true },
		{ panel: 'dip', keys: 0, battery: false, sensor: false, link: true },
		null,
	]);
});

test('every place of every bundled rig has a picture, marked within its line', () => {
	for (const rig of RIG_IDS) {
		const sheet = bundledRig(rig);
		const first = sheet.fixtures[0]?.id ?? '';
		const places = [...sheet.fixtures, ...sheet.cables, ...(sheet.desk?.outputs ?? [])].map(({ id }) => id);
		for (const place of places)
			for (const spot of SPOTS) {
				const { line, mark } = pictureOf(sheet, spot, place, first);
				if (line.length > 0) expect(line[mark?.box ?? -1], `${rig} ${place}`).toBeDefined();
			}
	}
});
