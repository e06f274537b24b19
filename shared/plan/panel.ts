import { addressOf, DIP_REACH, switchesFor } from '../dmx/index.ts';
import type { DipPanel, Profile, SettingKey, Settings, SettingValue, SomeSettings } from '../profile/index.ts';
import type { SheetFixture } from '../sheet/index.ts';

/*
 * What a plan asks of a panel, by kind of panel: the one place of the plan that looks into one.
 */

/** The switch that turns the other nine from an address into the fixture's own settings. */
const GATE = 10;

/** Whether a panel has a way to set this: an item of its menu, a slide or a field of its switches. */
export function canSet(profile: Profile, key: SettingKey, value: SettingValue): boolean {
	const { panel } = profile;
	if (panel.kind !== 'dip') {
		const items = panel.menu.flatMap((item) => (item.kind === 'menu' ? item.items : [item]));
		return items.some(
			(item) =>
				(item.kind === 'number' && item.setting === key && Number(value) >= item.least && Number(value) <= item.most) ||
				(item.kind === 'choice' && item.setting === key && item.options.some((option) => option.value === value)),
		);
	}
	if (key === 'address') return Number(value) >= 1 && Number(value) <= DIP_REACH[panel.wiring].highest;
	if (key === 'work' && value === 'line') return true;
	const choices = [...panel.slides.flatMap(({ positions }) => positions), ...panel.fields.flatMap((it) => it.choices)];
	return choices.some(({ sets }) => sets[key] === value);
}

/** What a fixture of a sheet shows: its settings, whatever kind of panel it has. */
export function shownBy(profile: Profile, fixture: Pick<SheetFixture, 'settings' | 'switches' | 'slides'>): Settings {
	const { panel } = profile;
	if (panel.kind !== 'dip') return { ...profile.defaults, ...fixture.settings };
	const slid = slideSets(panel, fixture.slides ?? []);
	const switches = fixture.switches ?? Array.from({ length: GATE }, () => false);
	const address = switches[GATE - 1] ? profile.defaults.address : addressOf(switches.slice(0, GATE - 1), panel.wiring);
	return { ...profile.defaults, ...slid, address };
}

const slideSets = (panel: DipPanel, slides: readonly number[]): SomeSettings =>
	Object.assign({}, ...panel.slides.map((slide, i) => slide.positions[slides[i] ?? 0]?.sets));

/** A fixture's part of a sheet with these settings at its panel; what the panel cannot set is left as it is. */
export function standingAt(
	profile: Profile,
	asked: SomeSettings,
): Pick<SheetFixture, 'settings'> & Partial<Pick<SheetFixture, 'switches' | 'slides'>> {
	const { panel } = profile;
	const settings = Object.fromEntries(
		Object.entries(asked).filter(([key, value]) => canSet(profile, key as SettingKey, value)),
	) as SomeSettings;
	if (panel.kind !== 'dip') return { settings };
	const slides = panel.slides.map(({ positions }) => {
		const at = positions.findIndex(({ sets }) => meets(sets, settings));
		return Math.max(0, at);
	});
	return { settings: {}, switches: switchesAt(panel, settings), slides };
}

const meets = (sets: SomeSettings, asked: SomeSettings): boolean =>
	Object.entries(sets).some(([key, value]) => asked[key as SettingKey] === value);

function switchesAt(panel: DipPanel, settings: SomeSettings): boolean[] {
	if (settings.work === 'line' || settings.work === undefined)
		return [...switchesFor(settings.address ?? 1, panel.wiring), false];
	const switches = Array.from({ length: GATE }, (_, i) => i === GATE - 1);
	for (const { switches: numbers, choices } of panel.fields) {
		const at = choices.findIndex(({ sets }) => meets(sets, settings));
		for (const [bit, number] of numbers.entries()) switches[number - 1] = at > 0 && (at & (2 ** bit)) !== 0;
	}
	return switches;
}
