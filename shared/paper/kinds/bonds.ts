import { type Bond, type BondFlaw, flawsOf, MOST_SLACK } from '../bond.ts';
import { say, severalOf, type WrongAnswer } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type PaperLevel } from '../ids.ts';
import type { Chance, QuestionKind } from '../types.ts';

/** Bonds to look at, and flaws that can be among them: harder ones have to be looked for. */
const COUNTS: Readonly<Record<PaperLevel, number>> = { easy: 4, middle: 5, hard: 6 };
const FLAWS: Readonly<Record<PaperLevel, readonly BondFlaw[]>> = {
	easy: ['around', 'open', 'worn'],
	middle: ['around', 'to', 'long', 'open', 'worn'],
	hard: ['to', 'long', 'rating', 'open'],
};

/** A bond with nothing wrong that can be read off. */
const goodBond = (chance: Chance, kilograms: number): Bond => ({
	around: chance.pick(['pipe', 'truss-chord'] as const),
	to: 'makers-point',
	slack: chance.int(4, MOST_SLACK - 3),
	rated: kilograms * chance.int(2, 5),
	closed: true,
	state: 'good',
});

/** The same with that one flaw. */
function flawed(bond: Bond, flaw: BondFlaw, chance: Chance, kilograms: number): Bond {
	switch (flaw) {
		case 'around':
			return { ...bond, around: chance.pick(['conduit', 'tray'] as const) };
		case 'to':
			return { ...bond, to: chance.pick(['yoke', 'handle'] as const) };
		case 'long':
			return { ...bond, slack: chance.int(2 * MOST_SLACK, 6 * MOST_SLACK) };
		case 'rating':
			return { ...bond, rated: chance.pick([0, Math.ceil(kilograms / 2)]) };
		case 'open':
			return { ...bond, closed: false };
		default:
			return { ...bond, state: chance.pick(['frayed', 'shocked'] as const) };
	}
}

const label = ({ around, to, slack, rated, closed, state }: Bond) =>
	say('bond', { around, to, slack, rated, closed, state });

/** Which of these bonds are wrong? Easy: four, plainly; middle: five; hard: six, and the tag has to be read. */
export const bondCheck: QuestionKind = {
	id: 'bond-check',
	topic: KIND_TOPICS['bond-check'],
	forms: ['several'],
	levels: LEVELS,
	fits: () => true,
	make(_ground, chance, level) {
		const kilograms = chance.int(4, 18);
		const count = COUNTS[level];
		const bad = chance.int(1, count - 2);
		const flaws = Array.from({ length: bad }, () => chance.pick(FLAWS[level]));
		const bonds: Bond[] = [];
		// no two that read alike
		while (bonds.length < count) {
			const flaw = flaws[bonds.length];
			const good = goodBond(chance, kilograms);
			const bond = flaw ? flawed(good, flaw, chance, kilograms) : good;
			if (bonds.every((each) => JSON.stringify(each) !== JSON.stringify(bond))) bonds.push(bond);
		}
		const isWrong = (bond: Bond): boolean => flawsOf(bond, kilograms).length > 0;
		const wrong = bonds.filter(isWrong);
		const without = (flaw: BondFlaw): Bond[] => wrong.filter((bond) => !flawsOf(bond, kilograms).includes(flaw));
		const found = [...new Set(wrong.flatMap((bond) => flawsOf(bond, kilograms)))];
		const wrongs: WrongAnswer<readonly Bond[]>[] = [
			...found.map((flaw): WrongAnswer<readonly Bond[]> => ['some-missed', without(flaw)]),
			['bonds-the-other-way', bonds.filter((bond) => !isWrong(bond))],
			['one-too-many', bonds],
		];
		return severalOf(
			chance,
			{ facts: { kilograms, slack: MOST_SLACK, flaws: found, count: wrong.length, of: count } },
			bonds,
			{ label, isRight: isWrong, wrongs },
		);
	},
};
