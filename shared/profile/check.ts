import * as v from 'valibot';
import { checkBands } from '../dmx/index.ts';
import { InputError } from '../error/index.ts';
import { type MenuItem, type Profile, profileSchema, type Slot } from './schema.ts';
import { type SettingKey, type SettingValue, settingsSchema } from './settings.ts';

/**
 * Reads a fixture profile from outside.
 * @param input parsed JSON, of any shape
 * @returns the profile, with optional parts filled in
 * @throws InputError `profile.shape` where the shape is off; `profile.band`, `profile.slot`, `profile.id`,
 *   `profile.reference`, `profile.panel` or `profile.default` where the parts do not fit each other. `path` is the place.
 */
export function readProfile(input: unknown): Profile {
	const read = v.safeParse(profileSchema, input);
	if (!read.success) {
		const issue = read.issues[0];
		const path = v.getDotPath(issue) ?? '';
		throw new InputError(
			'profile.shape',
			path,
			`The profile does not fit at ${path || 'its top'}: ${issue.message}. Mend that place and read it again.`,
		);
	}
	checkProfile(read.output);
	return read.output;
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
	checkPanel(profile);
	refer(idsOf(profile.modes), profile.defaults.mode, 'defaults.mode', 'a mode', 'profile.default');
	refer(held, profile.defaults.held, 'defaults.held', 'a held colour', 'profile.default');
	refer(idsOf(profile.programmes), profile.defaults.programme, 'defaults.programme', 'a programme', 'profile.default');
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

function checkPanel(profile: Profile): void {
	const { panel } = profile;
	if (panel.kind === 'dip') {
		for (const [i, slide] of panel.slides.entries())
			for (const [n, position] of slide.positions.entries())
				checkSets(profile, position.sets, `panel.slides[${i}].positions[${n}].sets`);
		const used = new Map<number, string>();
		for (const [i, field] of panel.fields.entries()) {
			for (const number of field.switches) {
				if (used.has(number))
					throw new InputError(
						'profile.panel',
						`panel.fields[${i}].switches`,
						`Switch ${number} is used by '${used.get(number)}' and by '${field.id}'.`,
					);
				used.set(number, field.id);
			}
			const wanted = 2 ** field.switches.length;
			if (field.choices.length !== wanted) {
				throw new InputError(
					'profile.panel',
					`panel.fields[${i}].choices`,
					`${field.switches.length} switches make ${wanted} choices; '${field.id}' lists ${field.choices.length}.`,
				);
			}
			for (const [n, choice] of field.choices.entries())
				checkSets(profile, choice.sets, `panel.fields[${i}].choices[${n}].sets`);
		}
		return;
	}
	const columns = panel.columns;
	const seen = new Set<string>();
	const walk = (items: readonly MenuItem[], place: string): void => {
		for (const [i, item] of items.entries()) {
			const path = `${place}[${i}]`;
			if (seen.has(item.id))
				throw new InputError('profile.id', `${path}.id`, `Two menu items are called '${item.id}'. Ids are used once.`);
			seen.add(item.id);
			if (item.label.length > columns)
				throw new InputError(
					'profile.panel',
					`${path}.label`,
					`'${item.label}' does not fit a display of ${columns} characters.`,
				);
			if (item.kind === 'menu') walk(item.items, `${path}.items`);
			if (item.kind === 'number' && item.least >= item.most)
				throw new InputError(
					'profile.panel',
					path,
					`'${item.id}' runs from ${item.least} to ${item.most}: the first must be the smaller.`,
				);
			if (item.kind === 'number')
				for (const edge of [item.least, item.most]) checkValue(profile, item.setting, edge, path);
			if (item.kind === 'choice') {
				for (const [n, option] of item.options.entries()) {
					if (option.label.length > columns)
						throw new InputError(
							'profile.panel',
							`${path}.options[${n}].label`,
							`'${option.label}' does not fit a display of ${columns} characters.`,
						);
					checkValue(profile, item.setting, option.value as SettingValue, `${path}.options[${n}].value`);
				}
			}
		}
	};
	walk(panel.menu, 'panel.menu');
}

function checkSets(profile: Profile, sets: object, place: string): void {
	for (const [key, value] of Object.entries(sets)) checkValue(profile, key as SettingKey, value, `${place}.${key}`);
}

/** Whether a fixture of this profile can be set so. @throws InputError `profile.reference` naming `place`. */
export function checkValue(profile: Profile, key: SettingKey, value: unknown, place: string): void {
	if (!v.is(settingsSchema.entries[key], value)) {
		throw new InputError(
			'profile.reference',
			place,
			`'${key}' cannot be ${JSON.stringify(value)}. Give a value the setting takes.`,
		);
	}
	const ids =
		key === 'mode' ? profile.modes : key === 'held' ? profile.held : key === 'programme' ? profile.programmes : null;
	if (ids) refer(idsOf(ids), value as string, place, key === 'held' ? 'a held colour' : `a ${key}`);
}

function idsOf(things: readonly { readonly id: string }[]): ReadonlySet<string> {
	return new Set(things.map((thing) => thing.id));
}

function unique(things: readonly { readonly id: string }[], place: string): void {
	const seen = new Set<string>();
	for (const [i, thing] of things.entries()) {
		if (seen.has(thing.id))
			throw new InputError(
				'profile.id',
				`${place}[${i}].id`,
				`Two of them are called '${thing.id}'. Ids are used once.`,
			);
		seen.add(thing.id);
	}
}

function refer(known: ReadonlySet<string>, id: string, place: string, what: string, code = 'profile.reference'): void {
	if (!known.has(id))
		throw new InputError(code, place, `'${id}' is not ${what} of this fixture. Known: ${[...known].join(', ')}.`);
}
