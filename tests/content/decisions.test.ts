import { describe, expect, it } from 'vitest';
import { lessonFiles, someSeeds, taskFrom } from './lessons.ts';
import { rulesOf } from './rules.ts';

/**
 * Rules that a lesson's task asks for at the least, of those that a quick run looks at. What a task asks was told in presses once, and
 * ninety presses can be one decision.
 */
const LEAST: Readonly<Record<string, number>> = {
	'a-flash-nobody-asked-for': 3,
	'a-panel-you-never-saw': 1,
	'addresses-before-the-van': 2,
	'any-panel': 1,
	'as-one-or-apart': 2,
	bands: 2,
	'charge-and-hours': 2,
	'circuits-and-distribution': 3,
	'cool-coil-charge-log': 3,
	'daisy-chain': 4,
	'dimmer-curves': 2,
	'exits-and-emergency-light': 2,
	'floor-bracket-clamp-bond': 5,
	'focus-aim-spill-glare': 2,
	'held-colours': 1,
	'how-to-think': 2,
	'label-and-test': 6,
	'leader-and-follower': 4,
	'lithium-in-transit-and-store': 1,
	'lock-and-defaults': 2,
	'look-before-you-swap': 2,
	'matching-white': 2,
	'modes-and-footprints': 2,
	'on-the-radio': 2,
	'over-under': 2,
	'past-the-end': 2,
	'patch-sheet-and-plot': 3,
	'power-along-the-row': 3,
	'programmes-speed-sound': 2,
	'remote-and-sensor': 2,
	'slots-and-frames': 2,
	'splitters-and-branches': 3,
	'ten-cases': 2,
	'text-and-switches': 2,
	'the-case': 3,
	'throw-pool-overlap': 2,
	'two-universes': 2,
	'uplight-column-facade': 2,
	'wall-close-and-angled': 3,
	weather: 3,
	'weights-at-a-point': 3,
	'when-data-goes': 2,
	'when-the-desk-comes-back': 3,
	'words-on-panels': 3,
};

/** Lessons in which one rule is right, and why. */
const ONE_IS_RIGHT: Readonly<Record<string, string>> = {
	'a-panel-you-never-saw':
		'the panel itself is new, of another law at each go: in, change, keep, out, with one setting',
	'any-panel': 'as that one: the panel is new, and how it acts is what is to be found out',
	'held-colours': 'the first light made at a panel; where something else decides the light, it asks two',
	'lithium-in-transit-and-store':
		'a pack that may be hurt: one plug, named, and no hand on anything else to find out which',
};

const found = lessonFiles().map(({ lesson }) => ({
	id: lesson.id,
	all: someSeeds(lesson, 8).map((seed) => rulesOf(taskFrom(lesson, seed))),
}));

describe('what a task asks', () => {
	it('is at the least so many rules, lesson by lesson', () => {
		expect(Object.fromEntries(found.map(({ id, all }) => [id, Math.min(...all.map((each) => each.length))]))).toEqual(
			LEAST,
		);
	});

	it('is two rules or more, or it is said why one is right', () => {
		const ones = Object.keys(LEAST).filter((id) => (LEAST[id] ?? 0) < 2);
		expect(ones.toSorted()).toEqual(Object.keys(ONE_IS_RIGHT).toSorted());
	});

	it('is counted by what is to be decided: a row of four at one address is fewer rules than two things to set on one', () => {
		const rulesIn = (id: string): readonly string[] => found.find((each) => each.id === id)?.all[0] ?? [];
		expect(rulesIn('charge-and-hours')).toEqual(['level', 'work out level']);
		expect(rulesIn('patch-sheet-and-plot')).toEqual(['address', 'mode', 'find where']);
		expect(rulesIn('cool-coil-charge-log')).toEqual(['mains', 'find where', 'in order']);
		expect(rulesIn('over-under')).toEqual(['cable.lay', 'terminator.fit']);
	});
});
