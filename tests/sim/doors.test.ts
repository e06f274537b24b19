import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isInputError } from '../../shared/error/index.ts';
import { type Answer, analyse, markPaper, readRecipe, setPaper } from '../../shared/paper/index.ts';
import { bundledRig } from '../../shared/sheet/index.ts';
import { DRILL_IDS, markDrill, shortestWay } from '../../sim/drill/index.ts';
import { openFinder, sequence } from '../../sim/finder/index.ts';
import { openRig, replay, why } from '../../sim/rig/index.ts';
import { errorText } from '../../src/wording/index.ts';
import { runs } from '../runs.ts';
import { makeDrill } from './drill/made.ts';
import { anyEvent } from './rig/events.ts';
import { spoilt } from './spoilt.ts';

const sheet = bundledRig('four-in-line');
const small = bundledRig('one-wash');

/** Whatever is handed in, a door opens or says in a sentence why not; and no sheet, log or drill is changed by it. */
function holds<T>(given: fc.Arbitrary<T>, door: (given: T) => unknown, usual = 300): void {
	fc.assert(
		fc.property(given, (each) => {
			try {
				door(each);
			} catch (error) {
				if (!isInputError(error)) throw error;
				expect(error.code).toMatch(/^[a-z]+(\.[a-z-]+)+$/);
				expect(errorText(error)).toMatch(/^\S.*\.$/s);
			}
		}),
		{ numRuns: runs(usual) },
	);
}

// symptom: a script that handed a door nonsense got 'cannot read properties of undefined', or a rig with NaN in it.
// cause: what a rig is handed was held to the schemas in the page alone
describe('a rig', () => {
	const fault = { fault: 'battery-flat', place: 'wash-1' };
	test('opens, or refuses, any sheet', () => holds(spoilt(sheet), openRig));
	test('opens, or refuses, with any options', () =>
		holds(spoilt({ faults: [fault] }), (options) => openRig(small, options)));
	test('takes, or refuses, any event', () =>
		holds(
			anyEvent(sheet).chain((event) => spoilt(event)),
			(event) => {
				const rig = openRig(sheet);
				rig.send(event);
				rig.wait(5000);
				for (const { id } of sheet.fixtures) {
					const { whole } = rig.look(id).light;
					expect(whole.brightness).toBeGreaterThanOrEqual(0);
					why(rig, id);
				}
			},
			1000,
		));
	test('plays, or refuses, any log', () =>
		holds(fc.array(anyEvent(sheet), { maxLength: 5 }).chain(spoilt), (log) => replay(sheet, log)));
	test('is waited with, looked at and asked why with anything', () => {
		const rig = openRig(small);
		holds(fc.anything(), (any) => rig.wait(any as number));
		holds(fc.anything(), (any) => rig.look(any as string));
		holds(fc.anything(), (any) => why(rig, any as string));
	});
});

describe('a drill', () => {
	const drill = fc.tuple(fc.constantFrom(...DRILL_IDS), fc.nat(500)).map(([kind, seed]) => makeDrill(kind, seed));
	test('is made of any kind and seed', () =>
		holds(fc.tuple(fc.anything(), fc.anything()), ([kind, seed]) => makeDrill(kind as never, seed as number)));
	test('is marked, or refused, with any part of it spoilt', () =>
		holds(drill.chain(spoilt), (each) => markDrill(each, []), 80));
	test('has its way found, or is refused, with any part of it spoilt', () =>
		holds(drill.chain(spoilt), shortestWay, 80));
	test('is marked, or refused, by any log', () => {
		const some = makeDrill('held-colour', 1);
		const way = shortestWay(some);
		holds(spoilt(way), (log) => markDrill(some, log));
		holds(spoilt(way), (log) => shortestWay(some, log));
	});
});

describe('a finder', () => {
	test('opens on any complaint, or refuses it', () =>
		holds(
			spoilt({ kind: 'dark', fixture: 'wash-1' } as const),
			(complaint) => openFinder(small, complaint as never),
			60,
		));
	test('takes, or refuses, any answer', () => {
		const finder = openFinder(small, { kind: 'dark', fixture: 'wash-1' });
		const check = finder.next()?.check.id ?? '';
		holds(fc.anything(), (any) => finder.answer(any as string, any as string), 60);
		holds(fc.anything(), (any) => finder.answer(check, any as string), 60);
		holds(fc.anything(), (any) => finder.cannot(any as string), 60);
		expect(finder.steps).toEqual([]);
	});
	test('solves, or refuses, any problem', () => {
		const problem = {
			weights: [0.5, 0.3, 0.2],
			costs: [1, 2],
			outcomes: [
				[0, 1, 1],
				['a', 'a', 'b'],
			],
		};
		for (const policy of [undefined, 'exact', 'gain'] as const)
			holds(spoilt(problem), (each) => sequence(each, policy));
		holds(fc.anything(), (any) => sequence(problem, any as never));
	});
});

describe('a paper', () => {
	const recipe = { version: 1, title: 'Spoilt', count: 3, kinds: ['last-slot', 'function-values'] };
	const paper = setPaper(readRecipe(recipe), 5);
	const answers = Object.fromEntries(
		paper.items.map(({ id, ask }): [string, Answer] => [
			id,
			ask.form === 'several' ? { form: 'several', chose: [ask.options[0]?.id ?? ''] } : { form: 'number', value: 5 },
		]),
	);
	const mark = markPaper(paper, {});
	test('is set, or refused, of any recipe', () => holds(spoilt(recipe), (each) => setPaper(each as never, 5)));
	test('is set, or refused, of any seed', () =>
		holds(fc.anything(), (seed) => setPaper(readRecipe(recipe), seed as number)));
	test('is marked, or refused, with any part of it spoilt', () => holds(spoilt(paper), (each) => markPaper(each, {})));
	test('is marked, or refused, by any answers', () => {
		holds(fc.anything(), (any) => markPaper(paper, any as never));
		holds(spoilt(answers), (each) => markPaper(paper, each));
	});
	test('is analysed, or refused, of any marks', () => holds(spoilt([mark, mark]), analyse));
});
