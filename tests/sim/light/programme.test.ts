import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../shared/error/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import {
	heardSince,
	programmeAverage,
	programmeFlashes,
	programmeLevels,
	type SoundState,
	secondsAStep,
	staticLevels,
} from '../../../sim/light/index.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';
import { saidBy } from '../../shared/thrown.ts';
import { fixtures, lab, silence } from './lab.ts';

const anyProgramme = fc.constantFrom(
	...fixtures.flatMap((profile) => profile.programmes.map((programme, index) => ({ profile, programme, index }))),
);
const speed = fc.integer({ min: 1, max: 100 });
const heard: fc.Arbitrary<SoundState> = fc.record({
	level: between(0, 1),
	beats: fc.nat(1000),
	since: fc.nat(100_000),
});
const room = (profile: Profile) => new Float32Array(profile.cells * profile.emitters.length);

function at(profile: Profile, index: number, ms: number, speedNow: number, ears: SoundState = silence): Float32Array {
	const out = room(profile);
	programmeLevels(profile, { index, elapsedMs: ms, speed: speedNow, heard: ears }, out);
	return out;
}

function colour(profile: Profile, id: string, gain = 1): number[] {
	const out = room(profile);
	staticLevels(
		profile,
		profile.held.findIndex((it) => it.id === id),
		out,
	);
	return [...out.map((it) => it * gain)];
}

const index = (id: string) => lab.programmes.findIndex((it) => it.id === id);
const step = (id: string, speedNow: number) => secondsAStep(lab, index(id), speedNow) * 1000;

describe('seconds a step', () => {
	it('runs from slowest to fastest, each notch the same ratio', () => {
		fc.assert(
			fc.property(anyProgramme, fc.integer({ min: 1, max: 98 }), ({ profile, programme, index: i }, notch) => {
				const seconds = (n: number) => secondsAStep(profile, i, n);
				expect(seconds(1)).toBeCloseTo(programme.slowest, 9);
				expect(seconds(100)).toBeCloseTo(programme.fastest, 9);
				expect(seconds(notch + 1) / seconds(notch)).toBeCloseTo(seconds(notch + 2) / seconds(notch + 1), 9);
				expect(seconds(0)).toBe(seconds(1));
				expect(seconds(200)).toBe(seconds(100));
			}),
			{ numRuns: runs(50) },
		);
	});
});

describe('a programme', () => {
	it('is the same asked twice, lies within 0..1, and comes round after all its colours', () => {
		fc.assert(
			fc.property(anyProgramme, fc.nat(600_000), speed, heard, ({ profile, programme, index: i }, ms, pace, ears) => {
				const once = at(profile, i, ms, pace, ears);
				expect(at(profile, i, ms, pace, ears)).toEqual(once);
				expect(Math.min(...once)).toBeGreaterThanOrEqual(0);
				expect(Math.max(...once)).toBeLessThanOrEqual(1);
				if (programme.kind === 'sound') return;
				const round = secondsAStep(profile, i, pace) * 1000 * programme.colours.length;
				const later = at(profile, i, ms + round, pace, ears);
				// a step's very edge may fall on either side after so many sums
				const edge = (ms / (round / programme.colours.length)) % 0.5;
				if (edge < 1e-6 || edge > 0.5 - 1e-6) return;
				for (const [n, level] of later.entries()) expect(level).toBeCloseTo(once[n] ?? 0, 4);
			}),
			{ numRuns: runs(300) },
		);
	});

	it('changes in steps', () => {
		const ms = step('lab-change', 1);
		expect([...at(lab, index('lab-change'), 0, 1)]).toEqual(colour(lab, 'red'));
		expect([...at(lab, index('lab-change'), ms - 1, 1)]).toEqual(colour(lab, 'red'));
		expect([...at(lab, index('lab-change'), ms + 1, 1)]).toEqual(colour(lab, 'yellow'));
		expect([...at(lab, index('lab-change'), 6 * ms + 1, 1)]).toEqual(colour(lab, 'red'));
	});

	it('fades halfway between two colours at half a step', () => {
		const [from, to] = [colour(lab, 'red'), colour(lab, 'yellow')];
		const half = at(lab, index('lab-fade'), step('lab-fade', 30) / 2, 30);
		for (const [n, level] of half.entries()) expect(level).toBeCloseTo(((from[n] ?? 0) + (to[n] ?? 0)) / 2, 5);
	});

	it('fades without a jump', () => {
		fc.assert(
			fc.property(fc.nat(300_000), (ms) => {
				const [a, b] = [at(lab, index('lab-fade'), ms, 100), at(lab, index('lab-fade'), ms + 1, 100)];
				// a level moves at most its whole way in a step
				for (const [n, level] of a.entries()) {
					expect(Math.abs(level - (b[n] ?? 0))).toBeLessThanOrEqual(1 / step('lab-fade', 100) + 1e-6);
				}
			}),
			{ numRuns: runs(100) },
		);
	});

	it('swells from nothing to full and back in a pulse', () => {
		const ms = step('lab-pulse', 50);
		expect(Math.max(...at(lab, index('lab-pulse'), 0, 50))).toBeCloseTo(0, 9);
		expect([...at(lab, index('lab-pulse'), ms / 2, 50)]).toEqual(colour(lab, 'white'));
		expect(at(lab, index('lab-pulse'), ms / 4, 50)[0]).toBeCloseTo((colour(lab, 'white')[0] ?? 0) / 2, 6);
	});

	it('flashes as often as it says in a strobe, and only then says so', () => {
		const hz = programmeFlashes(lab, index('lab-strobe'), 100);
		const lit = Array.from({ length: 10_000 }, (_, ms) => (at(lab, index('lab-strobe'), ms + 0.3, 100)[0] ?? 0) > 0);
		const starts = lit.filter((now, ms) => now && !lit[ms - 1]).length;
		expect(hz).toBeCloseTo(1 / 0.09, 6);
		expect(Math.abs(starts - hz * 10)).toBeLessThanOrEqual(1);
		for (const [i, programme] of lab.programmes.entries()) {
			expect(programmeFlashes(lab, i, 100) > 0).toBe(programme.kind === 'strobe');
		}
	});

	it('refuses one that is not there', () => {
		const act = () => at(lab, 99, 0, 1);
		expect(act).toThrow(InputError);
		expect(saidBy(act)).toContain(`Programmes of Lab run from 0 to ${lab.programmes.length - 1}; found 99.`);
		expect(saidBy(() => staticLevels(lab, -1, room(lab)))).toContain(
			'Static colours of Lab run from 0 to 8; found -1.',
		);
	});
});

describe('sound', () => {
	const ears = (beats: number, since = 0, level = 0): SoundState => ({ beats, since, level });

	it('step: calls the next colour on each beat, and keeps it', () => {
		const names = ['red', 'green', 'blue', 'red'];
		for (const [beats, name] of names.entries()) {
			expect([...at(lab, index('lab-step'), 12_345, 1, ears(beats))]).toEqual(colour(lab, name));
		}
	});

	it('swell: as bright as it is loud', () => {
		fc.assert(
			fc.property(between(0, 1), fc.nat(10_000), (level, ms) => {
				const got = at(lab, index('lab-swell'), ms, 20, ears(0, 0, level));
				expect(Math.max(...got)).toBeCloseTo(level, 6);
			}),
			{ numRuns: runs(50) },
		);
	});

	it('flash: full on the beat, dead after a step, dark before the first beat', () => {
		const ms = step('lab-flash', 100);
		const flash = (after: number, beats = 1) =>
			Math.max(...at(lab, index('lab-flash'), 5000 + after, 100, ears(beats, 5000)));
		expect(flash(0)).toBe(1);
		expect(flash(ms / 2)).toBeCloseTo(0.5, 6);
		expect(flash(ms + 1)).toBe(0);
		expect(flash(0, 0)).toBe(0);
	});

	it('run: lights one cell, one further on each beat, and the next colour on the next round', () => {
		const lit = (beats: number) => {
			const out = at(lab, index('lab-run'), 0, 50, ears(beats));
			return [0, 1, 2].filter((cell) => out.subarray(cell * 4, cell * 4 + 4).some((it) => it > 0));
		};
		expect([0, 1, 2, 3].map(lit)).toEqual([[0], [1], [2], [0]]);
		expect(at(lab, index('lab-run'), 0, 50, ears(1))[4]).toBe(1);
		expect(at(lab, index('lab-run'), 0, 50, ears(4))[6]).toBe(1);
	});

	it("tells the last beat on the programme's own clock", () => {
		expect(heardSince(ears(3, 1500, 0.4), 1200)).toEqual(ears(3, 300, 0.4));
	});
});

describe('the average', () => {
	/** A beat every half second, as an average takes it. */
	const onTheBeat = (ms: number, level: number): SoundState => {
		const beats = Math.floor(ms / 500) + 1;
		return { beats, since: (beats - 1) * 500, level };
	};

	it('is what a round of the programme comes to, sampled', () => {
		for (const profile of fixtures) {
			for (const [i, programme] of profile.programmes.entries()) {
				for (const pace of [1, 70, 100]) {
					const seconds = secondsAStep(profile, i, pace);
					// a round of colours, or of beats over every colour and cell
					const sound = programme.kind === 'sound' && programme.answer !== 'swell';
					const rounds = programme.colours.length * (programme.answer === 'run' ? profile.cells : 1);
					const round = rounds * (sound ? 500 : seconds * 1000);
					const sum = room(profile);
					const samples = 1200 * programme.colours.length;
					for (let n = 0; n < samples; n++) {
						const ms = ((n + 0.5) * round) / samples;
						const now = at(profile, i, ms, pace, onTheBeat(ms, 0.6));
						for (const [e, level] of now.entries()) sum[e] = (sum[e] ?? 0) + level / samples;
					}
					const average = room(profile);
					programmeAverage(profile, i, pace, onTheBeat(0, 0.6), average);
					for (const [e, level] of average.entries()) {
						expect(Math.abs(level - (sum[e] ?? 0)), `${profile.id} ${programme.id} at ${pace}`).toBeLessThan(0.005);
					}
				}
			}
		}
	});

	it('is nothing for a flash before the first beat', () => {
		const out = room(lab);
		programmeAverage(lab, index('lab-flash'), 50, silence, out);
		expect(Math.max(...out)).toBe(0);
	});
});
