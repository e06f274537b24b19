import { describe, expect, test } from 'vitest';
import { STUBBORN_FAULTS, UNKNOWN_FAULTS } from './unknown-by-hand.ts';
import { benchFor, complaintsWith, walkUnknown } from './unknown-walk.ts';

// by another way than the code's: what asks after power by its name
const ASKS_AFTER_POWER = /^(power-|mains-|socket-live|hall-|breakers|box-|charger)/;

describe('where nothing known fits, what the answers have in common', () => {
	test.each([...UNKNOWN_FAULTS, ...STUBBORN_FAULTS].map((fault) => [fault.id, fault] as const))('%s', (_, fault) => {
		for (const complaint of complaintsWith(fault)) {
			const { last } = walkUnknown(fault, complaint);
			if (last?.because !== 'unknown') {
				expect(last?.common).toBeNull();
				continue;
			}
			const { odd = [], fine = [], families = [] } = last.common ?? {};
			const bench = benchFor(fault.rig, complaint);
			const kinds = new Set([...odd, ...fine].map((id) => bench.checks.find((check) => check.id === id)?.kind ?? ''));
			expect([...kinds].some((kind) => kind.startsWith('mend-'))).toBe(false);
			// 'Mains lead of wash 2: fine, look there last' was read as dead, or as looked after
			const power = fine.filter((id) => ASKS_AFTER_POWER.test(id));
			expect(power).toEqual([]);
			// no answer is both, and of a walk that asked something there is something to say
			expect(odd.filter((id) => fine.includes(id))).toEqual([]);
			expect(odd.length + fine.length + families.length).toBeGreaterThan(0);
			expect(new Set(families).size).toBe(families.length);
		}
	});

	test('a fixture that is dark with no power points at power or the fixture, and its lamp counts as off', () => {
		const fault = STUBBORN_FAULTS.find(({ id }) => id === 'its supply is dead inside');
		if (!fault) throw new Error('the fault was to be there');
		const { last } = walkUnknown(fault, { kind: 'dark', fixture: 'wash-2' });
		expect(last?.common?.odd).toContain('power-lamp@wash-2');
		expect(last?.common?.families[0]).toBe('power');
	});
});
