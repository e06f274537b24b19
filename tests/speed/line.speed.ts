import { describe, expect, it } from 'vitest';
import { receptions, type Wiring } from '../../sim/line/index.ts';
import { cable, chain, receiver, wiring } from '../sim/line/build.ts';

/** So many lines side by side, 85 receivers each: universes full of six-slot fixtures. Overloaded, so every receiver has a cause. */
function universes(count: number): Wiring {
	const lines = Array.from({ length: count }, (_, u) => u);
	const fixtures = Array.from({ length: 85 }, (_, k) => k);
	return wiring({
		receivers: lines.flatMap((u) => fixtures.map((k) => receiver(`u${u}w${k}`))),
		cables: lines.flatMap((u) =>
			fixtures.map((k) => cable(`u${u}c${k}`, k === 0 ? `desk:${u}` : `u${u}w${k - 1}:out`, `u${u}w${k}:in`)),
		),
		talkers: lines.map((u) => ({ kind: 'desk', port: `desk:${u}`, output: `${u}`, universe: u + 1 })),
		terminators: lines.map((u) => `u${u}w84:out`),
	});
}

/** Milliseconds a call: the best of many, so that a busy machine tells on it least. */
function best(line: Wiring, calls: number): number {
	let least = Number.POSITIVE_INFINITY;
	for (let i = 0; i < calls; i++) {
		const start = performance.now();
		receptions(line);
		least = Math.min(least, performance.now() - start);
	}
	return least;
}

describe('what reaches whom', () => {
	it('is worked out within a millisecond for a rig, and grows no faster than the rig', () => {
		const rows = [
			{ rig: '24 in line', receivers: 24, ms: best(chain(24), 2000) },
			{ rig: '100 in line', receivers: 100, ms: best(chain(100), 1000) },
			...[1, 4, 16, 64].map((count) => ({
				rig: `${count} of 85`,
				receivers: count * 85,
				ms: best(universes(count), Math.max(30, Math.ceil(400 / count))),
			})),
		];
		console.table(
			rows.map((row) => ({ ...row, ms: row.ms.toFixed(3), 'µs each': ((row.ms / row.receivers) * 1000).toFixed(2) })),
		);
		const [few, , one, , , many] = rows;
		const growth = Math.log((many?.ms ?? 0) / (one?.ms ?? 1)) / Math.log(64);
		console.log(`1 to 64 universes: time grows as receivers to the power of ${growth.toFixed(2)}`);
		expect(few?.ms).toBeLessThan(1);
		expect(many?.ms).toBeLessThan(100);
		// 1 is linear, 2 quadratic; the collector takes its share of the largest.
		expect(growth).toBeLessThan(1.5);
	});
});
