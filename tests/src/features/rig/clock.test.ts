import fc from 'fast-check';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { type RigClock, type RigStore, rigStore, runClock } from '../../../../src/features/rig/index.ts';
import { runs } from '../../../runs.ts';
import { deeds, pair } from './sheets.ts';

let frames = 0;
let hear: () => void = () => {};
const page = { hidden: false };
let clock: RigClock | undefined;

beforeEach(() => {
	vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] });
	frames = 0;
	page.hidden = false;
	const asked = (step: (at: number) => void) => {
		frames++;
		return setTimeout(() => step(performance.now()), 16);
	};
	vi.stubGlobal('requestAnimationFrame', asked);
	vi.stubGlobal('cancelAnimationFrame', (frame: ReturnType<typeof setTimeout>) => clearTimeout(frame));
	vi.stubGlobal('window', { setTimeout, clearTimeout });
	vi.stubGlobal('document', {
		get hidden() {
			return page.hidden;
		},
		addEventListener: (_: string, listener: () => void) => {
			hear = listener;
		},
		removeEventListener: () => {},
	});
});
afterEach(() => {
	clock?.stop();
	vi.useRealTimers();
	vi.unstubAllGlobals();
});

const start = (store: RigStore, onFrame: Parameters<typeof runClock>[1] = () => undefined) => {
	clock = runClock(store, onFrame);
	return store;
};

// the bench asked for a frame for ever with nothing moving: a twentieth of a core, and a phone's battery
it('asks for no frame while nothing moves, and finds itself brought up to the moment when something is done', () => {
	const store = start(rigStore(pair));
	vi.advanceTimersByTime(2000);
	const settled = frames;
	vi.advanceTimersByTime(20_000);
	expect(frames).toBe(settled);
	store.send({ type: 'desk.master', level: 4 });
	expect(store.rig.log.at(-1)).toEqual({ type: 'desk.master', level: 4 });
	// from the first frame on
	expect(store.rig.now).toBe(22_000 - 16);
	vi.advanceTimersByTime(100);
	expect(frames).toBeGreaterThan(settled);
});

it('wakes for what happens by itself: a display that sleeps, and data that counts as lost', () => {
	const store = start(rigStore(pair));
	vi.advanceTimersByTime(1000);
	store.send({ type: 'key.tap', fixture: 'wash-1', key: 'down' });
	const lit = () => store.look('wash-1').display.kind === 'keyed' && JSON.stringify(store.look('wash-1').display);
	const awake = lit();
	vi.advanceTimersByTime(70_000);
	expect(lit()).not.toBe(awake);
	expect(frames).toBeLessThan(40);
	const { version } = store;
	store.send({ type: 'hall.power', on: false });
	vi.advanceTimersByTime(1400);
	expect(store.version).toBeGreaterThan(version + 1);
});

it('keeps frames coming while light moves, a key is down, or something is still to be drawn', () => {
	const moving = {
		...pair,
		fixtures: pair.fixtures.map((each) => ({ ...each, settings: { work: 'programme' as const } })),
	};
	start(rigStore(moving));
	vi.advanceTimersByTime(3000);
	expect(frames).toBeGreaterThan(150);
	clock?.stop();
	const held = start(rigStore(pair));
	held.send({ type: 'key.down', fixture: 'wash-1', key: 'up' });
	const before = frames;
	vi.advanceTimersByTime(1000);
	expect(frames - before).toBeGreaterThan(50);
	clock?.stop();
	let left = 30;
	const atFirst = frames;
	start(rigStore(pair), () => (left-- > 0 ? 0 : undefined));
	vi.advanceTimersByTime(2000);
	expect(frames - atFirst).toBe(31);
});

it('shows a battery run down, with a handful of frames', () => {
	const store = start(rigStore({ ...pair, fixtures: pair.fixtures.map((each) => ({ ...each, charge: 0.252 })) }));
	store.send({ type: 'desk.level', universe: 1, slot: 1, level: 255 });
	store.send({ type: 'desk.level', universe: 1, slot: 4, level: 255 });
	expect(store.look('wash-1').lamps.battery?.bars).toBe(2);
	vi.advanceTimersByTime(20 * 60_000);
	expect(store.look('wash-1').lamps.battery?.bars).toBe(1);
	expect(frames).toBeLessThan(20);
});

it('takes no time for a page out of sight', () => {
	const store = start(rigStore(pair));
	vi.advanceTimersByTime(1000);
	page.hidden = true;
	hear();
	const { now } = store.rig;
	vi.advanceTimersByTime(3_600_000);
	page.hidden = false;
	hear();
	vi.advanceTimersByTime(16);
	store.upToNow();
	expect(store.rig.now).toBe(now);
	vi.advanceTimersByTime(500);
	store.upToNow();
	expect(store.rig.now).toBe(now + 500);
});

it('shows at any moment what a clock that never rests would', () => {
	fc.assert(
		fc.property(deeds(12), (log) => {
			const busy = rigStore(pair);
			const resting = rigStore(pair);
			clock = runClock(resting, () => undefined);
			vi.advanceTimersByTime(16);
			for (const event of log) {
				if (event.type === 'clock.wait') {
					busy.tick(event.ms);
					vi.advanceTimersByTime(event.ms);
				} else {
					busy.send(event);
					resting.send(event);
				}
			}
			resting.upToNow();
			expect(resting.rig.now).toBe(busy.rig.now);
			for (const { id } of pair.fixtures) expect(resting.rig.look(id)).toEqual(busy.rig.look(id));
			clock.stop();
		}),
		{ numRuns: runs(40) },
	);
});
