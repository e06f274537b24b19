import { checkParts } from '#words/checks/index.ts';
import type { KeyedPanel, LeafItem, Profile, SettingKey, Settings } from '../../shared/profile/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { Check } from '../../sim/finder/index.ts';
import { valueText } from '../../sim/fixture/index.ts';
import type { Rig, Unit } from '../../sim/rig/index.ts';
import { colourText } from './colour.ts';
import { type Facts, fill } from './fill.ts';
import { settingTitle, settingValueText } from './settings.ts';
import { sheetFacts } from './sheetFacts.ts';

/** A check as its words need it: what a finder gives, without what reads a rig. */
export type PlacedCheck = Pick<Check, 'kind' | 'place' | 'other'>;

/** What the words of a check ask for: what the sheet means at its place, and what the rig as meant shows there. */
export function checkFacts(sheet: RigSheet, meant: Rig, check: PlacedCheck): Facts {
	const unit = meant.gear.units.get(check.place);
	return {
		...sheetFacts(sheet, check.place),
		other: check.other ?? null,
		...(unit ? unitFacts(meant, unit) : {}),
		...(unit && check.kind.startsWith('panel-')
			? panelFacts(unit.profile, unit.state.context.settings, check.kind.slice('panel-'.length) as SettingKey)
			: {}),
	};
}

function unitFacts(meant: Rig, unit: Unit): Facts {
	const { cells, whole } = meant.look(unit.placed.id).light;
	const isEven = cells.every(({ words }) => words === whole.words);
	const talker = meant.gear.receptions.get(unit.placed.id)?.talker ?? null;
	return {
		// what a bar's cells add up to is a colour that nobody sees
		colour: isEven && whole.brightness > 0 ? colourText(whole.words) : null,
		// without the desk, only what hangs on the desk loses its data
		loss: talker?.kind === 'desk' ? unit.state.context.settings.loss : null,
		source: talker?.port ?? null,
		own: unit.profile.held[0]?.id ?? null,
	};
}

/** Where on the panel a setting stands, and what is read there when it is as meant. */
function panelFacts(profile: Profile, settings: Settings, key: SettingKey): Facts {
	const { panel } = profile;
	if (panel.kind === 'dip') return {};
	const found = itemFor(panel, key);
	const shown = found ? valueText(found.item, settings[key]) : null;
	const meaning = settingValueText(profile, key, settings[key]);
	return {
		setting: settingTitle(key),
		panel: panel.kind,
		menu: found ? fill(checkParts.menu, { menu: found.menu, item: found.item.label }) : null,
		shown,
		// four characters want explaining; a line of text or a number does not
		gloss: panel.kind === 'code' && found?.item.kind === 'choice' && !isSame(shown, meaning) ? meaning : null,
		unlock: settings.lock === 'on' ? panel.unlockHold : null,
	};
}

const isSame = (shown: string | null, meaning: string): boolean => shown?.toLowerCase() === meaning.toLowerCase();

type SettingItem = Extract<LeafItem, { kind: 'choice' | 'number' }>;

/** The first item of a menu that sets this, and the menu it is in: null where it is at the top. */
function itemFor(
	panel: KeyedPanel,
	key: SettingKey,
): { readonly menu: string | null; readonly item: SettingItem } | null {
	const sets = (item: { readonly kind: string }): item is SettingItem => 'setting' in item && item.setting === key;
	for (const item of panel.menu) {
		if (item.kind === 'menu') {
			const leaf = item.items.find(sets);
			if (leaf) return { menu: item.label, item: leaf };
		} else if (sets(item)) return { menu: null, item };
	}
	return null;
}
