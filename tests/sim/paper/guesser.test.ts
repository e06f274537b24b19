import { describe, expect, test } from 'vitest';
import { type Item, type KindId, LEVELS, type PaperLevel, type QuestionKind } from '../../../shared/paper/index.ts';
import { PLAIN_KINDS } from '../../../shared/paper/schedule.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { RIG_SOURCES } from '../../../sim/paper/index.ts';
import { runs } from '../../runs.ts';
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

/** So many questions with one right option, levels in turn; a level that is answered otherwise is passed over. */
function itemsOf(kind: QuestionKind, count: number): Item[] {
	const items: Item[] = [];
	for (let seed = 0; items.length < count; seed++) {
		const level = LEVELS[seed % LEVELS.length] as PaperLevel;
		const draft = kind.make({ profiles: BUNDLED, sheet: null }, makeRandom(seed).fork(kind.id), level);
		if (draft.ask.form === 'one')
			items.push({ id: `${kind.id}-00000000`, kind: kind.id, topic: kind.topic, level, ...draft });
	}
	return items;
}

describe('a guesser who goes by the look of the options', () => {
	test('is tried on every kind with one right option', () => {
		expect(kinds.map(({ id }) => id)).toEqual(ONE_RIGHT);
	});

	test.each(kinds)('$id: is right hardly more often than chance', (kind) => {
		// the finder is slow to ask what comes first
		const items = itemsOf(kind, kind.id === 'first-check' ? runs(30, SEEDS) : runs(SEEDS, 10 * SEEDS));
		for (const guess of GUESSES) {
			const { right, chance } = guessed(guess, items);
			// worse than chance helps nobody who takes it
			expect(right - chance, `${guess}: ${right} where chance is ${chance}`).toBeLessThanOrEqual(MOST_OFF);
		}
	});
});
