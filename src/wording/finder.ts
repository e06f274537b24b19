import { type CheckSpot, type CheckWords, checkParts, checks, mendTried } from '#words/checks/index.ts';
import { type ComplaintWords, complaints } from '#words/complaints/index.ts';
import { repairs } from '#words/repairs/index.ts';
import type { Says } from '#words/rig/index.ts';
import { InputError } from '../../shared/error/index.ts';
import type { KeyedPanel, LeafItem, Profile, SettingKey, Settings } from '../../shared/profile/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { RepairId } from '../../sim/fault/index.ts';
import type { Check, Complaint } from '../../sim/finder/index.ts';
import { valueText } from '../../sim/fixture/index.ts';
import type { Rig, Unit } from '../../sim/rig/index.ts';
import { colourText } from './colour.ts';
import { repairText, repairTitle } from './fault.ts';
import { fill, sentence, type TemplateFacts } from './fill.ts';
import { settingTitle, settingValueText } from './kinds.ts';
import { sheetFacts } from './sheetFacts.ts';
import { sheetKinds } from './sheetNames.ts';

/** What a check is about, in a few words with no full stop: 'Data indicator: wash 1, house left'. @throws InputError `words.check`. */
export function checkTitle(sheet: RigSheet, meant: Rig, check: PlacedCheck): string {
	const repair = repairOf(check);
	if (repair) return repairTitle(sheet, repair, check.place);
	return checkSays(sheet, meant, check, wordsFor(check).title);
}

/** What to look at or do, in a sentence or more, and how to put it back. @throws InputError `words.check`. */
export function checkDoes(sheet: RigSheet, meant: Rig, check: PlacedCheck): string {
	const repair = repairOf(check);
	if (repair) return fill(mendTried.does, { does: repairText(sheet, repair, check.place) });
	return checkSays(sheet, meant, check, wordsFor(check).does);
}

/**
 * What would be seen, as a button says it, with no full stop: 'Blinking slowly', 'It reads 21'.
 * @param meant the rig as its sheet has it: what is read where all is as meant comes from there
 * @throws InputError `words.check` or `words.outcome`
 */
export function outcomeText(sheet: RigSheet, meant: Rig, check: PlacedCheck, outcome: string): string {
	const outcomes: CheckWords['outcomes'] = repairOf(check) ? mendTried.outcomes : wordsFor(check).outcomes;
	const says = outcomes[outcome];
	if (says === undefined)
		throw new InputError('words.outcome', 'outcome', {
			trouble: 'no-words',
			kind: check.kind,
			outcome,
			known: Object.keys(outcomes),
		});
	return checkSays(sheet, meant, check, says);
}

/** Where to look or to put a hand, for a small picture. @throws InputError `words.check`. */
export function spotOf(check: PlacedCheck): CheckSpot {
	const repair = repairOf(check);
	return (repair ? repairs[repair]?.spot : undefined) ?? wordsFor(check).spot;
}

/**
 * A complaint: what is wrong (no full stop), the same without the fixture's name, as a question on a button, and a sentence that tells
 * it from its neighbours.
 */
export function complaintText(
	sheet: RigSheet,
	{ kind, fixture }: Complaint,
): { readonly says: string; readonly short: string; readonly asks: string; readonly more: string } {
	const words = complaints[kind] as ComplaintWords;
	const { short, asks, more } = words;
	return { says: sentence(words.says, { fixture }, sheetKinds(sheet, fixture)), short, asks, more };
}

/** The repair that a check tries; null where it is none. */
function repairOf({ kind }: PlacedCheck): RepairId | null {
	const repair = kind.replace(/^mend-/, '');
	return repair !== kind && repair in repairs ? (repair as RepairId) : null;
}

function wordsFor({ kind }: PlacedCheck): CheckWords {
	const words = checks[kind];
	if (!words) throw new InputError('words.check', 'check', { trouble: 'no-words', kind });
	return words;
}

function checkSays(sheet: RigSheet, meant: Rig, check: PlacedCheck, says: Says): string {
	return sentence(says, checkFacts(sheet, meant, check), sheetKinds(sheet, check.place));
}

/** A check as its words need it: what a finder gives, without what reads a rig. */
export type PlacedCheck = Pick<Check, 'kind' | 'place' | 'other'>;

/** What the words of a check ask for: what the sheet means at its place, and what the rig as meant shows there. */
function checkFacts(sheet: RigSheet, meant: Rig, check: PlacedCheck): TemplateFacts {
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

function unitFacts(meant: Rig, unit: Unit): TemplateFacts {
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
function panelFacts(profile: Profile, settings: Settings, key: SettingKey): TemplateFacts {
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
