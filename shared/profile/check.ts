import { checkBands } from '../dmx/index.ts';
import { InputError } from '../error/index.ts';
import { checkValue, idsOf, refer, unique } from './chart.ts';
import { keysOf, lawOf } from './law.ts';
import type { SettingKey } from './rules.ts';
import {
	type DipPanel,
	type KeyedPanel,
	type LeafItem,
	type PanelKey,
	type Profile,
	profileSchema,
	type Slot,
} from './schema.ts';
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

/** What a text display puts before a value being edited: an arrow and a space. */
const EDIT_MARK = 2;

/** Holds a panel to itself and to what the fixture has. @throws InputError as `readProfile`. */
function checkPanel(profile: Profile): void {
	const { panel } = profile;
	if (panel.kind === 'dip') checkSwitches(profile, panel);
	else checkKeyed(profile, panel);
}

function checkSwitches(profile: Profile, panel: DipPanel): void {
	unique(panel.slides, 'panel.slides');
	unique(panel.fields, 'panel.fields');
	for (const [i, slide] of panel.slides.entries())
		for (const [n, position] of slide.positions.entries())
			checkSets(profile, position.sets, `panel.slides[${i}].positions[${n}].sets`);
	const used = new Map<number, string>();
	for (const [i, field] of panel.fields.entries()) {
		for (const number of field.switches) {
			if (used.has(number))
				throw new InputError('profile.panel', `panel.fields[${i}].switches`, {
					trouble: 'switch-twice',
					switch: number,
					other: used.get(number) as string,
					id: field.id,
				});
			used.set(number, field.id);
		}
		const wanted = 2 ** field.switches.length;
		if (field.choices.length !== wanted) {
			throw new InputError('profile.panel', `panel.fields[${i}].choices`, {
				trouble: 'choices-off',
				switches: field.switches.length,
				wanted,
				id: field.id,
				choices: field.choices.length,
			});
		}
		for (const [n, choice] of field.choices.entries())
			checkSets(profile, choice.sets, `panel.fields[${i}].choices[${n}].sets`);
	}
}

function checkSets(profile: Profile, sets: object, place: string): void {
	for (const [key, value] of Object.entries(sets)) checkValue(profile, key as SettingKey, value, `${place}.${key}`);
}

function checkKeyed(profile: Profile, panel: KeyedPanel): void {
	checkLaw(panel);
	const { shape } = lawOf(panel);
	const seen = new Set<string>();
	const head = (item: { readonly id: string; readonly label: string }, path: string): void => {
		if (seen.has(item.id)) throw new InputError('profile.id', `${path}.id`, { trouble: 'menu-id-twice', id: item.id });
		seen.add(item.id);
		checkWidth(item.label, panel.columns, `${path}.label`);
	};
	for (const [i, item] of panel.menu.entries()) {
		const path = `panel.menu[${i}]`;
		head(item, path);
		// each function of a flat panel says who decides the light, and no tree has any that does
		const isFlat = item.kind !== 'menu' && item.kind !== 'action' && item.work !== undefined;
		if (isFlat !== (shape === 'flat'))
			throw new InputError('profile.panel', path, { trouble: 'item-and-law', id: item.id, shape });
		if (item.kind !== 'menu') checkLeaf(profile, panel, item, path);
		else
			for (const [n, leaf] of item.items.entries()) {
				head(leaf, `${path}.items[${n}]`);
				if ('work' in leaf)
					throw new InputError('profile.panel', `${path}.items[${n}]`, { trouble: 'item-and-law', id: leaf.id, shape });
				checkLeaf(profile, panel, leaf, `${path}.items[${n}]`);
			}
	}
}

/** Holds a law to the keys and to what a simulated panel does. @throws InputError `profile.panel` */
function checkLaw(panel: KeyedPanel): void {
	const { keys } = panel;
	const twice = keys.find((key, i) => keys.indexOf(key) !== i);
	if (twice) throw new InputError('profile.panel', 'panel.keys', { trouble: 'key-twice', key: twice });
	const { shape, acts, stores, rests, long, opens } = lawOf(panel);
	const means = keysOf(panel);
	const missing = (key: PanelKey): never => {
		throw new InputError('profile.panel', 'panel.keys', { trouble: 'key-missing', key });
	};
	if (long && !keys.includes(long.key)) missing(long.key);
	if (!keys.includes(opens)) missing(opens);
	if (shape === 'flat' && !keys.includes('page')) missing('page');
	if (shape === 'tree') {
		if (!means.back && long?.does !== 'back') missing('back');
		if (!means.enter && long?.does !== 'set') missing('set');
	}
	const isKnob = keys.includes('left') || keys.includes('right');
	if (!means.lower) missing(isKnob ? 'left' : 'down');
	if (!means.higher) missing(isKnob ? 'right' : 'up');
	const isFlat = shape === 'flat';
	const unplayed = (part: 'acts' | 'stores' | 'rests' | 'long' | 'keys'): never => {
		throw new InputError('profile.panel', part === 'keys' ? 'panel.keys' : `panel.law.${part}`, {
			trouble: 'law-unplayed',
			shape,
			part,
		});
	};
	if (isFlat && acts !== 'scrolling') unplayed('acts');
	if (isFlat && stores === 'enter') unplayed('stores');
	if (isFlat && rests) unplayed('rests');
	if (isFlat && long) unplayed('long');
	if (long && (long.key !== 'set' || long.does !== 'back')) unplayed('long');
	if (!isFlat && keys.includes('page')) unplayed('keys');
}

function checkLeaf(profile: Profile, panel: KeyedPanel, item: LeafItem, path: string): void {
	// a value has the arrow before it on a text display as it is edited; on four characters of a flat panel, its function's name
	const beside = panel.kind === 'text' ? EDIT_MARK : lawOf(panel).shape === 'flat' ? item.label.length : 0;
	const room = panel.columns - beside;
	if (item.kind === 'action') checkWidth(item.ask, panel.columns, `${path}.ask`);
	if (item.kind === 'number') {
		const { least, most } = item;
		if (least >= most)
			throw new InputError('profile.panel', path, { trouble: 'least-over-most', id: item.id, least, most });
		for (const edge of [least, most]) {
			checkValue(profile, item.setting, edge, path);
			checkWidth(`${edge}${item.unit}`, room, path);
		}
		const start = Number(profile.defaults[item.setting]);
		if (start < least || start > most) unshown(item, start, `${least} to ${most}`);
	}
	if (item.kind === 'choice') {
		const values = new Set<unknown>();
		for (const [n, { label, value }] of item.options.entries()) {
			const at = `${path}.options[${n}]`;
			checkWidth(label, room, `${at}.label`);
			checkValue(profile, item.setting, value, `${at}.value`);
			if (values.has(value))
				throw new InputError('profile.panel', `${at}.value`, {
					trouble: 'value-twice',
					id: item.id,
					value: JSON.stringify(value),
				});
			values.add(value);
		}
		for (const [n, { at, label }] of (item.idle ?? []).entries()) {
			const place = `${path}.idle[${n}]`;
			checkWidth(label, room, `${place}.label`);
			// of a row of functions the place in a list is the setting itself
			if (lawOf(panel).shape === 'flat' || at >= item.options.length + (item.idle?.length ?? 0))
				throw new InputError('profile.panel', place, { trouble: 'idle-off', id: item.id, at });
			if (item.idle?.some((other, i) => i < n && other.at === at))
				throw new InputError('profile.panel', place, { trouble: 'idle-off', id: item.id, at });
		}
		const start = profile.defaults[item.setting];
		if (!values.has(start)) unshown(item, start, [...values].join(', '));
	}
}

function checkWidth(text: string, columns: number, path: string): void {
	if (text.length > columns) throw new InputError('profile.panel', path, { trouble: 'too-wide', text, columns });
}

/** A default that its own menu item cannot show. */
function unshown(item: Extract<LeafItem, { kind: 'choice' | 'number' }>, start: unknown, known: string): never {
	throw new InputError('profile.default', `defaults.${item.setting}`, {
		trouble: 'unshown',
		item: item.id,
		value: JSON.stringify(start),
		known,
	});
}
