import { DIP_REACH, DIP_WEIGHTS, type DipWiring } from '../dmx/index.ts';
import type { DipPanel, Profile } from '../profile/index.ts';
import type { RigSheet } from '../sheet/index.ts';
import { benchWith } from './bench.ts';
import type { Level } from './ids.ts';
import type { Chance, Ground } from './types.ts';

/** Fixtures whose address is set by switches. */
export const dipsOf = ({ profiles }: Ground): { profile: Profile; panel: DipPanel }[] =>
	profiles.flatMap((profile) => (profile.panel.kind === 'dip' ? [{ profile, panel: profile.panel }] : []));

/** Which of nine switches are up, so many that adding them is easy or not. */
const UP_COUNTS: Readonly<Record<Level, readonly [least: number, most: number]>> = {
	easy: [1, 2],
	middle: [3, 3],
	hard: [4, 6],
};

/**
 * An address that so many switches set. Never 1: by the plain sum all down and switch 1 alone both read as it, so that two
 * settings would be right.
 */
export function addressFor(chance: Chance, level: Level, wiring: DipWiring): number {
	const [least, most] = UP_COUNTS[level];
	const weights = chance.shuffle(DIP_WEIGHTS).slice(0, chance.int(least, most));
	const sum = weights.reduce((total, weight) => total + weight, 0);
	return Math.max(2, Math.min(DIP_REACH[wiring].highest, wiring === 'sum' ? sum : sum + 1));
}

/** What switches are worth, by number. */
export const weightsOf = (up: readonly number[]): number[] => up.map((n) => DIP_WEIGHTS[n - 1] ?? 0);

/** A bench with that fixture, in the first mode its slides reach, at an address to change. */
export function dipBench(profile: Profile, address = 1): RigSheet | null {
	for (const mode of profile.modes) {
		const bench = benchWith({ profile, mode, address });
		if (bench) return bench;
	}
	return null;
}
