import { checkBands } from '../dmx/index.ts';
import { InputError } from '../error/index.ts';
import { checkPanel } from './check-panel.ts';
import { checkValue, idsOf, refer, unique } from './refer.ts';
import { type Profile, profileSchema, type Slot } from './schema.ts';
import { readShape } from './shape.ts';

/**
 * Reads a fixture profile from outside.
 * @param input parsed JSON, of any shape
 * @returns the profile, with optional parts filled in
 * @throws InputError `profile.shape` where the shape is off; `profile.band`, `profile.slot`, `profile.id`,
 *   `profile.reference`, `profile.panel` or `profile.default` where the parts do not fit each other. `path` is the place.
 */
export function readProfile(input: unknown): Profile {
	const profile = readShape(profileSchema, input, 'profile.shape');
	checkProfile(profile);
	return profile;
}

/** Holds a well-shaped profile to what its parts say of each other. @throws InputError as {@link readProfile}. */
export function checkProfile(profile: Profile): void {
	unique(profile.emitters, 'emitters');
	unique(profile.held, 'held');
	unique(profile.programmes, 'programmes');
	unique(profile.modes, 'modes');
	const emitters = idsOf(profile.emitters);
	const held = idsOf(profile.held);
	for (const [i, colour] of profile.held.entries()) {
		for (const id of Object.keys(colour.levels)) refer(emitters, id, `held[${i}].levels.${id}`, 'emitter');
	}
	for (const [i, programme] of profile.programmes.entries()) {
		for (const [n, id] of programme.colours.entries()) refer(held, id, `programmes[${i}].colours[${n}]`, 'held');
		if ((programme.kind === 'sound') !== (programme.answer !== undefined)) {
			throw new InputError('profile.reference', `programmes[${i}].answer`, {
				trouble: 'sound-and-answer',
				id: programme.id,
				kind: programme.kind,
			});
		}
	}
	for (const [i, mode] of profile.modes.entries()) checkMode(profile, mode.slots, `modes[${i}]`);
	for (const key of ['mode', 'held', 'programme'] as const)
		checkValue(profile, key, profile.defaults[key], `defaults.${key}`, 'profile.default');
	checkPanel(profile);
}

function checkMode(profile: Profile, slots: readonly Slot[], place: string): void {
	unique(slots, `${place}.slots`);
	const taken = new Map<number, string>();
	const emitters = idsOf(profile.emitters);
	for (const [i, slot] of slots.entries()) {
		const path = `${place}.slots[${i}]`;
		for (const [number, at] of [
			[slot.at, `${path}.at`],
			[slot.fine, `${path}.fine`],
		] as const) {
			if (number === undefined) continue;
			const other = taken.get(number);
			if (other !== undefined) {
				throw new InputError('profile.slot', at, { trouble: 'taken-twice', slot: number, other, id: slot.id });
			}
			taken.set(number, slot.id);
		}
		for (const [n, cell] of (slot.cells ?? []).entries()) {
			if (cell > profile.cells)
				throw new InputError('profile.slot', `${path}.cells[${n}]`, {
					trouble: 'no-such-cell',
					cells: profile.cells,
					id: slot.id,
					cell,
				});
		}
		const { drives } = slot;
		if (drives.kind === 'emitter') refer(emitters, drives.emitter, `${path}.drives.emitter`, 'emitter');
		if (drives.kind === 'bands') {
			if (slot.fine !== undefined)
				throw new InputError('profile.slot', `${path}.fine`, { trouble: 'bands-and-fine', id: slot.id });
			unique(drives.bands, `${path}.drives.bands`);
			for (const [b, band] of drives.bands.entries()) {
				const at = `${path}.drives.bands[${b}].effect`;
				if (band.effect.do === 'held') refer(idsOf(profile.held), band.effect.held, `${at}.held`, 'held');
				if (band.effect.do === 'programme')
					refer(idsOf(profile.programmes), band.effect.programme, `${at}.programme`, 'programme');
				if (band.effect.do === 'strobe' && band.effect.slow > band.effect.fast)
					throw new InputError('profile.band', at, {
						trouble: 'strobe-falls',
						id: band.id,
						slow: band.effect.slow,
						fast: band.effect.fast,
					});
			}
			const problem = checkBands(drives.bands)[0];
			if (problem)
				throw new InputError('profile.band', `${path}.drives.bands[${problem.index}]`, {
					...problem.facts,
					id: slot.id,
				});
		}
	}
	const last = Math.max(...taken.keys());
	for (let number = 1; number <= last; number++) {
		if (!taken.has(number)) throw new InputError('profile.slot', place, { trouble: 'left-out', slot: number, last });
	}
}
