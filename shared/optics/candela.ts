import { InputError, shown } from '../error/index.ts';
import type { Profile } from '../profile/index.ts';

/** Steps of the sum over the beam (Simpson's rule; even). */
const STEPS = 400;
/** The sum ends where intensity has halved this many times: a millionth of the peak. */
const HALVINGS = 20;

/**
 * Luminous intensity straight ahead, in candela, of a round beam.
 *
 * Assumption: intensity falls off from the axis as `I₀ · 2^−(2θ / beam)^k`, the smooth bell that is at half the peak at the
 * beam angle and at a tenth at the field angle (that fixes k). All lumens leave through it, none behind. Where the field
 * is not wider than the beam the light is taken as even over the cone of the beam angle: `Φ / (2π (1 − cos(beam / 2)))`.
 * @param lumens luminous flux, 0 or more
 * @param beam degrees to half the peak, more than 0 and less than 180
 * @param field degrees to a tenth of the peak
 * @throws InputError `optics.range`
 */
export function peakCandela(lumens: number, beam: number, field: number): number {
	if (!(lumens >= 0 && beam > 0 && beam < 180 && Number.isFinite(lumens))) {
		throw new InputError(
			'optics.range',
			'',
			`A beam has 0 lumens or more and an angle between 0 and 180 degrees; found ${shown(lumens)} lumens at ${shown(beam)} degrees.`,
		);
	}
	const half = (beam * Math.PI) / 360;
	if (!(field > beam)) return lumens / (2 * Math.PI * (1 - Math.cos(half)));
	const k = Math.log(Math.log2(10)) / Math.log(field / beam);
	const end = Math.min(Math.PI / 2, half * HALVINGS ** (1 / k));
	let sum = 0;
	for (let i = 0; i <= STEPS; i++) {
		const angle = (end * i) / STEPS;
		const weight = i === 0 || i === STEPS ? 1 : i % 2 === 1 ? 4 : 2;
		sum += weight * Math.sin(angle) * 2 ** -((angle / half) ** k);
	}
	const solidAngle = (2 * Math.PI * sum * end) / (3 * STEPS);
	return lumens / solidAngle;
}

/** `peakCandela` of a fixture with every emitter at full, all cells together, as from afar. */
export function candelaOf(profile: Profile): number {
	const lumens = profile.emitters.reduce((sum, emitter) => sum + emitter.lumens, 0);
	return peakCandela(lumens, profile.optics.beam, profile.optics.field);
}
