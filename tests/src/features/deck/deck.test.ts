import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { KIND_IDS, LEVELS } from '../../../../shared/paper/index.ts';
import {
	type Card,
	type Deck,
	deckText,
	merged,
	NO_DECK,
	skillOf,
	skillText,
	withLearnt,
} from '../../../../src/features/deck/deck.ts';
import { readDeck } from '../../../../src/features/deck/reading.ts';
import {
	dueNow,
	nextDue,
	type RecallOutcome,
	recallOf,
	SITTING,
	standingOf,
	withAsked,
} from '../../../../src/features/deck/schedule.ts';
import { runs } from '../../../runs.ts';
import { saidBy } from '../../../shared/thrown.ts';

const DAY = 86_400_000;
const START = Date.UTC(2026, 0, 5, 18);

const anySkill = fc
	.tuple(
		fc.constantFrom(...KIND_IDS),
		fc.constantFrom('tallow-6', 'picket-8', 'cobble', null),
		fc.constantFrom(...LEVELS),
	)
	.map(([kind, about, level]) => skillText({ kind, about, level }));
const anyOutcome = fc.constantFrom<RecallOutcome>('wrong', 'guessed', 'right');

/** Days of practice: each day what is due is asked, and goes as told. */
const anyDeck: fc.Arbitrary<{ deck: Deck; now: number }> = fc
	.tuple(
		fc.uniqueArray(anySkill, { maxLength: 8 }),
		fc.array(fc.tuple(fc.integer({ min: 0, max: 40 }), anyOutcome), { maxLength: 12 }),
	)
	.map(([skills, days]) => {
		let now = START;
		let deck = withLearnt(NO_DECK, skills, now);
		for (const [gap, outcome] of days) {
			now += gap * DAY;
			for (const skill of dueNow(deck, now, 3)) deck = withAsked(deck, skill, outcome, now);
		}
		return { deck, now };
	});

const plain = (deck: Deck) => Object.fromEntries([...deck].toSorted(([a], [b]) => (a < b ? -1 : 1)));

describe('a skill', () => {
	it('is its text and back', () => {
		fc.assert(
			fc.property(anySkill, (text) => {
				const skill = skillOf(text);
				expect(skill && skillText(skill)).toBe(text);
			}),
			{ numRuns: runs(100) },
		);
		for (const text of ['', 'no-such-kind@tallow-6.easy', 'footprint@tallow-6.mild', 'footprint', 'footprint@<b>.easy'])
			expect(skillOf(text)).toBeNull();
	});
});

describe('a deck', () => {
	it('is its text and back', () => {
		fc.assert(
			fc.property(anyDeck, ({ deck }) => {
				const { kept, damaged } = readDeck(deckText(deck));
				expect(damaged).toEqual({});
				expect(plain(kept)).toEqual(plain(deck));
			}),
			{ numRuns: runs(100) },
		);
	});

	it('a damaged card is set apart, and the rest is read', () => {
		const deck = withLearnt(NO_DECK, ['footprint@tallow-6.easy'], START);
		const text = JSON.stringify({
			version: 1,
			cards: { ...Object.fromEntries(deck), 'last-slot@any.easy': { due: 'soon' }, '<script>': {} },
		});
		const { kept, damaged } = readDeck(text);
		expect([...kept.keys()]).toEqual(['footprint@tallow-6.easy']);
		expect(Object.keys(damaged)).toEqual(['last-slot@any.easy', '<script>']);
	});

	it.each(['', '[]', '{"version":1}', '{"version":0,"cards":{}}', 'null', '{"version":1,"cards":[]}'])(
		'%s is no deck, and is said to be none',
		(text) => {
			expect(saidBy(() => readDeck(text))).toContain('This is no review file of Prep Bay, or it’s damaged.');
		},
	);

	it('one of a newer version is refused with what to do', () => {
		expect(saidBy(() => readDeck('{"version":2,"cards":{}}'))).toContain('Load the page again.');
	});

	it('two merge to the same whichever comes first, lose no skill, and one merged with itself is itself', () => {
		fc.assert(
			fc.property(anyDeck, anyDeck, ({ deck: one }, { deck: two }) => {
				const both = merged(one, two);
				expect(plain(merged(two, one))).toEqual(plain(both));
				expect(plain(merged(one, one))).toEqual(plain(one));
				expect(new Set(both.keys())).toEqual(new Set([...one.keys(), ...two.keys()]));
				expect(plain(merged(both, one))).toEqual(plain(both));
			}),
			{ numRuns: runs(100) },
		);
	});

	it('learning again what is known changes nothing', () => {
		fc.assert(
			fc.property(anyDeck, ({ deck, now }) => {
				expect(withLearnt(deck, [...deck.keys()], now)).toBe(deck);
			}),
			{ numRuns: runs(50) },
		);
	});
});

describe('asking', () => {
	it('right puts it off further than a guess, a guess no nearer than wrong; and it is never due in the past', () => {
		fc.assert(
			fc.property(anyDeck, ({ deck, now }) => {
				for (const skill of dueNow(deck, now)) {
					const due = (outcome: RecallOutcome) => withAsked(deck, skill, outcome, now).get(skill)?.due ?? 0;
					expect(due('wrong')).toBeGreaterThan(now);
					expect(due('guessed')).toBeGreaterThanOrEqual(due('wrong'));
					expect(due('right')).toBeGreaterThanOrEqual(due('guessed'));
				}
			}),
			{ numRuns: runs(100) },
		);
	});

	it('of a skill that is not in the deck changes nothing', () => {
		expect(withAsked(NO_DECK, 'footprint@any.easy', 'right', START)).toBe(NO_DECK);
	});

	it('after as many days as its stability it is known nine times in ten (FSRS: what stability means; read)', () => {
		fc.assert(
			fc.property(anyDeck, ({ deck }) => {
				for (const card of deck.values()) {
					if (card.state !== 2 || card.last === null) continue;
					expect(recallOf(card, card.last + card.stability * DAY)).toBeCloseTo(0.9, 6);
					expect(recallOf(card, card.last)).toBeCloseTo(1, 6);
				}
			}),
			{ numRuns: runs(100) },
		);
	});

	it('a first right answer has the third of the published weights for its stability (FSRS 6, default weights; read in the library)', () => {
		const deck = withAsked(withLearnt(NO_DECK, ['footprint@any.easy'], START), 'footprint@any.easy', 'right', START);
		expect(deck.get('footprint@any.easy')?.stability).toBeCloseTo(2.3065, 4);
	});

	it('a clock set back does no harm', () => {
		const skill = 'footprint@any.easy';
		const asked = withAsked(withLearnt(NO_DECK, [skill], START), skill, 'right', START);
		const again = withAsked(asked, skill, 'right', START - 400 * DAY).get(skill) as Card;
		expect(again.last).toBe(START);
		expect(again.due).toBeGreaterThan(START);
		expect(recallOf(again, START - DAY)).toBeGreaterThan(0.99);
	});

	it('known for a year and asked now and then, it is due at most a year on', () => {
		const skill = 'last-slot@cobble.hard';
		let deck = withLearnt(NO_DECK, [skill], START);
		let now = START;
		for (let i = 0; i < 30; i++) {
			deck = withAsked(deck, skill, 'right', now);
			now = deck.get(skill)?.due ?? now;
		}
		// the library puts a right answer a day after a guess, and so may pass its own limit by that day
		expect(deck.get(skill)?.days).toBeLessThanOrEqual(366);
		expect(standingOf(deck.get(skill) as Card, now - DAY)).toBe('known');
		expect(standingOf(deck.get(skill) as Card, now)).toBe('fading');
	});
});

describe('a sitting', () => {
	it('asks what is due and nothing else, no more than five minutes’ worth, few of it new', () => {
		fc.assert(
			fc.property(anyDeck, ({ deck, now }) => {
				const asked = dueNow(deck, now);
				expect(new Set(asked).size).toBe(asked.length);
				expect(asked.length).toBeLessThanOrEqual(SITTING.most);
				expect(asked.every((skill) => (deck.get(skill)?.due ?? Infinity) <= now)).toBe(true);
				expect(asked.filter((skill) => deck.get(skill)?.state === 0).length).toBeLessThanOrEqual(SITTING.fresh);
				const next = nextDue(deck);
				expect(next === null).toBe(deck.size === 0);
				if (asked.length === 0 && next !== null) expect(next).toBeGreaterThan(now);
			}),
			{ numRuns: runs(150) },
		);
	});

	it('keeps two of a kind apart where it can', () => {
		const deck = withLearnt(
			NO_DECK,
			['footprint@cobble.easy', 'footprint@picket-8.easy', 'last-slot@cobble.easy', 'next-free@cobble.easy'],
			START,
		);
		const kinds = dueNow(deck, START).map((skill) => skill.split('@')[0]);
		expect(kinds).toEqual(['footprint', 'last-slot', 'footprint', 'next-free']);
	});
});
