import { describe, expect, expectTypeOf, it } from 'vitest';
import { errors, type measures, type parts } from '#words/errors/index.ts';
import type { Says } from '#words/rig/index.ts';
import {
	lineOhms,
	nthAddress,
	packetMicroseconds,
	rdmChecksum,
	requireAddress,
	switchesUp,
} from '../../../shared/dmx/index.ts';
import { type ErrorCode, type ErrorFacts, InputError } from '../../../shared/error/index.ts';
import { LAWS } from '../../../shared/invent/index.ts';
import { analyse, setPaper } from '../../../shared/paper/index.ts';
import { BUNDLED, bundledProfile, type Profile, readProfile } from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { bundledRig, quickSheet, readSheet } from '../../../shared/sheet/index.ts';
import { makeDrill, makeTask, markDrill } from '../../../sim/drill/index.ts';
import { screenPace, staticLevels } from '../../../sim/light/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import { readDeck } from '../../../src/features/deck/reading.ts';
import { invent } from '../../../src/features/invented/index.ts';
import { readLesson, timetableOf } from '../../../src/features/lessons/index.ts';
import { qrDrawing } from '../../../src/features/papers/exchange/qr.ts';
import { readSlip } from '../../../src/features/papers/exchange/schema.ts';
import { readSitting } from '../../../src/features/papers/routes.ts';
import { errorText } from '../../../src/wording/index.ts';
import { filesUnder, textOf } from '../../house/tree.ts';
import { thrownBy } from '../../shared/thrown.ts';

type HoleName<Hole> = Hole extends `${infer Fact} as ${string}`
	? Fact
	: Hole extends `${infer Fact}?${string}`
		? Fact
		: Hole;
/** The facts that a template asks for. */
type Holes<Text> = Text extends `${string}{${infer Hole}}${infer Rest}` ? HoleName<Hole> | Holes<Rest> : never;
type Texts<Words> = Words extends string
	? Words
	: Words extends readonly { readonly says: infer Text }[]
		? Text
		: never;
type KeysOf<Facts> = Facts extends unknown ? keyof Facts : never;
/** Codes that these words leave out. */
type Unworded<Words> = Exclude<ErrorCode, keyof Words>;
/** Words of these that are for no code. */
type Spare<Words> = Exclude<keyof Words, ErrorCode>;
/** Facts that the words of a code ask for and no error of that code carries. */
type NotGiven<Words> = {
	[Code in ErrorCode & keyof Words]: Exclude<Holes<Texts<Words[Code]>>, KeysOf<ErrorFacts[Code]> | 'path'>;
}[ErrorCode & keyof Words];
type Of<Facts> = Facts extends { readonly expected: string; readonly of: infer Name } ? Name : never;
/** Names in `of` that have a word neither as a measure nor as a part. */
type Nameless<Named> = Exclude<Of<ErrorFacts[ErrorCode]>, Named | Unnamed>;

type Words = typeof errors;
type Named = keyof typeof measures | keyof typeof parts;

it('every code has words, no words are spare, and no template asks for a fact that is not given: by type', () => {
	expectTypeOf<Unworded<Words>>().toEqualTypeOf<never>();
	expectTypeOf<Spare<Words>>().toEqualTypeOf<never>();
	expectTypeOf<NotGiven<Words>>().toEqualTypeOf<never>();
	expectTypeOf<Nameless<Named>>().toEqualTypeOf<never>();
});

// a rule that names no slip would hold whatever the words are
it('each of these rules names a slip made on purpose: by type', () => {
	type With<Text> = Omit<Words, 'random.seed'> & { readonly 'random.seed': Text };
	expectTypeOf<Unworded<Omit<Words, 'random.seed'>>>().toEqualTypeOf<'random.seed'>();
	expectTypeOf<Spare<Words & { readonly 'random.sead': 'A seed.' }>>().toEqualTypeOf<'random.sead'>();
	expectTypeOf<NotGiven<With<'{of as measure} up to {hi} of {path}; found {found}.'>>>().toEqualTypeOf<never>();
	expectTypeOf<NotGiven<With<'A seed up to {most}; found {found}.'>>>().toEqualTypeOf<'most'>();
	expectTypeOf<NotGiven<With<'A seed[ up to {most?}]; found {seen as found}.'>>>().toEqualTypeOf<'most' | 'seen'>();
	expectTypeOf<
		NotGiven<With<readonly [{ readonly says: 'A seed.' }, { readonly says: 'A seed, not {found} or {drawn}.' }]>>
	>().toEqualTypeOf<'drawn'>();
	expectTypeOf<Nameless<Exclude<Named, 'seed'>>>().toEqualTypeOf<'seed'>();
	// and where the site words an error, a code without words does not pass for all of them
	expectTypeOf<Omit<Words, 'random.seed'>>().not.toExtend<Readonly<Record<ErrorCode, Says>>>();
	expectTypeOf<Words>().toExtend<Readonly<Record<ErrorCode, Says>>>();
});

/** Lists whose wording is picked by their name, which is not said. */
type Unnamed = 'switches' | 'outcomes-of-suspects' | 'repair-seconds' | 'asked';

const dip = BUNDLED.find(({ panel }) => panel.kind === 'dip') as Profile;
const mains = BUNDLED.find(({ power }) => !power.battery) as Profile;
const tallow = bundledProfile('tallow-6') as Profile;
const alone = (profile: Profile) =>
	openRig({ ...quickSheet({ count: 1, linked: 'alone', profile: profile.id }), remote: null });
const nameOf = (profile: Profile): string => `${profile.shape}-1`;
const sheet = bundledRig('one-wash');
const drill = makeDrill('defaults', 1);

/** How each is provoked whose name stands in no other test. */
const provoked: Partial<Record<ErrorCode, () => unknown>> = {
	'byte.range': () => rdmChecksum([256]),
	'slots.range': () => packetMicroseconds(513),
	'count.range': () => nthAddress(1, 1, 0),
	'terminator.range': () => lineOhms(-1, 0),
	'timing.range': () => packetMicroseconds(1, { break: 91 }),
	'dip.switch': () => switchesUp([0]),
	'random.empty': () => makeRandom(1).pick([]),
	'paper.unseen': () => setPaper({ version: 2, title: 'x', count: 1, unseen: 'en-0' }, 1),
	'invent.words': () => invent(1, 'easy', { laws: LAWS }),
	'analyse.marks': () => analyse(3 as never),
	'held.index': () => staticLevels(tallow, 99, new Float32Array(tallow.cells * tallow.emitters.length)),
	'programme.index': () => screenPace(tallow, 99, 1),
	'rig.options': () => openRig(sheet, { faults: 3 as never }),
	'event.wait': () => openRig(sheet).send({ type: 'clock.wait', ms: 1 }),
	'event.box': () => openRig(sheet).send({ type: 'box.switch', box: 'fan', on: false }),
	'event.settings': () => alone(dip).send({ type: 'settings.become', fixture: nameOf(dip), change: { level: 3 } }),
	'event.charge': () => alone(mains).send({ type: 'charge.become', fixture: nameOf(mains), charge: 1 }),
	'event.remote': () => alone(tallow).send({ type: 'remote.press', button: 'light' }),
	'event.terminator': () => openRig(sheet).send({ type: 'terminator.remove', port: 'nobody:out' }),
	'drill.kind': () => makeDrill('nothing' as never, 1),
	'drill.shape': () => markDrill({ ...drill, hands: ['foot' as never] }, []),
	'drill.fixture': () => markDrill({ ...drill, goal: [{ is: 'on', fixture: 'nobody' }] }, []),
	'task.solved': () => makeTask({ scene: 'bench', rig: sheet, hands: ['panel'], goal: [] }),
	'lesson.shape': () => readLesson({}, 'a-lesson'),
	'plan.lesson': () => timetableOf({ id: 'plan', pace: 1, rows: ['juggling'] } as never, []),
	'review.newer': () => readDeck('{"version":2,"cards":{}}'),
	'sitting.damaged': () => readSitting('{'),
	'handed.shape': () => readSlip({ version: 1, seed: -1 }),
	'qr.long': () => qrDrawing('x'.repeat(3000)),
};

/** And where, for those whose name is put together, or that take a whole page: the test, and what it says of them. */
const elsewhere: Partial<Record<ErrorCode, readonly [test: string, says: string]>> = {
	'log.slow': ['tests/src/features/rig/link.test.ts', 'more history than the device can play'],
	'file.newer': ['tests/src/features/bench/file.spec.ts', 'saved by a newer Prep Bay'],
	'file.damaged': ['tests/src/features/bench/file.spec.ts', 'holds no bench of Prep Bay'],
	'log.stopped': ['tests/src/features/rig/link.test.ts', 'You stopped this rig'],
	'hidden.rig': ['tests/site/hidden.spec.ts', 'a bad number and a bad link get a sentence each'],
	'casefile.rig': ['tests/src/features/fault-tree/fit.test.ts', 'No bundled rig is called'],
	'casefile.none': ['tests/src/features/fault-tree/fit.test.ts', 'so there’s no tree'],
	'sheet.crowded': ['tests/src/features/finder/store.test.ts', 'fixtures and the finder works with'],
	'papers.sheet': ['tests/src/features/papers/work.test.ts', 'work.pasted('],
	'papers.not-paper': ['tests/src/features/papers/work.test.ts', 'work.open('],
	'qti.empty': ['tests/published/papers-qti.test.ts', 'done on the bench'],
	'handed.altered': ['tests/src/features/papers/exchange/store.test.ts', 'isn’t as Prep Bay writes it'],
	'handed.damaged': ['tests/src/features/papers/exchange/altered.test.ts', 'each a clear sentence'],
	'handed.many': ['tests/src/features/papers/exchange/altered.test.ts', 'each a clear sentence'],
	'qr.none': ['tests/src/features/papers/exchange/scan/camera.spec.ts', 'with no code in it gives a sentence'],
	'qr.slow': ['tests/src/features/papers/exchange/scan/noise.spec.ts', 'comes to an end, and gives a sentence'],
	'camera.busy': ['tests/src/features/papers/exchange/scan/openCamera.test.ts', 'troubleOf(failing(name))'],
};

/** What no test provokes yet: it takes a device that fails, or content of ours that is wrong. Each is filled below as it is thrown. */
const unprovoked: { readonly [Code in ErrorCode]?: ErrorFacts[Code] } = {
	'drill.stuck': { trouble: 'cannot-be-finished' },
	'lesson.bench': { trouble: 'no-such-fixture', id: 'wash-9' },
	'lesson.try': { trouble: 'too-few-options', ask: 'What now?' },
	'lesson.goal': { trouble: 'no-such-brightness', goal: '{"is":"lux"}' },
	'lesson.id': { trouble: 'not-its-file', file: 'bands', id: 'band' },
	'lesson.task': { trouble: 'log-before-task' },
	'lesson.checks': { trouble: 'nothing-to-ask', lesson: 'bands', kind: 'band-edge' },
	'case.lost': { trouble: 'no-end', id: 'one' },
	'log.full': { trouble: 'full' },
	'sheet.bundled': { trouble: 'no-such-rig', id: 'barn' },
	'finder.kept': { trouble: 'no-such-fixture' },
	'handed.unread': { trouble: 'unreadable' },
	'qr.stopped': {},
	'qr.picture': {},
	'qr.unfetched': {},
	'camera.stopped': {},
};

const codes = Object.keys(errors) as ErrorCode[];
/** A sentence or more, with no hole left open and nothing unnamed in it. */
const SENTENCE = /^(?!.*(undefined|\[object|\{\w+( as \w+)?\}))\S.*\.$/s;

describe('every code', () => {
	const tests = filesUnder('tests', ['.ts', '.tsx'])
		.filter((file) => !file.endsWith('wording/error.test.ts'))
		.map((file) => textOf(file))
		.join('\n');

	it('is provoked in a test, or is known not to be', () => {
		const loose = codes.filter(
			(code) => !(code in provoked || code in elsewhere || code in unprovoked || tests.includes(`'${code}'`)),
		);
		expect(loose).toEqual([]);
		for (const [file, says] of Object.values(elsewhere)) expect(textOf(file), file).toContain(says);
	});

	it.each(Object.entries(provoked))('%s is thrown, and worded', (code, act) => {
		const error = thrownBy(act);
		expect(error.code).toBe(code);
		expect(errorText(error)).toMatch(SENTENCE);
		expect(error.message).toMatch(/^[A-Z].*\.$/s);
		expect(JSON.parse(JSON.stringify(error.facts))).toEqual(error.facts);
	});

	it.each(Object.entries(unprovoked))('%s is worded as it is thrown', (code, facts) => {
		expect(errorText({ code: code as ErrorCode, path: '', facts: facts as ErrorFacts[ErrorCode] })).toMatch(SENTENCE);
	});

	it('is lower case, words joined by hyphens and one dot', () => {
		for (const code of codes) expect(code).toMatch(/^[a-z0-9-]+\.[a-z0-9-]+$/);
	});
});

describe('the words of a shape that is off', () => {
	const shapeOf = (puts: object) => thrownBy(() => readProfile({ ...tallow, ...puts }));
	it.each([
		[{ colour: 'red' }, 'colour', 'unknown-name', 'expected no value of that name, found "colour"'],
		[{ id: undefined }, 'id', 'string', 'expected text, found nothing'],
		[{ cells: 65 }, 'cells', 'max_value', 'expected 64 or less, found 65'],
		[{ cells: 'six' }, 'cells', 'number', 'expected a number, found "six"'],
		[{ version: 2 }, 'version', 'exactly', 'expected 1, found 2'],
		[{ follows: 'me' }, 'follows', 'one-of', 'expected one of "slot-one", "own-address", found "me"'],
		[{ modes: {} }, 'modes', 'array', 'expected a list, found something of type object'],
		[{ name: '' }, 'name', 'min_length', 'expected a length of 1 or more, found 0'],
	])('%j', (puts, path, rule, says) => {
		const error = shapeOf(puts);
		expect(error).toMatchObject({ code: 'profile.shape', path, facts: { expected: 'shape', rule } });
		expect(errorText(error)).toBe(`The profile doesn’t fit at ${path}: ${says}. Fix that place and read it again.`);
	});

	it('say where in a sheet its own profile is off', () => {
		const own = { ...tallow, held: [...tallow.held, tallow.held[0]] };
		const error = thrownBy(() => readSheet({ ...sheet, profiles: [own] }));
		expect(error).toMatchObject({
			code: 'profile.id',
			path: expect.stringMatching(/^profiles\[0\]\.held\[\d+\]\.id$/),
		});
		expect(errorText(error)).toMatch(/^Two of them are called '.*'\. Ids are used once\.$/);
	});
});

it('an error sent as plain data is worded the same', () => {
	const error = thrownBy(() => requireAddress(513));
	const { code, path, facts } = JSON.parse(JSON.stringify(error)) as InputError;
	expect(errorText({ code, path, facts })).toBe('A start address is a whole number from 1 to 512; found 513.');
	expect(errorText(new InputError(code, path, facts))).toBe(errorText(error));
});
