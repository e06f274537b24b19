import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { harmless, LINE_LIMITS, receptions } from '../../../sim/line/index.ts';
import { at, cable, chain, names, receiver, splitter, wiring } from './build.ts';

const told = (row: Parameters<typeof harmless>[0], fixture = 'w1') => harmless(row, fixture);

describe('what is wrong and does no harm here is told, with where it begins to', () => {
	test('no terminator at 20 m', () => {
		// 4 × 5 m of cable and four unit loads: 66 m less what the loads add, by the limits' own table
		expect(told({ ...chain(4), terminators: [] })).toEqual([
			{ cause: 'no-terminator', port: 'w4:out', metres: 20, plugged: [], harms: 62 },
		]);
	});

	// symptom: with cable 2 broken inside, Wash 1 was told to fit a terminator in the socket that cable 2 is in
	test('an end whose socket holds a cable is told with that cable, broken inside or loose at its other end', () => {
		for (const c2 of [{ minus: 'open', plus: 'open' }, { plus: 'open' }, { to: null }] as const) {
			const row = chain(3, { cables: (k) => (k === 2 ? c2 : {}) });
			const [end] = told(row, 'w1').filter(({ cause }) => cause === 'no-terminator');
			expect(end, JSON.stringify(c2)).toMatchObject({ port: 'w1:out', plugged: ['c2'] });
		}
	});

	test('8 m of microphone cable', () => {
		const row = chain(2, { cables: (k) => (k === 1 ? { kind: 'microphone', length: 8 } : {}) });
		expect(told(row, 'w2')).toEqual([{ cause: 'microphone-cable', cables: ['c1'], metres: 8, harms: 30 }]);
	});

	test('a common lost between two that mains earth joins; on battery it is a cause', () => {
		const row = (earthed: boolean) => chain(1, { cables: () => ({ common: 'open' }), receivers: () => ({ earthed }) });
		expect(told(row(true))).toEqual([{ cause: 'common-open', cables: ['c1'] }]);
		expect(told(row(false))).toEqual([]);
		expect(names(at(row(false), 'w1'))).toEqual(['common-open']);
	});

	test('a common lost between a leader on battery and one on mains is no harmless one', () => {
		const row = {
			...chain(2, { cables: () => ({ common: 'open' }), receivers: (k) => ({ earthed: k === 2 }) }),
			talkers: [{ kind: 'leader', port: 'w1:out', fixture: 'w1' } as const],
		};
		expect(told(row, 'w2').map(({ cause }) => cause)).not.toContain('common-open');
		expect(names(at(row, 'w2'))).toContain('common-open');
	});

	test('on the line that feeds a splitter too, and nothing of the line beside it', () => {
		const row = wiring({
			receivers: [receiver('w1'), receiver('w2')],
			boxes: [splitter('fan')],
			cables: [
				cable('c0', 'desk:a', 'fan:in', { kind: 'microphone' }),
				cable('c1', 'fan:1', 'w1:in'),
				cable('c2', 'fan:2', 'w2:in', { kind: 'microphone' }),
			],
			terminators: ['w2:out'],
		});
		expect(told(row)).toEqual([
			{ cause: 'microphone-cable', cables: ['c0'], metres: 5, harms: 30 },
			{ cause: 'no-terminator', port: 'w1:out', metres: 5, plugged: [], harms: 65 },
		]);
	});

	test('at the limit itself there is no harm yet', () => {
		const micro = chain(1, { cables: () => ({ kind: 'microphone', length: LINE_LIMITS.microphoneMetres }) });
		expect(told(micro).map(({ cause }) => cause)).toEqual(['microphone-cable']);
		const open = chain(1, { cables: () => ({ length: LINE_LIMITS.openMetres - LINE_LIMITS.metresPerLoad }) });
		expect(told({ ...open, terminators: [] }).map(({ cause }) => cause)).toEqual(['no-terminator']);
	});

	test('nothing where nothing is sent, where two send, or for a fixture there is not', () => {
		const row = { ...chain(2), terminators: [] };
		expect(told({ ...row, talkers: [] })).toEqual([]);
		expect(told({ ...row, talkers: [...row.talkers, { kind: 'leader', port: 'w2:out', fixture: 'w2' }] })).toEqual([]);
		expect(told(row, 'w9')).toEqual([]);
	});
});

const metres = fc.integer({ min: 1, max: 200_000 }).map((millimetres) => millimetres / 1000);

test('an open end and microphone cable are each told once: as harmless to their limit, as a cause past it', () => {
	fc.assert(
		fc.property(
			fc.array(metres, { minLength: 1, maxLength: 6 }),
			fc.integer({ min: 0, max: 5 }),
			fc.boolean(),
			(lengths, which, ended) => {
				const count = lengths.length;
				const row = chain(count, {
					cables: (k) => ({ length: lengths[k - 1] as number, kind: k - 1 === which % count ? 'microphone' : 'data' }),
					receivers: () => ({ unitLoads: 0.25 }),
				});
				const line = ended ? row : { ...row, terminators: [] };
				const last = `w${count}`;
				const causes = names(at(line, last));
				const here = harmless(line, last).map(({ cause }) => cause);
				const run = lengths.reduce((sum, each) => sum + each, 0);
				const harms = run + 0.25 * count * LINE_LIMITS.metresPerLoad > LINE_LIMITS.openMetres;
				expect([causes.includes('no-terminator'), here.includes('no-terminator')]).toEqual(
					ended ? [false, false] : [harms, !harms],
				);
				const long = (lengths[which % count] as number) > LINE_LIMITS.microphoneMetres;
				expect([causes.includes('microphone-cable'), here.includes('microphone-cable')]).toEqual([long, !long]);
			},
		),
	);
});

test('the point named is the point: a hair short of it nothing is spoiled, a hair past it frames are', () => {
	fc.assert(
		fc.property(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 8 }), (count, length) => {
			const row = (more: number) => ({
				...chain(count, { cables: (k) => ({ length: k === count ? length + more : length }) }),
				terminators: [],
			});
			const [end] = harmless(row(0), 'w1');
			if (end?.cause !== 'no-terminator') throw new Error('an open end is told');
			const room = end.harms - end.metres;
			const quality = (more: number) => receptions(row(more)).get('w1')?.quality;
			expect([quality(room - 0.01), quality(room + 0.01)]).toEqual(['clean', 'marginal']);
		}),
	);
});
