import { InputError, requireNumber, shown } from '../error/index.ts';
import type { Profile } from '../profile/index.ts';

/** Emitter id to output, 0 (out) to 1 (full), all cells alike; an emitter not named is out. */
export type Levels = Readonly<Record<string, number>>;

/**
 * Watts drawn at a look: the idle draw, and each emitter's watts times its output. Output is what the emitter gives in the
 * end, after intensity, dim curve and limit; with a straight curve it is the level over 255.
 * @throws InputError `power.range`, or `power.emitter` for an emitter the profile does not have
 */
export function wattsAt(profile: Profile, levels: Levels): number {
	let watts = profile.power.idleWatts;
	for (const [id, output] of Object.entries(levels)) {
		const emitter = profile.emitters.find((each) => each.id === id);
		if (!emitter) {
			throw new InputError('power.emitter', id, {
				expected: 'one-of',
				profile: profile.name,
				known: profile.emitters.map((each) => each.id),
				found: shown(id),
			});
		}
		watts += emitter.watts * requireNumber(output, { lo: 0, hi: 1, code: 'power.range', path: id, of: 'output' });
	}
	return watts;
}

/** Watts drawn with every emitter at full: the most its light can draw, charging not counted. */
export function fullWatts(profile: Profile): number {
	return wattsAt(profile, Object.fromEntries(profile.emitters.map(({ id }) => [id, 1])));
}
