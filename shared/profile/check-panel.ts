import { InputError } from '../error/index.ts';
import { checkValue, unique } from './refer.ts';
import type { SettingKey } from './rules.ts';
import type { DipPanel, KeyedPanel, LeafItem, Profile } from './schema.ts';

/** What a text display puts before a value being edited: an arrow and a space. */
const EDIT_MARK = 2;

/** Holds a panel to itself and to what the fixture has. @throws InputError as `readProfile`. */
export function checkPanel(profile: Profile): void {
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
	const missing = (['back', 'down', 'up', 'set'] as const).find((key) => !panel.keys.includes(key));
	if (missing) throw new InputError('profile.panel', 'panel.keys', { trouble: 'key-missing', key: missing });
	const seen = new Set<string>();
	const head = (item: { readonly id: string; readonly label: string }, path: string): void => {
		if (seen.has(item.id)) throw new InputError('profile.id', `${path}.id`, { trouble: 'menu-id-twice', id: item.id });
		seen.add(item.id);
		checkWidth(item.label, panel.columns, `${path}.label`);
	};
	for (const [i, item] of panel.menu.entries()) {
		const path = `panel.menu[${i}]`;
		head(item, path);
		if (item.kind !== 'menu') checkLeaf(profile, panel, item, path);
		else
			for (const [n, leaf] of item.items.entries()) {
				head(leaf, `${path}.items[${n}]`);
				checkLeaf(profile, panel, leaf, `${path}.items[${n}]`);
			}
	}
}

function checkLeaf(profile: Profile, panel: KeyedPanel, item: LeafItem, path: string): void {
	// a value being edited has the arrow before it on a text display
	const room = panel.columns - (panel.kind === 'text' ? EDIT_MARK : 0);
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
