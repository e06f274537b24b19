import { describe, expect, it } from 'vitest';
import { refreshRate } from '../../shared/dmx/index.ts';
import { BUNDLED, type Mode, modeOf, type Profile } from '../../shared/profile/index.ts';
import { makeRandom } from '../../shared/random/index.ts';
import {
	askLevels,
	type CompiledMode,
	compileMode,
	makeAsk,
	outputOf,
	type SlotRequest,
} from '../../sim/light/index.ts';

/** The bar: this many times the line's own top rate, on one core. */
const TIMES_THE_LINE = 200;
const LINE_RATE = refreshRate(512);

const silence = { level: 0.5, beats: 3, since: 0 };
const sound = { deadEmitters: [], foldBack: 1 };

/** One fixture on the line, with all it writes over. */
interface Placed {
	readonly profile: Profile;
	readonly chart: CompiledMode;
	readonly start: number;
	readonly ask: SlotRequest;
	readonly request: Parameters<typeof outputOf>[0];
	readonly levels: Float32Array;
	readonly outputs: Float32Array;
}

function place(profile: Profile, mode: Mode, start: number): Placed {
	const ask = makeAsk(profile);
	const levels = new Float32Array(ask.levels.length);
	const request = {
		profile,
		levels,
		intensity: ask.intensity,
		curve: 'soft',
		limit: 100,
		condition: sound,
		strobe: 1,
	} as const;
	const outputs = new Float32Array(levels.length);
	return { profile, chart: compileMode(profile, mode.id), start, ask, request, levels, outputs };
}

const bundled = (id: string) => BUNDLED.find((it) => it.id === id) as Profile;

/** 85 washes of six slots, back to back: 510 slots. */
const washes = (): Placed[] => {
	const tallow = bundled('tallow-6');
	return Array.from({ length: 85 }, (_, i) => place(tallow, modeOf(tallow, 'short'), 1 + i * 6));
};

/** Every mode of every bundled fixture in turn, bands and 16 bit and cells, as many as fit. */
const motley = (): Placed[] => {
	const kinds = BUNDLED.flatMap((profile) => profile.modes.map((mode) => ({ profile, mode })));
	const placed: Placed[] = [];
	for (let start = 1, i = 0; ; i++) {
		const { profile, mode } = kinds[i % kinds.length] as (typeof kinds)[number];
		const one = place(profile, mode, start);
		if (start + one.chart.footprint - 1 > 512) return placed;
		placed.push(one);
		start += one.chart.footprint;
	}
};

const random = makeRandom(7);
const frames = Array.from({ length: 64 }, () => Uint8Array.from({ length: 512 }, () => random.int(0, 255)));

/** Slots in, emitter outputs out: one frame of a universe. */
function renderFrame(universe: readonly Placed[], frame: Uint8Array, ms: number): void {
	for (const it of universe) {
		it.chart.read(frame, it.start, it.ask);
		askLevels(it.profile, it.ask, ms, silence, it.levels);
		outputOf(it.request, it.outputs);
	}
}

/** Seconds a call takes. */
function secondsEach(calls: number, call: (i: number) => void): number {
	const from = performance.now();
	for (let i = 0; i < calls; i++) call(i);
	return (performance.now() - from) / 1000 / calls;
}

/**
 * The best of many short rounds of each, taken in turn: what the machine does when nothing disturbs it, and a slow spell
 * falls on all alike. A round is some 5 ms by the first guess.
 */
function bestOf(rounds: number, tasks: readonly ((i: number) => void)[]): number[] {
	const calls = tasks.map((task) => Math.max(2, Math.round(0.005 / secondsEach(200, task))));
	const best = tasks.map(() => Number.POSITIVE_INFINITY);
	for (let round = 0; round < rounds; round++) {
		for (const [n, task] of tasks.entries()) best[n] = Math.min(best[n] ?? 0, secondsEach(calls[n] ?? 1, task));
	}
	return best;
}

const row = (cells: readonly (string | number)[]) =>
	console.log(cells.map((it, i) => (i === 0 ? String(it).padEnd(34) : String(it).padStart(14))).join(''));

describe('light', () => {
	it(`renders a full universe at no less than ${TIMES_THE_LINE} times the line's top rate`, () => {
		row(['universe', 'fixtures', 'slots', 'frames/s', 'x line', 'ns/fixture']);
		const universes = [
			{ name: '85 washes of 6 slots', placed: washes() },
			{ name: 'every bundled mode in turn', placed: motley() },
		];
		const best = bestOf(
			200,
			universes.map(
				({ placed }) =>
					(i) =>
						renderFrame(placed, frames[i % frames.length] as Uint8Array, i * 23),
			),
		);
		for (const [n, { name, placed }] of universes.entries()) {
			const seconds = best[n] ?? 0;
			const slots = placed.reduce((sum, it) => sum + it.chart.footprint, 0);
			const ratio = 1 / seconds / LINE_RATE;
			const each = (seconds * 1e9) / placed.length;
			row([name, placed.length, slots, Math.round(1 / seconds), Math.round(ratio), Math.round(each)]);
			expect(ratio).toBeGreaterThan(TIMES_THE_LINE);
		}
	});

	it('costs in step with the number of universes, 1 to 64, and 64 are still faster than the line', () => {
		const all = Array.from({ length: 64 }, washes);
		const counts = [1, 2, 4, 8, 16, 24, 32, 48, 64];
		const best = bestOf(
			60,
			counts.map((count) => (i) => {
				for (let u = 0; u < count; u++) {
					renderFrame(all[u] as Placed[], frames[(i + u) % frames.length] as Uint8Array, i * 23);
				}
			}),
		);
		const points = counts.map((count, n): [number, number] => [count, (best[n] ?? 0) * 1000]);
		row(['universes', 'ms a frame', 'x line']);
		for (const [count, ms] of points) row([count, ms.toFixed(3), Math.round(1000 / ms / LINE_RATE)]);
		const mean = (of: (point: [number, number]) => number) =>
			points.reduce((sum, it) => sum + of(it), 0) / points.length;
		const [mx, my] = [mean(([x]) => x), mean(([, y]) => y)];
		const slope = mean(([x, y]) => (x - mx) * (y - my)) / mean(([x]) => (x - mx) ** 2);
		const base = my - slope * mx;
		const fit = 1 - mean(([x, y]) => (y - base - slope * x) ** 2) / mean(([, y]) => (y - my) ** 2);
		console.log(`ms = ${base.toFixed(4)} + ${slope.toFixed(4)} x universes; R squared ${fit.toFixed(5)}`);
		expect(fit).toBeGreaterThan(0.98);
		expect(1000 / (points.at(-1)?.[1] ?? Number.POSITIVE_INFINITY)).toBeGreaterThan(LINE_RATE);
	});

	it('allocates nothing per frame', () => {
		for (const universe of [washes(), motley()]) {
			for (let i = 0; i < 3000; i++) renderFrame(universe, frames[i % frames.length] as Uint8Array, i * 23);
			// the least of some rounds: now and then the compiler itself takes a little
			let bytes = Number.POSITIVE_INFINITY;
			for (let round = 0; round < 5; round++) {
				const before = process.memoryUsage().heapUsed;
				for (let i = 0; i < 2000; i++) renderFrame(universe, frames[i % frames.length] as Uint8Array, i * 23);
				// below 0 where the collector ran
				const grown = process.memoryUsage().heapUsed - before;
				if (grown >= 0) bytes = Math.min(bytes, grown / (2000 * universe.length));
			}
			row([`${universe.length} fixtures`, `${bytes.toFixed(2)} bytes a fixture and frame`]);
			expect(bytes).toBeLessThan(1);
		}
	});
});
