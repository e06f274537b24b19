import { expect, test } from 'vitest';
import { bundledRig } from '../../../shared/sheet/index.ts';
import { faultyWitness, openOutcomes } from '../../../sim/finder/index.ts';

// four in line, the second complained of: two lights past it, one before
const bench = openOutcomes(bundledRig('four-in-line'), { kind: 'no-answer', fixture: 'wash-2' });
const row = bench.checks.find(({ id }) => id === 'row-right@wash-2');

const dark = (fixture: string) => ({ fault: 'switched-off', place: fixture });
const unplugged = (cable: string) => ({ fault: 'cable-out', place: cable, detail: 'to' });

test.each([
	['nothing', [], 'all'],
	['the cable to the first of two lights past it', [unplugged('cable-3')], 'beyond'],
	['both of them dark, each by itself', [dark('wash-3'), dark('wash-4')], 'beyond'],
	['both of them, and itself', [unplugged('cable-2')], 'beyond'],
	['the first of them alone', [dark('wash-3')], 'some'],
	['the last of them alone', [unplugged('cable-4')], 'some'],
	['the one before alone', [dark('wash-1')], 'some'],
	['the one before and the last', [dark('wash-1'), dark('wash-4')], 'some'],
	['all the others', [dark('wash-1'), dark('wash-3'), dark('wash-4')], 'none'],
] as const)('along the row, with wrong: %s', (_, faults, shows) => {
	expect(row?.read(faultyWitness(bench.meant, faults))).toBe(shows);
});
