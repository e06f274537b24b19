import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../../shared/paper/index.ts';
import type { ItemMark, PaperMark } from '../../../../shared/paper/types.ts';
import { makeRandom, type Random } from '../../../../shared/random/index.ts';
import { runs } from '../../../runs.ts';

// What is said of a class, held against classes whose truth is known: people and questions drawn by chance, answers by both.

/** A mark from who had which right; all on one topic unless told. */
function marked(scores: readonly number[], topicOf: (at: number) => ItemMark['topic'] = () => 'levels'): PaperMark {
	const items = scores.map(
		(hit, at): ItemMark => ({
			item: `q-${at}`,
			kind: 'footprint',
			topic: topicOf(at),
			level: 'easy',
			answered: true,
			right: hit === 1,
			score: hit === 1 ? 1 : 0,
			share: hit,
			looksLike: null,
			gave: String(hit),
			practical: null,
		}),
	);
	const score = scores.reduce((sum, hit) => sum + hit, 0);
	return { paper: 'p', items, score, of: items.length, percent: 0, passed: false, misfits: [] };
}

/** Box and Muller 1958. */
const normal = (chance: Random): number =>
	Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());
const logistic = (x: number): number => 1 / (1 + Math.exp(-x));
const several = <T>(n: number, make: (at: number) => T): T[] => Array.from({ length: n }, (_, at) => make(at));

/** How likely each person is to have each question right: by how able they are and how easy it is (Rasch 1960). */
function chances(chance: Random, people: number, questions: number, world: World): number[][] {
	const ease = several(questions, () => world.ease + world.questions * normal(chance));
	return several(people, () => {
		const able = world.people * normal(chance);
		return ease.map((easy) => logistic(able + easy));
	});
}
interface World {
	/** How easy on the whole, and how much people and questions differ: on the logistic scale. */
	readonly ease: number;
	readonly people: number;
	readonly questions: number;
}
const answered = (chance: Random, likely: readonly (readonly number[])[]): PaperMark[] =>
	likely.map((row) => marked(row.map((p) => (chance.next() < p ? 1 : 0))));

describe('how far a second paper would move a score', () => {
	// Symptom: 'two times in three, within so many questions' was true 52 times in 100. Cause: the error of one score was told as that
	// of two, which is √2 times as large (Harvill 1991; Dudek 1979, the continuing misinterpretation of the standard error).

	test('one standard error between two scores holds 52 in 100, not two in three: erf(1/2) (DLMF 7.2, from memory)', () => {
		// the share of a normal difference of variance 2 that lies within 1, summed step by step
		let inside = 0;
		for (let x = -0.9995; x < 1; x += 0.001) inside += (Math.exp(-(x ** 2) / 4) / Math.sqrt(4 * Math.PI)) * 0.001;
		expect(inside).toBeCloseTo(0.5205, 4);
	});

	const worlds: readonly World[] = [
		{ ease: 0.8, people: 0, questions: 1 },
		{ ease: 0.8, people: 0.7, questions: 1 },
		{ ease: 0.4, people: 1.5, questions: 1 },
	];
	for (const [people, questions] of [
		[5, 10],
		[10, 20],
		[12, 40],
		[30, 8],
		[30, 20],
	] as const)
		test(`${people} people, ${questions} questions: two people in three at least, on a paper just as hard`, () => {
			for (const [at, world] of worlds.entries()) {
				const chance = makeRandom(100 * at + people);
				let [within, oneError, of] = [0, 0, 0];
				for (let round = 0; round < runs(Math.ceil(6000 / people), Math.ceil(30_000 / people)); round++) {
					const likely = chances(chance, people, questions, world);
					const [one, two] = [answered(chance, likely), answered(chance, likely)];
					const { again, error } = analyse(one);
					if (again === null || error === null) continue;
					for (const [person, { score }] of one.entries()) {
						const moved = Math.abs(score - (two[person]?.score ?? 0));
						of++;
						if (moved <= again) within++;
						if (moved <= error) oneError++;
					}
				}
				// what was said before
				if (questions >= 20) expect(oneError / of).toBeLessThan(0.6);
				expect(within / of).toBeGreaterThan(2 / 3 - 0.01);
				// and no wider than whole questions make it
				expect(within / of).toBeLessThan(0.87);
			}
		});
});

describe('where a topic may stand', () => {
	// Symptom: the line through a topic's bar held the truth 42 to 80 times in 100, and said 95. Cause: thirty answers of six people to
	// five questions were counted as thirty people's: a person's answers go together, and so do the answers to a question.

	const WORLDS: readonly World[] = [0, 1.2, 2.5].flatMap((ease) => [
		{ ease, people: 0.01, questions: 0.01 },
		{ ease, people: 1, questions: 0.01 },
		{ ease, people: 1, questions: 0.7 },
		{ ease, people: 1.5, questions: 1.2 },
	]);
	const truthOf = ({ ease, people, questions }: World): number => {
		// over all people and questions there are: a normal weight, summed step by step
		const spread = Math.hypot(people, questions);
		let sum = 0;
		for (let z = -7.995; z < 8; z += 0.01) sum += logistic(ease + spread * z) * Math.exp(-(z ** 2) / 2) * 0.01;
		return sum / Math.sqrt(2 * Math.PI);
	};
	for (const [people, questions] of [
		[2, 2],
		[4, 3],
		[8, 2],
		[12, 3],
		[12, 5],
		[30, 3],
		[30, 6],
		[60, 8],
	] as const)
		test(`${people} people, ${questions} questions: the line holds the true share 95 times in 100`, () => {
			const found = WORLDS.map((world, at) => {
				const chance = makeRandom(1000 * at + people);
				const truth = truthOf(world);
				const rounds = runs(people < 30 ? 400 : 150);
				let held = 0;
				for (let round = 0; round < rounds; round++) {
					const [topic] = analyse(answered(chance, chances(chance, people, questions, world))).topics;
					const { from, to } = topic?.interval ?? { from: 1, to: 0 };
					if (from <= truth && truth <= to) held++;
				}
				return held / rounds;
			});
			console.log(`${people} people, ${questions} questions: held ${found.map((share) => share.toFixed(2)).join(' ')}`);
			// of the worlds the worst, and by chance: the seeds are fixed, so it is the same each time
			expect(Math.min(...found)).toBeGreaterThan(0.925);
			expect(found.reduce((sum, share) => sum + share, 0) / found.length).toBeGreaterThan(0.95);
		});

	test('one person’s topic is told by the exact interval, which holds the truth 95 times in 100 at least', () => {
		for (const questions of [1, 2, 3, 5, 8, 20])
			for (const truth of [0.1, 0.5, 0.7, 0.93]) {
				const chance = makeRandom(questions);
				const rounds = runs(400);
				let held = 0;
				for (let round = 0; round < rounds; round++) {
					const [person] = analyse([marked(several(questions, () => (chance.next() < truth ? 1 : 0)))]).persons;
					const { from, to } = person?.topics[0]?.interval ?? { from: 1, to: 0 };
					if (from <= truth && truth <= to) held++;
				}
				expect(held / rounds, `${questions} at ${truth}`).toBeGreaterThan(0.925);
			}
	});

	test('what is too little to tell by is called so, and of what there is too little', () => {
		const all = (people: number, questions: number) =>
			analyse(several(people, (p) => marked(several(questions, (q) => ((p + q) % 3 === 0 ? 0 : 1))))).topics[0];
		expect(all(1, 9)).toMatchObject({ short: 'people', interval: { from: 0, to: 1 } });
		expect(all(30, 1)).toMatchObject({ short: 'questions', interval: { from: 0, to: 1 } });
		expect(all(30, 9)?.short).toBeNull();
		// by questions of which each was easy or hard for all, and by people of whom each had all or none
		expect(analyse(several(20, () => marked([1, 0, 1, 0]))).topics[0]?.short).toBe('questions');
		expect(analyse(several(4, (p) => marked(several(12, () => p % 2)))).topics[0]?.short).toBe('people');
	});

	test('all right or all wrong: the share that the fewer of people and questions would still be all of, 1 time in 40', () => {
		const [topic] = analyse(several(12, () => marked(several(6, () => 1)))).topics;
		expect(topic?.interval.to).toBe(1);
		expect((topic?.interval.from ?? 0) ** 6).toBeCloseTo(0.025, 6);
		const [none] = analyse(several(5, () => marked(several(6, () => 0)))).topics;
		expect(none?.interval.from).toBe(0);
		expect((1 - (none?.interval.to ?? 0)) ** 5).toBeCloseTo(0.025, 6);
	});
});

describe('how a question tells people apart', () => {
	// Symptom: a question's discrimination changed when people were renamed. Cause: of people with one score, who came first by name
	// was put in the group.

	const classes = fc
		.tuple(fc.integer({ min: 4, max: 12 }), fc.integer({ min: 2, max: 6 }))
		.chain(([people, questions]) =>
			fc.tuple(
				fc.array(fc.array(fc.integer({ min: 0, max: 1 }), { minLength: questions, maxLength: questions }), {
					minLength: people,
					maxLength: people,
				}),
				fc.array(fc.nat(), { minLength: people, maxLength: people }),
			),
		);

	test('does not hang on who is called what, or came first', () => {
		fc.assert(
			fc.property(classes, ([rows, keys]) => {
				const order = rows.map((_, at) => at).sort((a, b) => (keys[a] ?? 0) - (keys[b] ?? 0));
				const told = (all: readonly (readonly number[])[]) =>
					analyse(all.map((row) => marked(row))).items.map(({ discrimination, finding, right }) => [
						discrimination,
						finding,
						right,
					]);
				expect(told(order.map((at) => rows[at] ?? []))).toEqual(told(rows));
			}),
			{ numRuns: runs(300) },
		);
	});

	test('is the mean over every way in which the tied could have been ranked (Kendall 1945 on ties, from memory)', () => {
		/** Every order of people from lowest to highest. */
		function* orders(totals: readonly number[], left: readonly number[]): Generator<number[]> {
			if (left.length === 0) yield [];
			const least = Math.min(...left.map((person) => totals[person] ?? 0));
			for (const person of left)
				if (totals[person] === least)
					for (const rest of orders(
						totals,
						left.filter((each) => each !== person),
					))
						yield [person, ...rest];
		}
		fc.assert(
			fc.property(
				fc.array(fc.array(fc.integer({ min: 0, max: 1 }), { minLength: 3, maxLength: 3 }), {
					minLength: 4,
					maxLength: 6,
				}),
				(rows) => {
					const totals = rows.map((row) => row.reduce((sum, hit) => sum + hit, 0));
					const { items } = analyse(rows.map((row) => marked(row)));
					const size = Math.max(1, Math.round(rows.length * 0.27));
					for (const [at, { discrimination }] of items.entries()) {
						if (new Set(totals).size === 1) {
							expect(discrimination).toBeNull();
							continue;
						}
						let [sum, ways] = [0, 0];
						const hits = (people: readonly number[]) =>
							people.reduce((all, person) => all + (rows[person]?.[at] ?? 0), 0);
						for (const order of orders(
							totals,
							rows.map((_, person) => person),
						)) {
							sum += (hits(order.slice(-size)) - hits(order.slice(0, size))) / size;
							ways++;
						}
						expect(discrimination).toBeCloseTo(sum / ways, 9);
					}
				},
			),
			{ numRuns: runs(60) },
		);
	});
});
