import { describe, expect, test } from 'vitest';
import { EIA485, TIMING } from '../../shared/dmx/index.ts';
import { LINE_LIMITS } from '../../sim/line/index.ts';
import {
	at,
	cable,
	chain,
	desk,
	leader,
	names,
	qualities,
	receiver,
	splitter,
	wiring,
	withCables,
} from '../sim/line/build.ts';

// What standards and makers' wiring notes say of the line, asked of the simulated one. `read` means read in a text that
// states it; `recalculated` is arithmetic on read values; what a hand would swear by and nobody prints is `common practice, no source`.

/** Metres a signal's echo may run out and back three times within half a bit, at 0.66 of the speed of light. */
const threeRoundTrips = (bitsPerSecond: number) => ((0.5 / bitsPerSecond) * 0.66 * 299_792_458) / 6;

describe('loads (EIA-485)', () => {
	test('a line bears 32 unit loads and not one more (read: makers’ wiring notes quoting EIA-485)', () => {
		const loads = (count: number) => chain(count, { cables: () => ({ length: 1 }) });
		expect(qualities(loads(EIA485.mostUnitLoads))).not.toContain('m');
		expect(names(at(loads(EIA485.mostUnitLoads + 1), 'w1'))).toEqual(['too-many-loads']);
	});

	test('256 receivers of an eighth of a load (read: a transceiver’s manual)', () => {
		const eighths = (count: number) =>
			chain(count, { cables: () => ({ length: 0.5 }), receivers: () => ({ unitLoads: 1 / 8 }) });
		expect(at(eighths(256), 'w1').quality).toBe('clean');
		expect(names(at(eighths(257), 'w1'))).toEqual(['too-many-loads']);
	});

	test('a splitter takes the rest (read: makers’ manuals on more than 32 receivers)', () => {
		const row = (head: string, from: number) =>
			chain(20, { head, cables: () => ({ length: 1 }) }).cables.map((one) => ({
				...one,
				id: `${from}-${one.id}`,
				from: one.from?.replace(/^w(\d+)/, (_, k) => `w${Number(k) + from}`) ?? null,
				to: one.to?.replace(/^w(\d+)/, (_, k) => `w${Number(k) + from}`) ?? null,
			}));
		const split = wiring({
			receivers: Array.from({ length: 40 }, (_, i) => receiver(`w${i + 1}`)),
			boxes: [splitter('s', 2)],
			cables: [cable('feed', 'desk:a', 's:in'), ...row('s:1', 0), ...row('s:2', 20)],
			terminators: ['w20:out', 'w40:out'],
		});
		expect(qualities(split)).toBe('c'.repeat(40));
	});
});

describe('the terminator (E1.11, EIA-485)', () => {
	const long = chain(4, { cables: () => ({ length: 40 }) });

	test('at the far end makes a long line whole (read: tables that quote E1.11)', () => {
		expect(qualities(long)).toBe('cccc');
		expect(at({ ...long, terminators: [] }, 'w4').causes).toEqual([
			{ cause: 'no-terminator', port: 'w4:out', metres: 160, plugged: [] },
		]);
	});

	test('anywhere else it does not (read: makers’ notes, “at the very end of the control cable run”)', () => {
		expect(names(at({ ...long, terminators: ['w2:out'] }, 'w4'))).toEqual(['no-terminator']);
	});

	test('in some simple cases it can be left out with little harm; not with length or many receivers (read: a maker’s manual)', () => {
		const open = (count: number, length: number) => ({
			...chain(count, { cables: () => ({ length }) }),
			terminators: [],
		});
		expect(at(open(4, 5), 'w4').quality).toBe('clean');
		expect(at(open(4, 50), 'w4').quality).toBe('marginal');
		expect(at(open(32, 3), 'w4').quality).toBe('marginal');
	});

	test('one at each end is what a driver is made for, more load it too much (read: an RS-485 maker’s wiring notes)', () => {
		const ends = ['w1:in', 'w4:out'];
		const row = { ...long, talkers: [leader('w2')], cables: long.cables.slice(1) };
		expect(at({ ...row, terminators: ends }, 'w3').quality).toBe('clean');
		expect(names(at({ ...row, terminators: [...ends, 'w3:out'] }, 'w3'))).toEqual(['extra-terminators']);
	});

	test('may be missing up to three round trips within half a bit: 66 m at 250 kbit/s (rule read in two makers’ manuals, recalculated)', () => {
		// One of those manuals prints 475 feet at 115,200 bit/s and 950 at 57,600 (it rounds 0.66 of the speed of light to 0.66 ft/ns).
		expect(threeRoundTrips(115_200) / 0.3048 / 475).toBeCloseTo(1, 1);
		expect(threeRoundTrips(57_600) / 0.3048 / 950).toBeCloseTo(1, 1);
		expect(Math.round(threeRoundTrips(TIMING.bitRate))).toBe(LINE_LIMITS.openMetres);
		expect(threeRoundTrips(1e6 / TIMING.bitUs)).toBeCloseTo(65.95, 2);
	});
});

describe('wires', () => {
	test('one data wire open: the line may half work, and a terminator then makes it worse (read in a text that quotes E1.11)', () => {
		for (const wire of ['minus', 'plus']) {
			const open = withCables(chain(4), { c2: { [wire]: 'open' } });
			const bare = { ...open, terminators: [] };
			expect(qualities(bare)).toBe('cmmm');
			expect(at(bare, 'w4').rate).toBeLessThan(1);
			expect(at(open, 'w4').rate).toBeGreaterThan(at(bare, 'w4').rate);
		}
	});

	test('loop-through is a wire: it passes with the power off (read: makers’ manuals, “pass-through … when power is disconnected”)', () => {
		// Power is not among what decides: neither the battery, nor mains at the inlet, changes a sound line.
		for (const earthed of [true, false]) expect(qualities(chain(5, { receivers: () => ({ earthed }) }))).toBe('ccccc');
		expect(qualities(chain(5, { receivers: (k) => ({ dead: k < 5 }) }))).toBe('nnnnc');
	});

	test('pins 2 and 3 changed over, nothing works; changed over twice, it does (common practice, no source)', () => {
		expect(qualities(withCables(chain(2), { c1: { swapped: true } }))).toBe('nn');
		expect(qualities(withCables(chain(2), { c1: { swapped: true }, c2: { swapped: true } }))).toBe('nc');
	});

	test('pin 1 open: battery fixtures suffer, mains ones have earth for a way home (common practice, no source)', () => {
		const open = (earthed: boolean) => chain(2, { cables: () => ({ common: 'open' }), receivers: () => ({ earthed }) });
		expect(qualities(open(true))).toBe('cc');
		expect(qualities(open(false))).toBe('mm');
	});
});

describe('how it is laid', () => {
	test('one driver at a time (EIA-485, read: “allow only one driver to send data at a time”)', () => {
		const two = { ...chain(3), talkers: [desk(), leader('w1')] };
		expect([at(two, 'w3').rate, at(two, 'w3').talker]).toEqual([1, null]);
	});

	test('no branching into a Y; a splitter instead (read: makers’ manuals, “cannot be branched or split to a Y cable”)', () => {
		const receivers = [receiver('w1'), receiver('w2')];
		const y = wiring({ receivers, cables: [cable('c1', 'desk:a', 'w1:in'), cable('c2', 'desk:a', 'w2:in')] });
		expect(names(at(y, 'w1'))).toEqual(['split']);
		const split = wiring({
			receivers,
			boxes: [splitter('s', 2)],
			cables: [cable('c0', 'desk:a', 's:in'), cable('c1', 's:1', 'w1:in'), cable('c2', 's:2', 'w2:in')],
		});
		expect(qualities(split)).toBe('cc');
	});

	test('past 300 m a repeater may be needed; past the 1200 m of EIA-485 it hardly works (read: makers’ notes)', () => {
		const run = (length: number) => at(chain(1, { cables: () => ({ length }) }), 'w1');
		expect(run(300).quality).toBe('clean');
		expect(names(run(301))).toEqual(['too-long']);
		expect(run(1200).rate).toBeGreaterThan(0.9);
	});

	test('the rule “bit rate times metres at most 10⁸” gives 400 m, past the limit kept here (read: a hobby text; recalculated)', () => {
		expect(1e8 / TIMING.bitRate).toBe(400);
		expect(LINE_LIMITS.dataMetres).toBeLessThanOrEqual(400);
	});

	test('microphone cable passes over a short way, not reliably over a long one (read: makers’ manuals; the 30 m are common practice, no source)', () => {
		const run = (length: number) => at(chain(1, { cables: () => ({ length, kind: 'microphone' }) }), 'w1');
		expect(run(10).quality).toBe('clean');
		expect(names(run(100))).toEqual(['microphone-cable']);
	});
});
