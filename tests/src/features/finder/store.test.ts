import { describe, expect, test } from 'vitest';
import { errors } from '#words/errors/index.ts';
import { finderWords } from '#words/finder/index.ts';
import { bundledRig } from '../../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../../sim/event/index.ts';
import { faultyWitness, openOutcomes } from '../../../../sim/finder/index.ts';
import { CannotRun } from '../../../../src/engine/index.ts';
import type { FinderStore } from '../../../../src/features/finder/store.ts';
import { linkOf, MOST } from '../../../../src/features/rig/index.ts';
import { asidesIn, KEPT } from '../../../../src/storage/index.ts';
import { memory, refuses } from '../../storage/memory.ts';
import { storeOn } from './parts.ts';

/** Lays out four washes on a desk and complains that the third is dark. */
async function dark(store: FinderStore): Promise<void> {
	await store.open();
	await store.choose({ kind: 'bundled', id: 'four-in-line' });
	await store.pickFixture('wash-3');
	await store.pickComplaint('dark');
}

/** Answers from a rig with the third wash switched off, until a repair has helped. */
async function walkToEnd(store: FinderStore): Promise<void> {
	const sheet = bundledRig('four-in-line');
	const bench = openOutcomes(sheet, { kind: 'dark', fixture: 'wash-3' });
	const rig = faultyWitness(bench.meant, [{ fault: 'switched-off', place: 'wash-3' }]);
	const read = (id: string) => bench.checks.find((check) => check.id === id)?.read(rig) ?? '';
	for (let left = 30; left > 0; left--) {
		const { view } = store.scene;
		const check = view?.check?.id ?? view?.verdict?.repairs[0]?.check;
		if (view?.verdict?.because === 'mended' || check === undefined) return;
		await store.answer(check, read(check));
	}
}

describe('a walk', () => {
	test('goes from the rig to the fixture, the complaint, the checks and the verdict', async () => {
		const { store } = storeOn();
		const phases: string[] = [];
		store.subscribe(() => {
			if (phases.at(-1) !== store.scene.phase) phases.push(store.scene.phase);
		});
		await dark(store);
		expect(phases).toEqual(['rig', 'fixture', 'complaint', 'walk']);
		expect(store.scene.view?.complaint).toBe('Wash 3, centre right is dark');
		await walkToEnd(store);
		expect(store.scene.view?.verdict?.because).toBe('mended');
		expect(store.scene.view?.verdict?.causes[0]?.id).toBe('switched-off@wash-3');
		expect(store.scene.trouble).toBeNull();
	});

	test('with one fixture asks for no fixture, and Back leads past that question', async () => {
		const { store } = storeOn();
		await store.open();
		await store.choose({ kind: 'quick', count: 1, linked: 'desk', profile: 'cobble' });
		expect(store.scene.phase).toBe('complaint');
		await store.back();
		expect(store.scene).toMatchObject({ phase: 'rig', walk: null });
	});

	test('stands in every step where it stood, on another day and after the page is gone', async () => {
		const device = memory();
		const first = storeOn(device).store;
		await dark(first);
		for (let step = 0; step < 4; step++) {
			const again = storeOn(device).store;
			await again.open();
			expect(again.scene.view).toEqual(first.scene.view);
			const check = first.scene.view?.check;
			if (!check) throw new Error('this walk was to be longer');
			if (step === 1) await first.setAside(check.id, 'unsure');
			else await first.answer(check.id, check.answers[0]?.id ?? '');
		}
	});

	test('Back takes each step back, then the complaint, then the fixture, then the rig', async () => {
		const { store } = storeOn();
		await dark(store);
		const start = store.scene.view;
		const check = start?.check;
		await store.answer(check?.id ?? '', check?.answers[0]?.id ?? '');
		await store.setAside(store.scene.view?.check?.id ?? '', 'cannot');
		expect(store.scene.view?.log.map(({ did }) => did)).toEqual(['answer', 'cannot']);
		await store.back();
		await store.back();
		expect(store.scene.view).toEqual(start);
		await store.back();
		expect(store.scene.phase).toBe('complaint');
		await store.back();
		expect(store.scene.phase).toBe('fixture');
		await store.back();
		expect(store.scene.phase).toBe('rig');
	});

	test('what was set aside is asked again once it can be done', async () => {
		const { store } = storeOn();
		await dark(store);
		const asked = store.scene.view?.check?.id ?? '';
		await store.setAside(asked, 'cannot');
		expect(store.scene.view?.check?.id).not.toBe(asked);
		await store.bringBack();
		expect(store.scene.view?.check?.id).toBe(asked);
	});

	test('what the gig lacks is not asked for, and is kept', async () => {
		const device = memory();
		const { store } = storeOn(device);
		await dark(store);
		const turn = store.scene.turn;
		await store.allow({ without: ['ladder', 'spare-cable'], showRunning: true, alone: true });
		expect(store.scene.view?.check?.disturbs).not.toBe(true);
		expect(store.scene.turn, 'the switches are no new screen').toBe(turn);
		const again = storeOn(device).store;
		await again.open();
		expect(again.scene.allows).toEqual({ without: ['ladder', 'spare-cable'], showRunning: true, alone: true });
	});

	test('an answer that no suspect would show speaks against all of them', async () => {
		const { store } = storeOn();
		await store.open();
		await store.choose({ kind: 'bundled', id: 'four-in-line' });
		await store.pickFixture('wash-3');
		await store.pickComplaint('no-answer');
		const noneOf = () => store.scene.view?.check?.answers.find(({ suspects }) => suspects.length === 0);
		for (let n = 0; n < 8 && !noneOf(); n++) await store.setAside(store.scene.view?.check?.id ?? '', 'cannot');
		const asides = store.scene.view?.log.length ?? 0;
		const check = store.scene.view?.check;
		const none = noneOf();
		if (!check || !none) throw new Error('this check was to have such an answer');
		await store.answer(check.id, none.id);
		const known = store.scene.view?.suspects.filter(({ id }) => id !== 'unknown') ?? [];
		expect(known.length).toBeGreaterThan(10);
		const saw = known.flatMap(({ against }) => against.map(({ seen }) => seen));
		expect(saw.length).toBeGreaterThanOrEqual(known.length);
		expect(store.scene.view?.log[asides]?.seen).toBe(none.words);
	});
});

describe('a large rig', () => {
	/** Complains of the long line's twelfth bar; each view the page was given, in order. */
	async function long(store: FinderStore): Promise<NonNullable<FinderStore['scene']['view']>[]> {
		await store.open();
		await store.choose({ kind: 'bundled', id: 'long-line' });
		await store.pickFixture('bar-12');
		const views: NonNullable<FinderStore['scene']['view']>[] = [];
		store.subscribe(() => {
			const { view } = store.scene;
			if (view && view !== views.at(-1)) views.push(view);
		});
		await store.pickComplaint('dark');
		return views;
	}

	test('asks its first check before the rest is worked out, and keeps to it', async () => {
		const { store } = storeOn();
		const views = await long(store);
		expect(views.map(({ isPart }) => isPart)).toEqual([true, false]);
		const [part, whole] = views;
		expect(whole?.check?.id).toBe(part?.check?.id);
		expect(whole?.check?.answers.map(({ id }) => id)).toEqual(part?.check?.answers.map(({ id }) => id));
		expect(whole?.suspects.length).toBeGreaterThan(part?.suspects.length ?? 0);
		expect(store.scene.stage).toBeNull();
		await store.setAside(part?.check?.id ?? '', 'cannot');
		await store.back();
		expect(store.scene.view).toEqual(whole);
	});

	test('takes an answer given before the rest is there for what it is', async () => {
		const { store } = storeOn();
		const other = storeOn().store;
		await long(other);
		const { check } = other.scene.view ?? {};
		const outcome = check?.answers[0]?.id ?? '';
		await other.answer(check?.id ?? '', outcome);
		const answered = new Promise<void>((done) => {
			store.subscribe(() => {
				const { view, walk } = store.scene;
				if (view?.isPart && walk?.steps.length === 0) store.answer(view.check?.id ?? '', outcome).then(done);
			});
		});
		await long(store);
		await answered;
		expect(store.scene.walk?.steps).toHaveLength(1);
		expect(store.scene.view).toEqual(other.scene.view);
	});
});

describe('verdicts', () => {
	test('are counted once a repair has helped, taken back with Back, and kept apart from the walk', async () => {
		const device = memory();
		const { store, items } = storeOn(device);
		await dark(store);
		await walkToEnd(store);
		expect(store.scene.learnt).toEqual({ 'switched-off': 1 });
		expect(JSON.parse(items.get(KEPT.verdicts.key) ?? '')).toEqual({ version: 1, counts: { 'switched-off': 1 } });
		const again = storeOn(device).store;
		await again.open();
		expect(again.scene.learnt, 'loading the page counts nothing again').toEqual({ 'switched-off': 1 });
		await again.back();
		expect(again.scene.learnt).toEqual({});
		await walkToEnd(again);
		await again.startAgain();
		expect(again.scene).toMatchObject({ phase: 'rig', walk: null, learnt: { 'switched-off': 1 } });
		again.forgetCounts();
		expect(JSON.parse(items.get(KEPT.verdicts.key) ?? '')).toEqual({ version: 1, counts: {} });
	});

	test('move what comes after, and never a walk that is under way', async () => {
		const device = memory();
		device.held.set(KEPT.verdicts.key, JSON.stringify({ version: 1, counts: { 'switched-off': 40 } }));
		const { store } = storeOn(device);
		await dark(store);
		expect(store.scene.view?.suspects[0]?.id).toBe('switched-off@wash-3');
		const before = store.scene.view;
		store.forgetCounts();
		const again = storeOn(device).store;
		await again.open();
		expect(again.scene.view).toEqual(before);
	});
});

describe('what cannot be read', () => {
	test.each([
		['no JSON', 'rubbish'],
		['a missing part', '{"version":1,"walk":null}'],
		['a thing for a list', '{"version":1,"allows":{"without":{},"showRunning":false,"alone":false},"walk":null}'],
	])('a kept walk with %s is set aside and said, and the page starts', async (_, text) => {
		const device = memory();
		device.held.set(KEPT.walk.key, text);
		const { store, items } = storeOn(device);
		await store.open();
		expect(store.scene).toMatchObject({ phase: 'rig', trouble: finderWords.troubles.damaged });
		expect(asidesIn(device.store, 'walk')).toMatchObject([{ text, why: 'damaged' }]);
		expect(items.has(KEPT.walk.key)).toBe(false);
	});

	// the second took the place of the first for good
	test('two kept walks that are damaged are both set aside', async () => {
		const device = memory();
		for (const text of ['rubbish', 'more rubbish']) {
			device.held.set(KEPT.walk.key, text);
			await storeOn(device).store.open();
		}
		expect(
			asidesIn(device.store, 'walk')
				.map(({ text }) => text)
				.sort(),
		).toEqual(['more rubbish', 'rubbish']);
	});

	// it was called damaged
	test('a kept walk of a newer version is said, left as it is, and set aside when another is kept', async () => {
		const newer = '{"version":7,"allows":{"without":[],"showRunning":false,"alone":false},"walk":null}';
		const device = memory({ [KEPT.walk.key]: newer });
		const { store, items } = storeOn(device);
		await store.open();
		expect(store.scene).toMatchObject({ phase: 'rig', trouble: finderWords.troubles.newer });
		expect(items.get(KEPT.walk.key)).toBe(newer);
		await store.choose({ kind: 'bundled', id: 'four-in-line' });
		expect(JSON.parse(items.get(KEPT.walk.key) ?? '')).toMatchObject({ version: KEPT.walk.version });
		expect(asidesIn(device.store, 'walk')).toMatchObject([{ text: newer, why: 'newer' }]);
	});

	test('damaged counts are set aside and said, and the walk is not', async () => {
		const device = memory();
		await dark(storeOn(device).store);
		device.held.set(KEPT.verdicts.key, '{"version":1,"counts":{"switched-off":-1}}');
		const { store } = storeOn(device);
		await store.open();
		expect(store.scene).toMatchObject({ phase: 'walk', trouble: finderWords.troubles.damagedCounts, learnt: {} });
		expect(asidesIn(device.store, 'verdicts')[0]?.text).toContain('-1');
	});

	test('steps that fit no check of the rig are set aside and said, and the complaint stands', async () => {
		const device = memory();
		const first = storeOn(device).store;
		await dark(first);
		const kept = JSON.parse(device.held.get(KEPT.walk.key) ?? '');
		kept.walk.steps = [{ did: 'answer', check: 'tea-leaves@wash-3', outcome: 'doom' }];
		device.held.set(KEPT.walk.key, JSON.stringify(kept));
		const { store } = storeOn(device);
		await store.open();
		expect(store.scene.trouble).toBe(finderWords.troubles.noFit);
		expect(store.scene.view).toEqual(first.scene.view);
		expect(asidesIn(device.store, 'walk')[0]?.text).toContain('tea-leaves');
	});

	test('a store that refuses is said, and the walk goes on', async () => {
		const { store } = storeOn({ held: new Map(), store: refuses });
		await dark(store);
		expect(store.scene).toMatchObject({ phase: 'walk', kept: false, full: false, trouble: null });
		const full = storeOn(memory({}, 0)).store;
		await dark(full);
		expect(full.scene).toMatchObject({ phase: 'walk', kept: false, full: true, trouble: null });
	});

	test('with no worker there is a sentence, and the same walk once there is one', async () => {
		const device = memory();
		await dark(storeOn(device).store);
		const { store } = storeOn(device, () => Promise.reject(new CannotRun()));
		await store.open();
		expect(store.scene).toMatchObject({ phase: 'rig', trouble: finderWords.troubles.noWorker });
		const again = storeOn(device).store;
		await again.open();
		expect(again.scene.phase).toBe('walk');
	});
});

describe('a sheet of one’s own', () => {
	const sheet = bundledRig('mixed-panels');

	test('opens from its text, and from a link to a bench', async () => {
		const link = `https://example.test/bench/${await linkOf({ sheet, log: [] })}`;
		for (const text of [`  ${JSON.stringify(sheet)}\n`, link]) {
			const { store } = storeOn();
			await store.open();
			await store.read(text);
			expect(store.scene.trouble).toBeNull();
			expect(store.scene.laid?.fixtures.map(({ name }) => name)).toEqual(sheet.fixtures.map(({ name }) => name));
		}
	});

	test('of a bench is as hands have left it, with nothing broken in it', async () => {
		const log: RigEvent[] = [
			{ type: 'power.switch', fixture: 'old-1', on: false },
			{ type: 'cable.lift', cable: 'cable-2' },
			{ type: 'desk.master', level: 128 },
			{ type: 'cable.become', cable: 'cable-1', change: { minus: 'open', swapped: true } },
			{ type: 'condition.become', fixture: 'wash-1', change: { covered: true, batteryHealth: 0.5 } },
			{ type: 'charge.become', fixture: 'wash-1', charge: 0 },
			{ type: 'remote.become', code: 3, battery: false },
			{ type: 'desk.start-code', output: 'a', code: 23 },
			{ type: 'hall.power', on: false },
			{ type: 'clock.wait', ms: 5000 },
		];
		const { store } = storeOn();
		await store.open();
		await store.read(await linkOf({ sheet, log }));
		expect(store.scene.trouble).toBeNull();
		expect(store.scene.walk?.rig).toEqual({
			kind: 'sheet',
			sheet: {
				...sheet,
				fixtures: sheet.fixtures.map((each) => (each.id === 'old-1' ? { ...each, on: false } : each)),
				desk: sheet.desk && { ...sheet.desk, master: 128 },
				cables: sheet.cables.filter(({ id }) => id !== 'cable-2'),
			},
		});
	});

	const many = { ...sheet, fixtures: Array.from({ length: MOST.fixtures + 1 }, () => sheet.fixtures[0]) };
	test.each([
		['nothing', ' ', errors['sheet.text'][0].says],
		['prose', 'four washes on a bar', errors['sheet.text'][1].says],
		['an empty rig', JSON.stringify({ version: 1, name: 'Bare', fixtures: [] }), errors['sheet.empty']],
		[
			'too many fixtures',
			JSON.stringify(many),
			`This sheet has ${MOST.fixtures + 1} fixtures and the finder works with ${MOST.fixtures} at most. Cut it down to the line in question.`,
		],
		['a shape that is off', JSON.stringify({ ...sheet, desk: 7 }), 'The rig sheet doesn’t fit at desk: '],
		[
			'a profile nobody has',
			JSON.stringify({ ...sheet, desk: null, fixtures: [{ ...sheet.fixtures[0], profile: 'nobody' }] }),
			"No fixture profile is called 'nobody'.",
		],
		['a cut link', '#rig=1.AAAA', 'This link is damaged'],
	])('%s is refused with a sentence to act on', async (_, text, sentence) => {
		const { store } = storeOn();
		await store.open();
		await store.read(text);
		expect(store.scene).toMatchObject({ phase: 'rig', walk: null, stage: null });
		expect(store.scene.trouble).toContain(sentence);
	});
});
