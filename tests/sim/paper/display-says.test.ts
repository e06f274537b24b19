import { describe, expect, it } from 'vitest';
import type { Item, Say } from '../../../shared/paper/index.ts';
import type { DipPanel, KeyedPanel, LeafItem, MenuItem, Profile } from '../../../shared/profile/index.ts';
import { bundledProfile } from '../../../shared/profile/index.ts';
import { hasFields } from '../../../sim/paper/kinds/display-says.ts';
import { runs } from '../../runs.ts';
import { freshRig, itemsOf, profileOf, table } from './items.ts';

/** A panel as its menu says it goes, reckoned here from the data alone: where it stands and what is being set. */
function walk(panel: KeyedPanel, value: string, presses: readonly (string | number)[][]): string {
	let inside: Extract<MenuItem, { kind: 'menu' }> | null = null;
	let top = 0;
	let within = 0;
	let draft: number | null = null;
	let confirming = false;
	const set = new Map<string, number>();
	const here = (): MenuItem => (inside ? inside.items[within] : panel.menu[top]) as MenuItem;
	/** Where a value stands: its place among options, or the number. */
	const stands = (item: LeafItem): number => {
		const known = set.get(item.id);
		if (known !== undefined) return known;
		if (item.kind === 'choice') return item.options.findIndex(({ label }) => label === value);
		return item.kind === 'number' ? Number.parseInt(value, 10) : 0;
	};
	const press = (key: string): void => {
		const item = here();
		const by = key === 'down' ? 1 : -1;
		if (key === 'up' || key === 'down') {
			if (draft !== null && item.kind === 'choice') draft = (draft - by + item.options.length) % item.options.length;
			else if (draft !== null && item.kind === 'number') {
				const span = item.most - item.least + 1;
				draft = item.wraps
					? item.least + ((((draft - by - item.least) % span) + span) % span)
					: Math.min(item.most, Math.max(item.least, draft - by));
			} else if (inside) within = (within + by + inside.items.length) % inside.items.length;
			else top = (top + by + panel.menu.length) % panel.menu.length;
		} else if (key === 'set') {
			if (item.kind === 'menu') {
				inside = item;
				within = 0;
			} else if (draft !== null) {
				set.set(item.id, draft);
				draft = null;
			} else if (item.kind === 'choice' || item.kind === 'number') draft = stands(item);
			else if (item.kind === 'action') confirming = !confirming;
		} else if (draft !== null) draft = null;
		else inside = null;
	};
	for (const [key, times] of presses) for (let n = 0; n < Number(times); n++) press(String(key));
	const item = here();
	const text = (at: number): string =>
		item.kind === 'choice' ? (item.options[at]?.label ?? '') : item.kind === 'number' ? `${at}${item.unit ?? ''}` : '';
	if (item.kind === 'info' || item.kind === 'action') return '?';
	if (panel.kind === 'code') return draft === null ? item.label : text(draft);
	if (item.kind === 'menu') return `${item.label}|...`;
	return `${item.label}|${draft === null ? text(stands(item)) : `> ${text(draft)}`}`;
}

/** The same of a flat panel: functions in a ring, each with its value. */
function walkFlat(profile: Profile, panel: KeyedPanel, item: Item): string {
	const left: Record<string, unknown> = { ...profile.defaults, ...item.bench?.fixtures[0]?.settings };
	let at = 0;
	for (const [key, times] of table(item, 'presses', 2))
		for (let n = 0; n < Number(times); n++) {
			const here = panel.menu[at];
			if (key === 'page') at = (at + 1) % panel.menu.length;
			else if (here?.kind === 'choice') {
				const { options, setting } = here;
				const next = options.findIndex(({ value }) => value === left[setting]) + (key === 'up' ? 1 : -1);
				left[setting] = options[(next + options.length) % options.length]?.value;
			} else if (here?.kind === 'number') {
				const { least, most, setting, wraps } = here;
				const next = Number(left[setting]) + (key === 'up' ? 1 : -1);
				left[setting] = next > most ? (wraps ? least : most) : next < least ? (wraps ? most : least) : next;
			}
		}
	const here = panel.menu[at];
	if (here?.kind !== 'choice' && here?.kind !== 'number') return '?';
	const value = left[here.setting];
	const text = here.kind === 'choice' ? (here.options.find((it) => it.value === value)?.label ?? '') : `${value}`;
	return here.label + text.padStart(panel.columns - here.label.length);
}

const shown = ({ say, facts }: Say): string =>
	say === 'two-lines' ? `${facts['first']}|${facts['second']}` : String(facts['line']);

function wrongKeys(item: Item, panel: KeyedPanel): string[] {
	if (item.ask.form !== 'one' || item.key.form !== 'one') return ['another form'];
	const { right } = item.key;
	const presses = table(item, 'presses', 2);
	const isFlat = item.facts['panel'] === 'flat';
	const reckoned = isFlat ? walkFlat(profileOf(item), panel, item) : walk(panel, String(item.facts['value']), presses);
	// a second line that the question does not tell is the rig's to say; the first decides then
	const isTold = panel.kind === 'code' || reckoned.startsWith(`${item.facts['item']}|`);
	const same = (option: string): boolean =>
		isTold ? option === reckoned : option.split('|')[0] === reckoned.split('|')[0];
	const good = item.ask.options.filter(({ label }) => same(shown(label))).map(({ id }) => id);
	return good.join() === right
		? []
		: [`${item.facts['profile']} ${presses.join()}: ${reckoned}, options ${good.join()} for ${right}`];
}

function wrongSwitches(item: Item, profile: Profile, panel: DipPanel): string[] {
	if (item.ask.form !== 'one' || item.key.form !== 'one') return ['another form'];
	const { right } = item.key;
	const wants = item.facts['wants'] as readonly string[];
	const meant = panel.fields.flatMap(({ choices }) => choices.filter(({ title }) => wants.includes(title)));
	const good = item.ask.options.filter(({ label }) => {
		const rig = freshRig(item);
		const [placed] = rig.sheet.fixtures;
		const fixture = placed?.id ?? '';
		const up = label.facts['up'] as readonly number[];
		for (let n = 1; n <= 10; n++) rig.send({ type: 'switch.flip', fixture, switch: n, up: up.includes(n) });
		const settings = rig.gear.units.get(fixture)?.state.context.settings as
			| Readonly<Record<string, unknown>>
			| undefined;
		const says = meant.every(({ sets }) => Object.entries(sets).every(([key, value]) => settings?.[key] === value));
		// all other switches down: no field that is not asked for says anything but its first choice
		const others = panel.fields.filter(({ choices }) => !choices.some((choice) => meant.includes(choice)));
		return says && others.every((field) => field.switches.every((number) => !up.includes(number)));
	});
	return good.map(({ id }) => id).join() === right ? [] : [`${profile.id} ${wants.join()}: ${good.length}`];
}

describe('what the panel says', () => {
	it('is what its menu comes to, reckoned without a rig, or what its switches set on one; no wrong option is', () => {
		const wrong = itemsOf('display-says', runs(120, 10_000)).flatMap((item) => {
			const profile = profileOf(item);
			return profile.panel.kind === 'dip'
				? wrongSwitches(item, profile, profile.panel)
				: wrongKeys(item, profile.panel);
		});
		expect(wrong.slice(0, 3)).toEqual([]);
	});
});

it.each([
	[3, false],
	[4, true],
	[5, true],
])('switches that give one of %i choices at most are asked about: %s', (most, asked) => {
	const cobble = bundledProfile('cobble') as Profile;
	const { fields, ...panel } = cobble.panel as DipPanel;
	const cut = fields.map((field) => ({ ...field, choices: field.choices.slice(0, most) }));
	expect(hasFields({ ...cobble, panel: { ...panel, fields: cut } })).toBe(asked);
	expect(hasFields(bundledProfile('tallow-6') as Profile)).toBe(false);
});
