import { describe, expect, test } from 'vitest';
import { bundledWords, quickWords } from '#words/finder/index.ts';
import { BUNDLED } from '../../../../shared/profile/index.ts';
import { QUICK_LINKS, QUICK_MOST, RIG_IDS } from '../../../../shared/sheet/index.ts';
import { countable, totalOf, unlearn } from '../../../../src/features/finder/keep.ts';
import { allowsText, logText } from '../../../../src/features/finder/log.ts';
import { lacking, part, shareText, timeText } from '../../../../src/features/finder/verdict.ts';
import type { SuspectView, WalkView } from '../../../../src/features/finder/view.ts';
import { ALLOWS_ALL } from '../../../../src/features/finder/walk.ts';

// the page knows rigs, links and panels by the ids of words alone, so that it need not carry the things themselves
test('what can be chosen at the start is what there is', () => {
	expect(Object.keys(bundledWords)).toEqual([...RIG_IDS]);
	expect(Object.keys(quickWords.links)).toEqual([...QUICK_LINKS]);
	expect(Object.keys(quickWords.panels)).toEqual(BUNDLED.map(({ id }) => id));
	expect(QUICK_MOST).toBe(24);
});

describe('amounts', () => {
	test.each([
		[0, '0 s'],
		[4.4, '4 s'],
		[59.4, '59 s'],
		[59.6, '1 min'],
		[63, '1 min 5 s'],
		[119, '2 min'],
		[592, '9 min 50 s'],
		[640, '11 min'],
	])('%d seconds are said as %s', (seconds, text) => expect(timeText(seconds)).toBe(text));

	test.each([
		[0, 'under 1 %'],
		[0.004, 'under 1 %'],
		[0.006, '1 %'],
		[0.5, '50 %'],
		[1, '100 %'],
	])('a share of %d is said as %s', (share, text) => expect(shareText(share)).toBe(text));
});

const suspect = (id: string, share: number, against: SuspectView['against'] = []): SuspectView => ({
	id,
	name: id,
	more: null,
	share,
	against,
});
const said = [{ check: 'Lens', seen: 'It’s clear', predicted: 'Something covers it' }];

test('suspects are parted by whether anything speaks against them, and the unknown stands apart', () => {
	const all = [suspect('a', 0.5), suspect('unknown', 0.3), suspect('b', 0.15, said), suspect('c', 0.05)];
	const { fitting, against, unknown } = part(all);
	expect([fitting.map(({ id }) => id), against.map(({ id }) => id), unknown?.id]).toEqual([
		['a', 'c'],
		['b'],
		'unknown',
	]);
});

test('the gig in a line', () => {
	expect(allowsText(ALLOWS_ALL)).toBe('Everything at hand, no show running');
	expect(allowsText({ without: ['ladder', 'spare-cable'], showRunning: true, alone: true })).toBe(
		'No ladder, spare cable; show running; alone',
	);
	expect(allowsText({ ...ALLOWS_ALL, alone: true })).toBe('Alone');
	expect(lacking({ needs: ['desk', 'ladder'] }, { ...ALLOWS_ALL, without: ['ladder', 'terminator'] })).toEqual([
		'ladder',
	]);
});

test('a verdict is counted by its kind of fault, where one kind is likelier than not', () => {
	const cause = (id: string, share: number, ...faults: string[]) => ({
		id,
		name: id,
		cause: '',
		tape: [],
		share,
		faults,
		other: null,
	});
	const verdict = (because: 'sure' | 'mended', ...causes: ReturnType<typeof cause>[]) => ({
		because,
		sure: 1,
		causes,
		lost: null,
		repairs: [],
		asides: 0,
		hinge: null,
	});
	const plugs = [cause('near', 0.3, 'cable-out'), cause('far', 0.3, 'cable-out'), cause('dead', 0.39, 'cable-dead')];
	expect(countable(verdict('mended', ...plugs))).toEqual(['cable-out']);
	expect(countable(verdict('sure', ...plugs))).toEqual([]);
	expect(countable(verdict('mended', cause('a', 0.4, 'a'), cause('b', 0.3, 'b'), cause('c', 0.3, 'c')))).toEqual([]);
	expect(countable(verdict('mended', cause('pair', 0.9, 'a', 'b')))).toEqual(['a', 'b']);
	expect(countable(null)).toEqual([]);
});

test('a verdict taken back leaves the others', () => {
	const learnt = { 'lens-covered': 2, 'switched-off': 1 };
	expect(unlearn(learnt, ['lens-covered', 'switched-off'])).toEqual({ 'lens-covered': 1 });
	expect(unlearn({}, ['lens-covered'])).toEqual({});
	expect(totalOf(learnt)).toBe(3);
});

test('the log as text has every step, the end, and the time', () => {
	const view: WalkView = {
		complaint: 'Wash 3 is dark',
		check: null,
		verdict: {
			because: 'mended',
			sure: 1,
			causes: [
				{
					id: 'a',
					name: 'Lens covered: wash 3',
					cause: '',
					tape: [],
					share: 0.9,
					faults: ['lens-covered'],
					other: null,
				},
				{ id: 'b', name: 'Another', cause: '', tape: [], share: 0.1, faults: ['b'], other: null },
			],
			lost: null,
			repairs: [],
			asides: 1,
			hinge: null,
		},
		suspects: [],
		log: [
			{ check: 'Data indicator: wash 3', seen: 'Steady', did: 'answer' },
			{ check: 'Lens: wash 3', seen: null, did: 'cannot' },
			{ check: 'Is wash 2 lit?', seen: null, did: 'unsure' },
		],
		spent: 34,
		isPart: false,
	};
	expect(logText({ view, rig: 'Four washes', allows: ALLOWS_ALL, began: '25 Nov 2026, 18:05' })).toBe(
		`Wash 3 is dark
Four washes
Begun 25 Nov 2026, 18:05
Everything at hand, no show running

1. Data indicator: wash 3: Steady
2. Lens: wash 3: couldn’t be done
3. Is wash 2 lit? not sure

Fixed
Lens covered: wash 3
Estimated time spent: 34 s
`,
	);
});
