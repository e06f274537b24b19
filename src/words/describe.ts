import type { Rig, Sight } from '../../sim/rig/index.ts';

/** A fixture's light in words: colour, brightness, flashes, movement, flicker. No name, no full stop. */
export function describeLight(light: Sight['light']): string {
	return `${light.whole.words}, ${Math.round(light.whole.brightness * 100)} %`;
}

/** The small lamps on its back, as one sentence. */
export function describeLamps(lamps: Sight['lamps']): string {
	return `Power lamp ${lamps.power}, data lamp ${lamps.data}.`;
}

/** The text twin of what is seen of a fixture, but for its display: its name, its light, the lamps on its back. */
export function describeFixture(rig: Rig, fixtureId: string): string {
	const sight = rig.look(fixtureId);
	return `${fixtureId}: ${describeLight(sight.light)}. ${describeLamps(sight.lamps)}`;
}

/** The text twin of the whole rig, in the order of the sheet. */
export function describeRig(rig: Rig): string[] {
	return rig.sheet.fixtures.map(({ id }) => describeFixture(rig, id));
}
