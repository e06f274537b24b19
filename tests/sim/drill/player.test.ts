import { describe, expect, it } from 'vitest';
import { makeRandom } from '../../../shared/random/index.ts';
import { DRILL_KINDS, HAND, markDrill, pressesOf, shortestWay } from '../../../sim/drill/index.ts';
import { runs } from '../../runs.ts';
import { makeDrill } from './made.ts';
import { playByHints } from './player.ts';

// Symptom: hints asked to hold a key for up to 29 s and to let go within a tenth of a second, and the fewest presses counted on
// it, so that nobody could do a drill by its hints in as many. Cause: a hold of any length, let go exactly in time, was one press.

const SEEDS = runs(4, 2000);
/** Presses more than the fewest that luck may cost. */
const LUCK = 2;

describe.each(DRILL_KINDS.map(({ id }) => id))('%s', (kind) => {
	it(`is done at a person's speed by its hints, within the fewest and ${LUCK}: ${SEEDS} seeds`, () => {
		for (let seed = 0; seed < SEEDS; seed++) {
			const drill = makeDrill(kind, seed);
			const { rig, presses, longest, said } = playByHints(drill, makeRandom(seed).fork('hand'));
			const mark = markDrill(drill, rig.log);
			const at = `seed ${seed}: ${said.join(' ')}`;
			expect(mark.wrong, at).toEqual([]);
			expect(presses, at).toBeLessThanOrEqual(mark.fewest + LUCK);
			expect(longest, at).toBeLessThanOrEqual(HAND.longestMs);
		}
	});

	it('holds no key longer than anybody would, but to open a lock', () => {
		for (let seed = 0; seed < SEEDS; seed++) {
			const drill = makeDrill(kind, seed);
			const way = shortestWay(drill);
			for (const [i, event] of way.entries()) {
				const next = way[i + 1];
				if (event.type !== 'key.down' || event.key === 'set' || next?.type !== 'clock.wait') continue;
				expect(next.ms, `seed ${seed}`).toBeLessThanOrEqual(HAND.longestMs);
			}
			expect(pressesOf(way)).toBe(markDrill(drill, []).fewest);
		}
	});
});
