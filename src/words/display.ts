import type { MenuItem, Profile } from '../../shared/profile/index.ts';
import type { PanelDisplay } from '../../sim/fixture/index.ts';
import type { Rig } from '../../sim/rig/index.ts';

/**
 * What a display says, to be spoken: 'Display reads STRT, Start address, browsing.'
 * @param item the menu item it stands at, where that is known: the display alone cannot tell whose value is being edited
 */
export function describeDisplay(display: PanelDisplay, _profile: Profile, _item?: MenuItem): string {
	return display.kind === 'keyed' ? `Display reads ${display.lines.join(', ')}, ${display.state}.` : 'Switches.';
}

/** The display of one fixture of a rig, with the title of the item it stands at. */
export function describePanel(rig: Rig, fixtureId: string): string {
	const { display } = rig.look(fixtureId);
	const unit = rig.gear.units.get(fixtureId);
	return unit ? describeDisplay(display, unit.profile) : '';
}
