import { displays } from '#words/rig/index.ts';
import { lawOf, type MenuItem, type Profile } from '../../shared/profile/index.ts';
import { itemAt, type PanelDisplay, valueShown } from '../../sim/fixture/index.ts';
import type { Rig } from '../../sim/rig/index.ts';
import { fill } from './fill.ts';
import { itemTitle, keyName, plainKinds, settingValueText } from './kinds.ts';

/**
 * What a display or a row of switches says, to be spoken: 'Display reads STRT, Start address, browsing.' Nothing is told that the
 * eye could not see: a display that is dark says so, whatever made it dark.
 * @param item the menu item it stands at, where that is known; else it is found by what is shown, which a value alone does not tell
 */
export function describeDisplay(display: PanelDisplay, profile: Profile, item: MenuItem | null = null): string {
	if (display.kind === 'switches') return switchesText(display, profile);
	const lines = display.lines.map((line) => line.trim().replaceAll(/ +/g, ' '));
	if (!display.lit) return displays.dark;
	const { state } = display;
	if (state === 'dark' || state === 'asleep') return displays.dark;
	const shown = item ?? itemShown(lines, profile);
	const title = shown ? itemTitle(shown) : null;
	const [first = '', second = ''] = lines;
	const value = second.replace(/^> /, '');
	return fill(displays[state], {
		lines: value === '' || value === '...' ? first : fill(displays.twoLines, { first, second: value }),
		title: title?.toLowerCase() === first.toLowerCase() ? null : title,
		ask: lines.at(-1) ?? '',
		yes: keyName(profile.panel, 'set'),
		no: keyName(profile.panel, 'back'),
	});
}

/** The display of one fixture of a rig, told with the title of the item it stands at: what a person who pressed their way there knows. */
export function describePanel(rig: Rig, fixtureId: string): string {
	const unit = rig.gear.units.get(fixtureId);
	if (!unit) return '';
	const { panel } = unit.profile;
	const { display } = rig.look(fixtureId);
	return describeDisplay(display, unit.profile, panel.kind === 'dip' ? null : itemAt(panel, unit.state.context.path));
}

/**
 * What the display of one fixture stands at, in plain words for the eye: 'Start address', and while a value is set 'Static colour:
 * amber'. Nothing where the display is dark, or says just that itself.
 * @param display as the fixture was last looked at
 */
export function panelTitle(rig: Rig, fixtureId: string, display: PanelDisplay): string {
	const unit = rig.gear.units.get(fixtureId);
	if (!unit || unit.profile.panel.kind === 'dip' || display.kind !== 'keyed' || !display.lit) return '';
	if (display.state === 'locked') return displays.titleLocked;
	if (display.state === 'resting') return displays.titleResting;
	const item = itemAt(unit.profile.panel, unit.state.context.path);
	const title = itemTitle(item);
	const value = valueShown(unit.profile.panel, unit.state);
	const text =
		value !== null && 'setting' in item
			? fill(displays.titleValue, { title, value: settingValueText(unit.profile, item.setting, value) })
			: display.lines[0]?.trim().toLowerCase() === title.toLowerCase()
				? ''
				: title;
	return display.state === 'scrolling' ? fill(displays.titleUnstored, { text }) : text;
}

/** The item whose name stands on the display: its label, or for an item of information on four characters its initial. */
function itemShown(lines: readonly string[], { panel }: Profile): MenuItem | undefined {
	if (panel.kind === 'dip') return undefined;
	const items = panel.menu.flatMap((item): MenuItem[] => (item.kind === 'menu' ? [item, ...item.items] : [item]));
	const [first = ''] = lines;
	const labelled = items.find((item) => item.label === first && (panel.kind === 'text' || item.kind !== 'info'));
	if (labelled || panel.kind === 'text') return labelled;
	if (lawOf(panel).shape === 'flat') return items.find((item) => first.startsWith(item.label));
	return items.find((item) => item.kind === 'info' && item.label.startsWith(first.slice(0, 1)) && first !== '');
}

function switchesText(display: Extract<PanelDisplay, { kind: 'switches' }>, { panel }: Profile): string {
	const up = display.up.flatMap((isUp, i) => (isUp ? [i + 1] : []));
	const slides = display.slides.map(({ id, label }) =>
		fill(displays.slide, {
			title: panel.kind === 'dip' ? (panel.slides.find((slide) => slide.id === id)?.title ?? id) : id,
			label,
		}),
	);
	const all = up.length === 0 ? 'down' : up.length === display.up.length ? 'up' : null;
	return fill(displays.switches, { up, slides, all }, plainKinds);
}
