import fc from 'fast-check';
import { BUNDLED, type Profile, readProfile } from '../../../shared/profile/index.ts';
import type { SoundState } from '../../../sim/light/index.ts';
import { between } from '../../between.ts';

const cobble = BUNDLED.find((it) => it.id === 'cobble') as Profile;

/**
 * A fixture for these tests alone, with what the bundled ones lack: intensity over all cells and over each, two slots for one
 * emitter, three band slots that can be at odds, a speed slot before them, an emitter no mode reaches, a one-value strobe band.
 */
export const lab: Profile = readProfile({
	...structuredClone(cobble),
	id: 'lab',
	name: 'Lab',
	cells: 3,
	emitters: [
		...cobble.emitters,
		{ id: 'violet', name: 'Violet', xy: [0.1738, 0.005], lumens: 0.5, watts: 9, ultraviolet: true },
	],
	held: [...cobble.held, { id: 'glow', name: 'glow', levels: { violet: 255 } }],
	programmes: [
		...cobble.programmes,
		{
			id: 'lab-change',
			name: 'lab-change',
			kind: 'change',
			colours: ['red', 'yellow', 'green', 'cyan', 'blue', 'magenta'],
			slowest: 15,
			fastest: 0.3,
		},
		{
			id: 'lab-fade',
			name: 'lab-fade',
			kind: 'fade',
			colours: ['red', 'yellow', 'green', 'cyan', 'blue', 'magenta'],
			slowest: 40,
			fastest: 0.8,
		},
		{ id: 'lab-pulse', name: 'lab-pulse', kind: 'pulse', colours: ['white'], slowest: 8, fastest: 0.4 },
		{ id: 'lab-strobe', name: 'lab-strobe', kind: 'strobe', colours: ['white'], slowest: 1, fastest: 0.09 },
		{
			id: 'lab-step',
			name: 'lab-step',
			kind: 'sound',
			answer: 'step',
			colours: ['red', 'green', 'blue'],
			slowest: 2,
			fastest: 0.3,
		},
		{
			id: 'lab-swell',
			name: 'lab-swell',
			kind: 'sound',
			answer: 'swell',
			colours: ['magenta'],
			slowest: 2,
			fastest: 0.3,
		},
		{
			id: 'lab-flash',
			name: 'lab-flash',
			kind: 'sound',
			answer: 'flash',
			colours: ['white'],
			slowest: 1,
			fastest: 0.1,
		},
		{
			id: 'lab-run',
			name: 'lab-run',
			kind: 'sound',
			answer: 'run',
			colours: ['red', 'blue'],
			slowest: 1,
			fastest: 0.1,
		},
		{ id: 'swap', name: 'Swap', kind: 'change', colours: ['red', 'blue'], slowest: 2, fastest: 0.05 },
	],
	modes: [
		...cobble.modes,
		{
			id: 'odd',
			name: 'Odd',
			slots: [
				{ id: 'speed', name: 'Speed', at: 1, drives: { kind: 'speed' } },
				{
					id: 'late',
					name: 'Late bands',
					at: 8,
					drives: {
						kind: 'bands',
						bands: [
							{ id: 'none', name: 'Nothing', from: 0, to: 99, effect: { do: 'nothing' } },
							{ id: 'blink', name: 'Blink', from: 100, to: 100, effect: { do: 'strobe', slow: 7, fast: 9 } },
							{ id: 'gold', name: 'Yellow', from: 101, to: 199, effect: { do: 'held', held: 'yellow' } },
							{ id: 'shut', name: 'Shut', from: 200, to: 255, effect: { do: 'dark' } },
						],
					},
				},
				{
					id: 'early',
					name: 'Early bands',
					at: 2,
					drives: {
						kind: 'bands',
						bands: [
							{ id: 'swap', name: 'Swap', from: 0, to: 49, effect: { do: 'programme', programme: 'swap' } },
							{ id: 'open', name: 'Open', from: 50, to: 149, effect: { do: 'open' } },
							{ id: 'flashing', name: 'Flashing', from: 150, to: 250, effect: { do: 'strobe', slow: 2, fast: 12 } },
							{ id: 'glow', name: 'Glow', from: 251, to: 255, effect: { do: 'held', held: 'glow' } },
						],
					},
				},
				{ id: 'master', name: 'Master', at: 3, fine: 4, drives: { kind: 'intensity' } },
				{ id: 'first', name: 'First cell', at: 5, drives: { kind: 'intensity' }, cells: [1] },
				{ id: 'red', name: 'Red', at: 6, fine: 7, drives: { kind: 'emitter', emitter: 'red' } },
				{ id: 'red-3', name: 'Red, last', at: 9, drives: { kind: 'emitter', emitter: 'red' }, cells: [3] },
				{ id: 'blue', name: 'Blue', at: 10, drives: { kind: 'emitter', emitter: 'blue' }, cells: [1, 2] },
			],
		},
	],
});

/** The bundled fixtures, and the lab's: each shown by its id where a property fails. */
export const fixtures: readonly Profile[] = [...BUNDLED.map((it) => structuredClone(it)), lab];
for (const profile of fixtures) Object.defineProperty(profile, fc.toStringMethod, { value: () => profile.id });

/** Any mode of any fixture. */
export const anyMode = fc.constantFrom(
	...fixtures.flatMap((profile) => profile.modes.map((mode) => ({ profile, mode: mode.id }))),
);

/** A whole frame. */
export const anyFrame = fc.uint8Array({ minLength: 512, maxLength: 512 });

export const silence: SoundState = { level: 0, beats: 0, since: 0 };

/** A share 0..1, its ends often. */
export const share = fc.oneof(fc.constantFrom(0, 1), between(0, 1));

/** Levels of a profile: cells × emitters. */
export const levelsFor = (profile: Profile) =>
	fc
		.array(share, {
			minLength: profile.cells * profile.emitters.length,
			maxLength: profile.cells * profile.emitters.length,
		})
		.map((list) => Float32Array.from(list));

/** A fixture with levels for it. */
export const anyLight = fc
	.constantFrom(...fixtures)
	.chain((profile) => levelsFor(profile).map((levels) => ({ profile, levels })));
