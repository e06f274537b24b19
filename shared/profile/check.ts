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
	const profile = readShape(profileSchema, input, {
		code: 'profile.shape',
		what: 'The profile',
		mend: 'Mend that place and read it again.',
	});
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
		for (const id of Object.keys(colour.levels)) refer(emitters, id, `held[${i}].levels.${id}`, 'an emitter');
	}
	for (const [i, programme] of profile.programmes.entries()) {
		for (const [n, id] of programme.colours.entries())
			refer(held, id, `programmes[${i}].colours[${n}]`, 'a held colour');
		if ((programme.kind === 'sound') !== (programme.answer !== undefined)) {
			throw new InputError(
				'profile.reference',
				`programmes[${i}].answer`,
				`A sound programme names how it answers, and no other does; '${programme.id}' is a ${programme.kind} programme.`,
			);
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
				throw new InputError(
					'profile.slot',
					at,
					`Slot ${number} is taken twice: by '${other}' and by '${slot.id}'. Give one of them another number.`,
				);
			}
			taken.set(number, slot.id);
		}
		for (const [n, cell] of (slot.cells ?? []).entries()) {
			if (cell > profile.cells)
				throw new InputError(
					'profile.slot',
					`${path}.cells[${n}]`,
					`The fixture has ${profile.cells} cells; '${slot.id}' asks for cell ${cell}.`,
				);
		}
		const { drives } = slot;
		if (drives.kind === 'emitter') refer(emitters, drives.emitter, `${path}.drives.emitter`, 'an emitter');
		if (drives.kind === 'bands') {
			if (slot.fine !== undefined)
				throw new InputError(
					'profile.slot',
					`${path}.fine`,
					`A slot of bands has no fine half; take '${slot.id}' down to one slot.`,
				);
			unique(drives.bands, `${path}.drives.bands`);
			for (const [b, band] of drives.bands.entries()) {
				const at = `${path}.drives.bands[${b}].effect`;
				if (band.effect.do === 'held') refer(idsOf(profile.held), band.effect.held, `${at}.held`, 'a held colour');
				if (band.effect.do === 'programme')
					refer(idsOf(profile.programmes), band.effect.programme, `${at}.programme`, 'a programme');
				if (band.effect.do === 'strobe' && band.effect.slow > band.effect.fast)
					throw new InputError(
						'profile.band',
						at,
						`'${band.id}' strobes from ${band.effect.slow} to ${band.effect.fast} a second: the rate rises across a band.`,
					);
			}
			const problem = checkBands(drives.bands)[0];
			if (problem)
				throw new InputError(
					'profile.band',
					`${path}.drives.bands[${problem.index}]`,
					`Bands of '${slot.id}': ${problem.sentence}`,
				);
		}
	}
	const last = Math.max(...taken.keys());
	for (let number = 1; number <= last; number++) {
		if (!taken.has(number))
			throw new InputError(
				'profile.slot',
				place,
				`Slot ${number} is left out, though the chart runs to ${last}. Name it, or close the gap.`,
			);
	}
}
