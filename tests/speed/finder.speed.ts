import { expect, test } from 'vitest';
import { type RigSheet, readSheet } from '../../shared/sheet/index.ts';
import { finderOn, openBench } from '../../sim/finder/index.ts';

/** Bars on a desk, lit: one line of up to 32, a line carrying no more, and a second from there on. */
function lineOf(count: number): RigSheet {
	const ids = Array.from({ length: count }, (_, i) => `bar-${i + 1}`);
	// four slots each: 64 of them fit one universe
	return readSheet({
		version: 1,
		name: 'speed',
		hall: { width: 200, height: 6 },
		fixtures: ids.map((id, i) => ({
			id,
			name: id,
			profile: 'picket-8',
			place: { x: 3 * i, y: 0, throw: 2 },
			settings: { mode: 'whole', address: 1 + 4 * i },
			plug: 'wall',
		})),
		desk: {
			name: 'desk',
			outputs: [
				{ id: 'a', universe: 1 },
				{ id: 'b', universe: 1 },
			],
			patch: ids.map((fixture, i) => ({ fixture, universe: 1, address: 1 + 4 * i, mode: 'whole' })),
			levels: ids.flatMap((_, i) => [0, 1].map((slot) => ({ universe: 1, slot: 1 + 4 * i + slot, level: 200 }))),
		},
		cables: ids.map((id, i) => ({
			id: `cable-${i + 1}`,
			kind: 'data',
			length: 4,
			from: i === 0 ? 'desk:a' : i === 32 ? 'desk:b' : `bar-${i}:out`,
			to: `${id}:in`,
		})),
		terminators: [...(count > 32 ? ['bar-32:out'] : []), `bar-${count}:out`],
	});
}

/** In the middle of the first line. */
const middle = (count: number): string => `bar-${Math.min(16, Math.ceil(count / 2))}`;

/** The bar for the whole table, milliseconds, on the rig of the size (24 fixtures). */
const TABLE = 3000;

test('from a complaint to the first check, and from answer to answer', () => {
	const rows: Record<string, string | number>[] = [];
	let at24 = Number.POSITIVE_INFINITY;
	for (const count of [4, 8, 16, 24, 64]) {
		const sheet = lineOf(count);
		let best = Number.POSITIVE_INFINITY;
		let bench = openBench(sheet, { kind: 'no-answer', fixture: middle(count) });
		for (let run = 0; run < (count > 24 ? 1 : 2); run++) {
			const from = performance.now();
			bench = openBench(sheet, { kind: 'no-answer', fixture: middle(count) });
			best = Math.min(best, performance.now() - from);
		}
		const took: number[] = [];
		for (let walk = 0; walk < 5; walk++) {
			const finder = finderOn(bench);
			for (let step = 0; step < 12; step++) {
				const from = performance.now();
				const next = finder.next();
				took.push(performance.now() - from);
				if (!next) break;
				finder.answer(next.check.id, next.outcomes[(walk + step) % next.outcomes.length]?.id ?? '');
			}
		}
		took.sort((a, b) => a - b);
		rows.push({
			fixtures: count,
			suspects: bench.candidates.length,
			checks: bench.checks.length,
			'table ms': Math.round(best),
			'next ms, median': (took[took.length >> 1] ?? 0).toFixed(1),
			'next ms, 95th': (took[Math.floor(took.length * 0.95)] ?? 0).toFixed(1),
		});
		if (count === 24) at24 = best;
	}
	console.table(rows);
	expect(at24).toBeLessThan(TABLE);
});
