import { describe, expect, it } from 'vitest';
import type { Item } from '../../../shared/paper/index.ts';
import { profileFor } from '../../../shared/sheet/index.ts';
import { BUNDLED_KINDS, type BundledKind, makeDrill, shortestWay } from '../../../sim/drill/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { OFTEN_ON } from '../../../sim/paper/drills.ts';
import { markRigPaper, RIG_SOURCES, setRigPaper } from '../../../sim/paper/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import { runs } from '../../runs.ts';
import { throughJson } from '../../shared/json.ts';
import { thrownBy } from '../../shared/thrown.ts';
import { itemOf, itemsOf } from './items.ts';

describe('cautions for a task', () => {
	/** What the task calls for, looked up here: where it is, what hands touch, and what its lamps do before and after. */
	function callsFor(item: Item): string[] {
		const drill = makeDrill(item.facts['drill'] as BundledKind, Number(item.facts['seed']));
		const rig = openRig(drill.sheet);
		const lights = () => drill.sheet.fixtures.map(({ id }) => rig.look(id).light);
		const before = lights();
		for (const event of shortestWay(drill)) {
			if (event.type === 'clock.wait') rig.wait(event.ms);
			else rig.send(event);
		}
		const all = [...before, ...lights()];
		const isHandsOn = drill.hands.some((hand) => ['panel', 'power', 'line', 'mains'].includes(hand));
		const isOverhead = drill.sheet.fixtures.some(({ place }) => place.overhead);
		const charges = drill.sheet.fixtures.some(
			({ profile, plug }) => plug !== 'none' && profileFor(drill.sheet, profile).power.battery,
		);
		const calls: readonly (readonly [string, boolean | null | undefined])[] = [
			['live-show', drill.scene === 'show'],
			['hanging', isHandsOn && isOverhead],
			['height', isHandsOn && isOverhead],
			['mains', drill.hands.includes('mains')],
			['batteries', drill.scene === 'bench' && charges],
			['ultraviolet', all.some(({ whole }) => whole.ultraviolet > 0)],
			['flashing', all.some(({ flashes }) => flashes > 0)],
			['staring', drill.scene === 'bench'],
		];
		return calls.flatMap(([id, does]) => (does ? [id] : []));
	}

	it('are those that its rig calls for, looked up a second time, and no other that is offered', () => {
		for (const item of itemsOf('caution-here', runs(24, 10_000))) {
			const calls = callsFor(item);
			if (item.ask.form !== 'several' || item.key.form !== 'several') throw new Error('another form');
			const good = item.ask.options.filter(({ label }) => calls.includes(label.say.replace('caution-', '')));
			expect(good.map(({ id }) => id)).toEqual([...item.key.right]);
			expect(good).toHaveLength(calls.length);
		}
	});
});

describe('done on the bench', () => {
	it('with a mains link moved live is not right, whatever is put right afterwards', () => {
		const drill = makeDrill('mains-row', 5);
		const item = { ask: { form: 'practical', drill: { kind: drill.kind, seed: drill.seed } } } as Item;
		const live: RigEvent[] = [
			{ type: 'mains.plug', fixture: 'bar-2', into: 'bar-1' },
			{ type: 'mains.plug', fixture: 'bar-2', into: 'none' },
		];
		const mark = RIG_SOURCES.practical(item, [...live, ...shortestWay(drill, live)]);
		expect(mark).toMatchObject({ done: false, right: drill.goal.length - 1, of: drill.goal.length });
		expect(RIG_SOURCES.practical(item, shortestWay(drill))).toMatchObject({ done: true, right: drill.goal.length });
	});

	it('is right by the shortest way and by nothing less', () => {
		for (const item of itemsOf('on-the-bench', runs(12, 10_000))) {
			if (item.ask.form !== 'practical') throw new Error('another form');
			const drill = makeDrill(item.ask.drill.kind as BundledKind, item.ask.drill.seed);
			expect(item.bench).toEqual(drill.sheet);
			const way = shortestWay(drill);
			const mark = RIG_SOURCES.practical(item, throughJson(way) as unknown[]);
			expect(mark).toMatchObject({ done: true, right: mark.of, presses: item.facts['fewest'], fewest: mark.presses });
			expect(RIG_SOURCES.practical(item, []).done).toBe(false);
			expect(RIG_SOURCES.practical(item, way.slice(0, -1)).done).toBe(false);
		}
	});

	it('refuses a log that is none, or holds what no hand was given', () => {
		const item = itemOf('on-the-bench', 0);
		const refused = (log: unknown): string => thrownBy(() => RIG_SOURCES.practical(item, log as unknown[])).code;
		expect(refused({})).toBe('log.shape');
		expect(refused([{ type: 'no.such' }])).toBe('event.shape');
		expect(refused([{ type: 'hall.power', on: false }])).toBe('drill.hands');
		expect(refused([{ type: 'key.tap', fixture: 'nobody-1', key: 'set' }])).toMatch(/./);
		expect(refused(new Array(20_001).fill({ type: 'clock.wait', ms: 1 }))).toBe('log.length');
		const plain = { ...item, ask: { form: 'one' as const, options: [] } };
		expect(thrownBy(() => RIG_SOURCES.practical(plain, [])).code).toBe('paper.practical');
	});

	it('is marked in a paper by its log alone; a bad one is a misfit, and the rest stands', () => {
		const paper = setRigPaper({ version: 1, title: 'x', count: 2, kinds: ['on-the-bench', 'display-says'] }, 3);
		const [bench] = paper.items.filter(({ kind }) => kind === 'on-the-bench') as [Item];
		if (bench.ask.form !== 'practical') throw new Error('another form');
		const log = shortestWay(makeDrill(bench.ask.drill.kind as BundledKind, bench.ask.drill.seed));
		const done = markRigPaper(paper, { [bench.id]: { form: 'practical', log } });
		expect(done).toMatchObject({ score: 1, of: 2, misfits: [] });
		expect(done.items.find(({ item }) => item === bench.id)).toMatchObject({ right: true, share: 1 });
		const bad = markRigPaper(paper, { [bench.id]: { form: 'practical', log: [{ type: 'hall.power', on: true }] } });
		expect(bad.score).toBe(0);
		expect(bad.misfits.map(({ code }) => code)).toEqual(['log-bad']);
	});

	it('looks for drills where they are often to be had', () => {
		const tries = runs(12, 60);
		for (const kind of BUNDLED_KINDS) {
			const made = Array.from({ length: tries }, (_, seed) => makeDrill(kind, seed * 7919 + 3));
			const alone = new Set(
				made.flatMap(({ sheet }) => {
					const all = [...new Set(sheet.fixtures.map(({ profile }) => profile))];
					return all.length === 1 ? all : [];
				}),
			);
			for (const profile of OFTEN_ON[kind]) expect([kind, ...alone]).toContain(profile);
		}
	});
});
