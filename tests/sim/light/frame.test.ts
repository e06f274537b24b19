import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { modeOf, type Profile } from '../../../shared/profile/index.ts';
import { compileMode, frameOf, makeAsk } from '../../../sim/light/index.ts';
import { runs } from '../../runs.ts';
import { anyMode, lab, levelsFor, share } from './lab.ts';

const readBack = (profile: Profile, mode: string, frame: Uint8Array) => {
	const ask = makeAsk(profile);
	compileMode(profile, mode).read(frame, 1, ask);
	return ask;
};

const anyCase = anyMode.chain(({ profile, mode }) =>
	fc.record({ profile: fc.constant(profile), mode: fc.constant(mode), levels: levelsFor(profile), intensity: share }),
);

describe("a leader's frame", () => {
	it('read back through the same chart gives the same light, but for what the mode cannot say', () => {
		fc.assert(
			fc.property(anyCase, ({ profile, mode, levels, intensity }) => {
				const width = profile.emitters.length;
				const frame = frameOf(profile, mode, levels, intensity);
				expect(frame.length).toBe(compileMode(profile, mode).footprint);
				const ask = readBack(profile, mode, frame);
				expect(ask).toMatchObject({ held: -1, programme: -1, strobe: 0, dark: false });
				for (const [at, got] of ask.levels.entries()) {
					const cell = Math.floor(at / width);
					const slots = modeOf(profile, mode).slots.filter(
						({ drives, cells }) =>
							drives.kind === 'emitter' &&
							drives.emitter === profile.emitters[at % width]?.id &&
							(cells?.includes(cell + 1) ?? true),
					);
					// the brightest of all cells that share its slots is what a cell gets
					const sharing = slots.flatMap((slot) => slot.cells?.map((it) => it - 1) ?? [...ask.intensity.keys()]);
					const wanted = sharing.map((it) => (levels[it * width + (at % width)] ?? 0) * intensity);
					const light = got * (ask.intensity[cell] ?? 0);
					// half a value of 255 in the level, and half of one in the intensity
					expect(Math.abs(light - Math.max(0, ...wanted))).toBeLessThanOrEqual(1 / 255 + 1e-6);
				}
			}),
			{ numRuns: runs(300) },
		);
	});

	it('loses an emitter the mode has no slot for', () => {
		const violet = new Float32Array(12);
		violet[3] = 1;
		expect([...readBack(lab, 'odd', frameOf(lab, 'odd', violet, 1)).levels]).toEqual(Array(12).fill(0));
	});

	it('takes levels and intensity past their ends as the ends', () => {
		const frame = frameOf(lab, 'three', new Float32Array(12).fill(7), Number.NaN);
		expect([...frame]).toEqual([0, 0, 0]);
		expect([...frameOf(lab, 'three', new Float32Array(12).fill(7), 3)]).toEqual([255, 255, 255]);
	});
});
