import { describe, expect, test } from 'vitest';
import {
	type Item,
	type KindId,
	LEVELS,
	type PaperLevel,
	type QuestionGround,
	type QuestionKind,
	UNSEEN_KIND_IDS,
} from '../../../shared/paper/index.ts';
import { PLAIN_KINDS } from '../../../shared/paper/schedule.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { RIG_SOURCES } from '../../../sim/paper/index.ts';
import { runs } from '../../runs.ts';
import { unseenGround } from '../../shared/paper/grounds.ts';
import { GUESSES, guessed } from './guesser.ts';

// Symptom: who read neither question nor chart, and took the option most like the others or the one in the middle, had all of coarse and
// fine right, and four of five of some others. Cause: the right one was made first, and each wrong one was a slip from it.

const SEEDS = 150;
const MOST_OFF = 0.1;

/** Written out, so that a kind that drops out is missed. */
const ONE_RIGHT: readonly KindId[] = [
	'value-function',
	'function-values',
	'slot-does',
	'runs-past',
	'coarse-fine',
	'band-of-percent',
	'frame-look',
	'follow-setting',
	'display-says',
	'first-check',
	'gate-slot',
];

const kinds = [...PLAIN_KINDS, ...RIG_SOURCES.kinds].filter(({ forms }) => forms.includes('one'));

type GroundOf = (seed: number) => QuestionGround;

/** So many questions with one right option, levels in turn; a level that is answered otherwise is passed over. */
function itemsOf(kind: QuestionKind, count: number, groundOf: GroundOf): Item[] {
	const items: Item[] = [];
	for (let seed = 0; items.length < count; seed++) {
		const level = LEVELS[seed % LEVELS.length] as PaperLevel;
		const ground = groundOf(seed);
		if (!kind.fits(ground)) continue;
		const draft = kind.make(ground, makeRandom(seed).fork(kind.id), level);
		if (draft.ask.form === 'one')
			items.push({ id: `${kind.id}-00000000`, kind: kind.id, topic: kind.topic, level, ...draft });
	}
	return items;
}

/** Every guess that is right too often. */
const tooGood = (items: readonly Item[]): string[] =>
	GUESSES.flatMap((guess) => {
		const { right, chance } = guessed(guess, items);
		// worse than chance helps nobody who takes it
		return right - chance > MOST_OFF ? [`${guess}: ${right} where chance is ${chance}`] : [];
	});

describe('a guesser who goes by the look of the options', () => {
	test('is tried on every kind with one right option', () => {
		expect(kinds.map(({ id }) => id)).toEqual(ONE_RIGHT);
	});

	test.each(kinds)('$id: is right hardly more often than chance', (kind) => {
		// the finder is slow to ask what comes first
		const count = kind.id === 'first-check' ? runs(30, SEEDS) : runs(SEEDS, 10 * SEEDS);
		expect(tooGood(itemsOf(kind, count, () => ({ profiles: BUNDLED, sheet: null })))).toEqual([]);
	});

	test.each(kinds.filter(({ id }) => UNSEEN_KIND_IDS.includes(id)))(
		'$id: nor where nobody has seen the chart',
		(kind) => {
			// what opens a rig for each fixture is slow
			const isSlow = kind.id === 'frame-look';
			expect(tooGood(itemsOf(kind, isSlow ? runs(60, 10 * SEEDS) : runs(SEEDS, 10 * SEEDS), unseenGround))).toEqual([]);
		},
	);
});
