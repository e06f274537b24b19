import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { LONGEST_LOG } from '../../../../sim/event/index.ts';
import { type Rig, replay } from '../../../../sim/rig/index.ts';
import { FULL_LOG, minusLast, playBack, type RigStore, rigStore } from '../../../../src/features/rig/index.ts';
import { runs } from '../../../runs.ts';
import { deeds, pair } from './sheets.ts';

/** Everything a person sees, and the state behind it. */
const picture = (rig: Rig) =>
	JSON.stringify(rig.sheet.fixtures.map(({ id }) => [rig.look(id), rig.gear.units.get(id)?.state.context]));

function act(store: RigStore, log: Parameters<typeof replay>[1]): void {
	for (const event of log) {
		if (event.type === 'clock.wait') store.tick(event.ms);
		else store.send(event);
	}
}

describe('the store', () => {
	it('is at every moment what its sheet and log replay to', () => {
		fc.assert(
			fc.property(deeds(), (log) => {
				const store = rigStore(pair);
				act(store, log);
				expect(picture(replay(pair, store.rig.log))).toBe(picture(store.rig));
			}),
			{ numRuns: runs(60) },
		);
	});

	it('undoes step by step to the beginning, and each step back is where it was', () => {
		fc.assert(
			fc.property(deeds(15), (log) => {
				const store = rigStore(pair);
				const been: string[] = [];
				for (const event of log) {
					if (event.type === 'clock.wait') store.tick(event.ms);
					else {
						been.push(picture(store.rig));
						store.send(event);
					}
				}
				for (const before of been.reverse()) {
					expect(store.canUndo).toBe(true);
					store.undo();
					expect(picture(store.rig)).toBe(before);
				}
				expect(store.canUndo).toBe(false);
			}),
			{ numRuns: runs(40) },
		);
	});

	it('undoes past what it remembers by playing the log again', () => {
		const store = rigStore(pair, [
			{ type: 'desk.level', universe: 1, slot: 1, level: 9 },
			{ type: 'clock.wait', ms: 50 },
			{ type: 'key.down', fixture: 'wash-1', key: 'down' },
			{ type: 'clock.wait', ms: 80 },
			{ type: 'key.up', fixture: 'wash-1', key: 'down' },
		]);
		store.undo();
		expect(store.rig.log).toEqual([
			{ type: 'desk.level', universe: 1, slot: 1, level: 9 },
			{ type: 'clock.wait', ms: 50 },
		]);
		store.undo();
		expect(store.rig.log).toEqual([]);
		expect(store.canUndo).toBe(false);
	});

	it('leaves no key held after an undo', () => {
		const store = rigStore(pair);
		store.send({ type: 'key.down', fixture: 'wash-1', key: 'up' });
		store.send({ type: 'desk.master', level: 4 });
		store.undo();
		expect(store.rig.gear.units.get('wash-1')?.state.context.held).toBeNull();
		expect(minusLast([])).toEqual([]);
	});

	it('turns nonsense into a sentence, and nothing is lost', async () => {
		const store = rigStore(pair);
		store.send({ type: 'desk.level', universe: 1, slot: 1, level: 9 });
		const before = picture(store.rig);
		expect(store.send({ type: 'cable.lift', cable: 'none' })).toBe(false);
		await vi.waitFor(() => expect(store.said?.words).toBe("There’s no cable 'none' on this rig."));
		expect(picture(store.rig)).toBe(before);
		expect(store.rig.log).toHaveLength(1);
		const { turn } = store.said ?? { turn: 0 };
		store.send({ type: 'cable.lift', cable: 'none' });
		await vi.waitFor(() => expect(store.said?.turn).toBe(turn + 1));
		store.send({ type: 'cable.lift', cable: 'none' });
		store.send({ type: 'desk.master', level: 4 });
		expect(store.said).toBeNull();
		// words of what went before come too late
		await new Promise((resolve) => setTimeout(resolve, 20));
		expect(store.said).toBeNull();
	});

	it('lets a bug through as what it is', () => {
		const store = rigStore(pair);
		expect(() =>
			store.edit(() => {
				throw new TypeError('a bug');
			}),
		).toThrow('a bug');
	});

	it('takes a slider’s move as one step, with the time it took', () => {
		const store = rigStore(pair);
		for (const level of [10, 60, 140, 90]) {
			store.slide({ type: 'desk.level', universe: 1, slot: 4, level });
			store.tick(16);
		}
		store.rest();
		expect(store.rig.log).toEqual([
			{ type: 'clock.wait', ms: 48 },
			{ type: 'desk.level', universe: 1, slot: 4, level: 90 },
			{ type: 'clock.wait', ms: 16 },
		]);
		expect(store.rig.now).toBe(64);
		// another slot, or the same one taken up again, is another step
		store.slide({ type: 'desk.level', universe: 1, slot: 4, level: 3 });
		store.slide({ type: 'desk.level', universe: 1, slot: 5, level: 3 });
		expect(store.rig.log.filter(({ type }) => type === 'desk.level')).toHaveLength(3);
		for (let i = 0; i < 3; i++) store.undo();
		expect(store.rig.log).toEqual([]);
	});

	it('goes up a version when something could be seen, and only then', () => {
		const store = rigStore(pair);
		store.tick(20);
		const { version } = store;
		const heard = vi.fn();
		const stop = store.subscribe(heard);
		for (let i = 0; i < 200; i++) store.tick(16);
		expect(store.version).toBe(version);
		store.send({ type: 'key.tap', fixture: 'wash-1', key: 'up' });
		expect(store.version).toBe(version + 1);
		expect(heard).toHaveBeenCalledTimes(1);
		expect(store.look('wash-1')).toBe(store.look('wash-1'));
		// by itself: the display sleeps after a minute
		for (let i = 0; i < 62; i++) store.tick(1000);
		expect(store.version).toBeGreaterThan(version + 1);
		stop();
		const calls = heard.mock.calls.length;
		store.send({ type: 'key.tap', fixture: 'wash-1', key: 'up' });
		expect(heard).toHaveBeenCalledTimes(calls);
	});

	it('sees a battery run down though nothing happens', () => {
		const store = rigStore({ ...pair, fixtures: pair.fixtures.map((fixture) => ({ ...fixture, charge: 0.251 })) });
		expect(store.look('wash-1').lamps.battery?.bars).toBe(2);
		store.setClock(true, 600);
		for (let i = 0; i < 40; i++) store.tick(100);
		expect(store.look('wash-1').lamps.battery?.bars).toBe(1);
	});

	it('runs fast or stands as it is told', () => {
		const store = rigStore(pair);
		store.setClock(true, 60);
		store.tick(100);
		expect(store.rig.now).toBe(6000);
		store.setClock(false, 60);
		store.tick(100);
		expect(store.rig.now).toBe(6000);
	});

	it('refuses more than a log may hold, with room for keys still down', async () => {
		expect(FULL_LOG).toBeLessThan(LONGEST_LOG);
		const log = Array.from({ length: FULL_LOG + 1 }, () => ({ type: 'hall.power', on: true }) as const);
		const store = rigStore(
			{ ...pair, fixtures: pair.fixtures.slice(0, 1), cables: [], terminators: [], desk: null },
			log,
		);
		expect(store.send({ type: 'key.down', fixture: 'wash-1', key: 'up' })).toBe(false);
		await vi.waitFor(() => expect(store.said?.words).toMatch(/log of this bench is full/));
		expect(store.send({ type: 'key.up', fixture: 'wash-1', key: 'up' })).toBe(true);
	});

	it('opens another rig and can go back to the one before', () => {
		const store = rigStore(pair);
		store.send({ type: 'desk.master', level: 4 });
		expect(store.open({ sheet: { ...pair, name: 'Other' }, log: [] })).toBe(true);
		expect(store.rig.sheet.name).toBe('Other');
		store.undo();
		expect(store.rig.gear.desk?.master).toBe(4);
		store.restart();
		expect(store.rig.log).toEqual([]);
		expect(store.open({ sheet: pair, log: [{ type: 'cable.lift', cable: 'none' }] })).toBe(false);
		expect(store.rig.sheet).toBe(pair);
		expect(playBack(pair, [{ type: 'cable.lift', cable: 'none' }], { whatFits: true }).log).toEqual([]);
	});
});
