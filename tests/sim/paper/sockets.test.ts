import { describe, expect, test } from 'vitest';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { quickSheet, type RigSheet } from '../../../shared/sheet/index.ts';
import { optionText } from '../../../src/wording/papers.ts';
import { itemOf } from './items.ts';

// Symptom: a socket told by a wrong name left every test green. Cause: no question of the tests spoke of a socket. On a long line with
// nothing at its end one does: the terminator goes into the out socket of the last.

/** A leader and one follower, far apart. */
function far(): RigSheet {
	const sheet = quickSheet({ count: 2, linked: 'leader', profile: 'tallow-6' });
	return { ...sheet, cables: sheet.cables.map((cable) => ({ ...cable, length: 80 })) };
}

describe('a question about a line', () => {
	test('names the socket by its fixture and by what it is', () => {
		const sheet = far();
		const last = sheet.fixtures[1]?.name ?? '';
		const said = new Set<string>();
		for (let number = 0; number < 30 && said.size === 0; number++) {
			const item = itemOf('first-check', number, { profiles: BUNDLED, sheet });
			if (item.ask.form !== 'one') throw new Error('another form');
			for (const option of item.ask.options) {
				const { say, facts } = option.label;
				if (say !== 'check-mend-fit-terminator') continue;
				expect(facts['place']).toBe(`${last}:out`);
				said.add(optionText(item, option));
			}
		}
		expect([...said]).toEqual([expect.stringContaining(`${last}, data out`)]);
	});
});
