import { SOUND_WIRES } from './devices.ts';
import type { RigSheet } from './schema.ts';

/**
 * How a rig is meant to be, from how it stands. What hands can set or plug is taken as they left it. What no hand wants is put
 * right: broken cables, anything wrong inside a fixture, no power in the hall, frames that hold no levels, lost data; batteries and
 * the remote are as the rig was laid out with.
 * @param stands the rig as it stands
 * @param laid the sheet that it came from
 */
export function asMeant(stands: RigSheet, laid: RigSheet): RigSheet {
	const charges = new Map(laid.fixtures.map(({ id, charge }) => [id, charge]));
	const { power: _power, sound: _sound, ...hall } = stands.hall;
	return {
		...stands,
		hall,
		fixtures: stands.fixtures.map(({ condition: _condition, lost: _lost, ...fixture }) => ({
			...fixture,
			charge: charges.get(fixture.id) ?? 1,
		})),
		desk: stands.desk && {
			...stands.desk,
			outputs: stands.desk.outputs.map(({ startCode: _startCode, ...output }) => output),
		},
		cables: stands.cables.map((cable) => ({ ...cable, ...SOUND_WIRES })),
		remote: laid.remote,
	};
}
