import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { makeDrill } from '../../../sim/drill/index.ts';
import { readDeck } from '../../../src/features/deck/reading.ts';
import { keptNote } from '../../../src/features/finder/keep.ts';
import { readStored } from '../../../src/features/finder/reading.ts';
import { keptOf } from '../../../src/features/hidden-faults/keep.ts';
import { lastPaper, sittingText } from '../../../src/features/papers/learner/keepSitting.ts';
import { readSitting } from '../../../src/features/papers/routes.ts';
import { FIRST_DRAFT, keptDraft } from '../../../src/features/papers/trainer/draft.ts';
import { openProgress } from '../../../src/features/progress/index.ts';
import { asideList, readText, textKept } from '../../../src/features/rig/index.ts';
import { keptRigs, rigText } from '../../../src/features/rig-sheet/keep.ts';
import { keptMatches } from '../../../src/features/rig-sheet/matches.ts';
import { readPlanText } from '../../../src/features/rig-sheet/reading.ts';
import { keptInitials, ticksKeeper } from '../../../src/features/rig-sheet/ticksKeep.ts';
import { openStock } from '../../../src/features/stock/keep.ts';
import { takeUp } from '../../../src/features/unfinished/index.ts';
import { asidesIn, KEPT, type KeptId, readBuzz, readTheme } from '../../../src/storage/index.ts';
import { pair } from '../features/rig/sheets.ts';
import { memory } from './memory.ts';

/** Everything under every key, as the code of 29 November 2026 wrote it, before it was declared in one place. */
const written: Readonly<Record<string, string>> = JSON.parse(
	readFileSync(new URL('as-written.json', import.meta.url), 'utf8'),
);
const device = () => memory(written);
const EARLY = new URL('../../../src/site/theme/early.js', import.meta.url);

/** What each key's text opens as. */
const opens: Readonly<Record<KeptId, () => unknown>> = {
	async bench() {
		const { store } = device();
		expect(await readText(textKept(store) ?? '')).toEqual({
			is: 'bench',
			kept: { sheet: pair, log: [{ type: 'hall.power', on: false }] },
		});
		expect(asideList(store).map(({ about, why, isTheirs }) => [about?.name, why, isTheirs])).toEqual([
			['Other', 'link', true],
			['Lantern Row Hall', 'link', false],
			[undefined, 'damaged', false],
		]);
	},
	async progress() {
		const { progress, ...rest } = await openProgress(device().store);
		expect(rest).toEqual({ damaged: null, isNewer: false, keeps: true, isFull: false });
		expect(progress.get('held-colour')).toMatchObject({ done: 1, streak: 1, best: { presses: 9 } });
		expect(progress.get('address-keys')?.open).toEqual({ seed: 7, hints: 1, misses: 0 });
	},
	review() {
		const { kept, damaged } = readDeck(written[KEPT.review.key] ?? '');
		expect(damaged).toEqual({});
		expect(kept.get('last-slot@tallow-6.easy')).toMatchObject({ reps: 1, last: 1_700_000_001_000 });
		expect(kept.size).toBe(2);
	},
	async stock() {
		const { kept, damaged } = await openStock(device().store);
		expect(damaged).toBe(null);
		expect([...kept.values()]).toEqual([
			{
				kind: 'chart',
				id: 'own-00aa11bb22',
				name: 'Row bar',
				chart: '1 Dimmer\n2 Strobe 0-9 off 10-255 slow to fast\n3 Red',
				shape: 'bar',
				beam: 18,
				watts: null,
				lumens: null,
				feed: 'mains',
				wattHours: null,
				link: true,
				panel: null,
				changed: 1_700_000_000_000,
			},
		]);
	},
	async walk() {
		const { kept, damaged } = await readStored({ walk: written[KEPT.walk.key] ?? '', counts: null });
		expect(damaged).toEqual([]);
		expect(kept?.walk).toMatchObject({ rig: { id: 'four-in-line' }, fixture: 'wash-3', complaint: 'dark' });
	},
	handed() {
		const { store } = device();
		const walk = JSON.parse(written[KEPT.walk.key] ?? '').walk;
		expect(keptNote(store, walk)).toBe('aside');
		expect(keptNote(store, { ...walk, began: 1 })).toBeNull();
	},
	async verdicts() {
		const { learnt, damaged } = await readStored({ walk: null, counts: written[KEPT.verdicts.key] ?? '' });
		expect([learnt, damaged]).toEqual([{ 'switched-off': 4 }, []]);
	},
	hidden() {
		const drill = '#rig=one-wash&seed=1&count=1';
		expect(keptOf(device().store, drill)).toEqual({ drill, steps: ['lit@wash-1'], gaveUp: false });
	},
	async rigs() {
		const { store } = device();
		expect(keptRigs(store)).toEqual([
			{ id: '00112233445566aa', name: 'Lantern Row Hall', fixtures: 1, at: 1_700_000_000_000 },
			{ id: '00112233445566ab', name: 'Lantern Row Hall', fixtures: 2, at: 1_700_000_000_000 },
			{ id: '00112233445566ac', name: 'Lantern Row Hall', fixtures: 2, at: 1_700_000_000_000 },
		]);
		const fourth = await readPlanText(rigText(store, '00112233445566ac') ?? '');
		expect(fourth.is === 'plan' && fourth.plan.rows[0]).toMatchObject({ shows: { address: 1 }, unseen: true });
		const third = await readPlanText(rigText(store, '00112233445566ab') ?? '');
		expect(third.is === 'plan' && third.plan.rows).toMatchObject([{ id: 'wash-1' }, { id: 'wash-2', after: 'wash-1' }]);
		const found = await readPlanText(rigText(store, '00112233445566aa') ?? '');
		expect(found.is === 'plan' && found.plan.rows).toMatchObject([{ id: 'wash-1', address: 1, labelled: true }]);
	},
	ticks() {
		const { ticks, notes } = ticksKeeper(device().store, '00112233445566aa', () => 5).look();
		expect(ticks).toMatchObject([{ row: 'wash-1', step: 'mode', on: true, by: 'AB' }]);
		expect(notes).toMatchObject([{ row: 'wash-1', text: 'foot loose', by: 'CD' }]);
	},
	matches() {
		expect(keptMatches(device().store)).toEqual({
			types: { 'spot.gdtf': 'tallow-6' },
			modes: { 'tallow-6/Basic': 'short' },
		});
	},
	initials() {
		expect(keptInitials(device().store)).toBe('AB');
	},
	draft() {
		// kept before recipes had versions, and before charts nobody has seen: it goes on to set what it set
		expect(keptDraft(device().store)).toEqual({
			...FIRST_DRAFT,
			version: 1,
			unseen: '',
			title: 'Ours',
			profiles: ['tallow-6'],
			count: '8',
		});
	},
	sitting() {
		const found = sittingText(device().store, '0123456789abcdef');
		expect(found?.isNewer).toBe(false);
		expect(readSitting(found?.text ?? '')).toMatchObject({
			answers: { 'percent-of-value-00aa11bb': { form: 'number', value: 12 } },
		});
	},
	lastPaper() {
		expect(lastPaper(device().store)).toBe('#paper=1.abc.0011aabb');
	},
	unfinished() {
		const drill = makeDrill('address-keys', 7);
		const fresh = { hints: 0, misses: 0, done: false, fresh: true };
		const left = takeUp(drill, drill, fresh, { tab: memory().store, device: device().store });
		expect(left?.attempt).toEqual({ hints: 2, misses: 1, done: false, fresh: true });
		expect(left?.store?.rig.log).toHaveLength(1);
	},
	buzz() {
		expect(readBuzz(device().store)).toBe(false);
	},
	theme() {
		expect(readTheme(device().store)).toBe('light');
		// the one key that stands in three places: the early script must stay in the page, and shares nothing
		expect(readFileSync(EARLY, 'utf8')).toContain(`'${KEPT.theme.key}'`);
	},
};

describe('what earlier code wrote opens', () => {
	it.each(Object.keys(KEPT) as KeptId[])('%s', async (id) => {
		await opens[id]();
	});

	it('and what it set aside is listed, whatever it is', () => {
		const { store } = device();
		expect(
			asidesIn(store)
				.map(({ key, of }) => `${of} ${key}`)
				.sort(),
		).toEqual([
			'bench prep-bay.bench.aside.aa00112233445566',
			'bench prep-bay.bench.before-link',
			'bench prep-bay.bench.damaged',
			'progress prep-bay.progress.damaged',
			'review prep-bay.review.damaged',
			'sitting prep-bay.sitting.00000000000000ff.damaged',
			'walk prep-bay.finder.damaged',
		]);
	});

	it('under keys that never change', () => {
		expect(Object.entries(KEPT).map(([id, { key, version }]) => `${id} ${key} ${version}`)).toEqual([
			'bench prep-bay.bench 1',
			'progress prep-bay.progress 2',
			'review prep-bay.review 1',
			'stock prep-bay.stock 3',
			'walk prep-bay.finder 3',
			'handed prep-bay.finder.handed 1',
			'verdicts prep-bay.finder.verdicts 1',
			'hidden prep-bay.hidden 1',
			'rigs prep-bay.rig. 4',
			'ticks prep-bay.ticks. 1',
			'initials prep-bay.initials 1',
			'matches prep-bay.matches 1',
			'draft prep-bay.papers.draft 1',
			'sitting prep-bay.sitting. 1',
			'lastPaper prep-bay.sitting.last 1',
			'unfinished prep-bay.unfinished. 1',
			'buzz prep-bay.buzz 1',
			'theme prep-bay.theme 1',
		]);
	});
});
