import { loadavg } from 'node:os';
import { expect, test } from 'vitest';
import { type RigSheet, readSheet } from '../../shared/sheet/index.ts';
import { finderOn, openOutcomes, openPart, type RigOutcomes } from '../../sim/finder/index.ts';

/** Bars on a desk, lit: lines of 32, a line carrying no more, each from an output of its own. */
function lineOf(count: number): RigSheet {
	const ids = Array.from({ length: count }, (_, i) => `bar-${i + 1}`);
	const starts = ids.filter((_, i) => i % 32 === 0);
	// four slots each: 128 of them fit one universe
	return readSheet({
		version: 1,
		name: 'speed',
		hall: { width: 200, height: 6 },
		fixtures: ids.map((id, i) => ({
			id,
			name: id,
			profile: 'picket-8',
			place: { x: (count > 64 ? 1.5 : 3) * i, y: 0, throw: 2 },
			settings: { mode: 'whole', address: 1 + 4 * i },
			plug: 'wall',
		})),
		desk: {
			name: 'desk',
			outputs: starts.map((_, line) => ({ id: 'abcd'.charAt(line), universe: 1 })),
			patch: ids.map((fixture, i) => ({ fixture, universe: 1, address: 1 + 4 * i, mode: 'whole' })),
			levels: ids.flatMap((_, i) => [0, 1].map((slot) => ({ universe: 1, slot: 1 + 4 * i + slot, level: 200 }))),
		},
		cables: ids.map((id, i) => ({
			id: `cable-${i + 1}`,
			kind: 'data',
			length: 4,
			from: i % 32 === 0 ? `desk:${'abcd'.charAt(i / 32)}` : `bar-${i}:out`,
			to: `${id}:in`,
		})),
		terminators: ids.filter((_, i) => i % 32 === 31 || i === count - 1).map((id) => `${id}:out`),
	});
}

/** In the middle of the first line. */
const middle = (count: number): string => `bar-${Math.min(16, Math.ceil(count / 2))}`;

/** The bars of the issue on a rig of its size (24 fixtures), milliseconds: a check on screen, the whole table, and from answer to check (95th of 100; at 16 fixtures too). */
const FIRST = 500;
const TABLE = 3000;
const NEXT = 16;

function timed<T>(act: () => T): { readonly ms: number; readonly got: T } {
	const from = performance.now();
	const got = act();
	return { ms: performance.now() - from, got };
}

/** Walks through a table, answers picked by turns; milliseconds from each answer to the check that comes of it. Pairs of faults come in where one alone explains too little. */
function walked(bench: RigOutcomes): { readonly next: number[]; readonly widening: number[] } {
	const next: number[] = [];
	const widening: number[] = [];
	for (let walk = 0; next.length < 100 && walk < 20; walk++) {
		const finder = finderOn(bench);
		for (let step = 0, now = finder.next(); now && step < 12; step++) {
			const { id } = now.check;
			const outcome = now.outcomes[(walk + step) % now.outcomes.length]?.id ?? '';
			const before = finder.suspects().length;
			const { ms, got } = timed(() => {
				finder.answer(id, outcome);
				return finder.next();
			});
			(finder.suspects().length > before ? widening : next).push(ms);
			now = got;
		}
	}
	return { next, widening };
}

const at = (times: readonly number[], share: number): number =>
	[...times].sort((a, b) => a - b)[Math.floor(share * (times.length - 1))] ?? 0;

test('from a complaint to the first check, to the whole table, and from answer to check', () => {
	const rows: Record<string, string | number>[] = [];
	const bars = { first: Number.POSITIVE_INFINITY, table: Number.POSITIVE_INFINITY, next: 0 };
	let before: { readonly first: number; readonly table: number } | null = null;
	for (const count of [4, 8, 16, 24, 64, 128]) {
		const sheet = lineOf(count);
		const complaint = { kind: 'no-answer', fixture: middle(count) } as const;
		const runs = Array.from({ length: count > 24 ? 1 : 2 }, () => ({
			first: timed(() => finderOn(openPart(sheet, complaint) ?? openOutcomes(sheet, complaint)).next()).ms,
			table: timed(() => openOutcomes(sheet, complaint)),
		}));
		const first = Math.min(...runs.map((run) => run.first));
		const table = Math.min(...runs.map((run) => run.table.ms));
		const bench = runs[0]?.table.got ?? openOutcomes(sheet, complaint);
		const { next, widening } = walked(bench);
		rows.push({
			fixtures: count,
			suspects: bench.candidates.length,
			checks: bench.checks.length,
			'first check ms': Math.round(first),
			'the first time': Math.round(runs[0]?.first ?? 0),
			'table ms': Math.round(table),
			'grown by': before ? `${(first / before.first).toFixed(1)}, ${(table / before.table).toFixed(1)}` : '',
			'next ms, median': at(next, 0.5).toFixed(1),
			'next ms, 95th': at(next, 0.95).toFixed(1),
			'with pairs coming in, ms': widening.length > 0 ? Math.round(at(widening, 0.5)) : '',
		});
		before = { first, table };
		if (count === 16 || count === 24) bars.next = Math.max(bars.next, at(next, 0.95));
		if (count === 24) Object.assign(bars, { first, table });
	}
	console.table(rows);
	console.log(`load average ${loadavg()[0]?.toFixed(1)}: the bars are for an idle machine`);
	expect(bars.first).toBeLessThan(FIRST);
	expect(bars.table).toBeLessThan(TABLE);
	expect(bars.next).toBeLessThan(NEXT);
});
