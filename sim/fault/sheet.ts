import { oncePer } from '../../shared/memo/index.ts';
import { type Profile, type Settings, settingsOn } from '../../shared/profile/index.ts';
import {
	profileFor,
	type RigSheet,
	type SheetCable,
	type SheetDesk,
	type SheetFixture,
} from '../../shared/sheet/index.ts';
import { inputFrom } from '../fixture/index.ts';

/** A fixture of a sheet with its profile and the settings it is meant to have. */
export interface MeantFixture {
	readonly fixture: SheetFixture;
	readonly profile: Profile;
	readonly settings: Settings;
	readonly isDip: boolean;
}

/** Every fixture as it is meant to be. Worked out once a sheet. */
export const meantOf = oncePer((sheet: RigSheet): readonly MeantFixture[] =>
	sheet.fixtures.map((fixture) => {
		const profile = profileFor(sheet, fixture.profile);
		const { settings } = inputFrom(profile, fixture, false);
		return { fixture, profile, settings, isDip: profile.panel.kind === 'dip' };
	}),
);

export function meant(sheet: RigSheet, id: string): MeantFixture {
	const found = meantOf(sheet).find(({ fixture }) => fixture.id === id);
	if (!found) throw new RangeError(`no fixture ${id}`);
	return found;
}

export function cableOf(sheet: RigSheet, id: string): SheetCable {
	const found = sheet.cables.find((cable) => cable.id === id);
	if (!found) throw new RangeError(`no cable ${id}`);
	return found;
}

export function deskOf(sheet: RigSheet): SheetDesk {
	if (!sheet.desk) throw new RangeError('no desk');
	return sheet.desk;
}

/** Cables with both ends in. */
export const laid = (sheet: RigSheet): SheetCable[] =>
	sheet.cables.filter(({ from, to }) => from !== null && to !== null);

/** Whether a setting can be reached on this panel's menu. */
export function canSet(profile: Profile, key: keyof Settings): boolean {
	return profile.panel.kind !== 'dip' && settingsOn(profile.panel).has(key);
}

/** Levels that stand on a fixture's slots, by its patch: slot of the universe to level. */
export function levelsOn(
	sheet: RigSheet,
	id: string,
	footprint: number,
): { readonly universe: number; readonly slot: number; readonly level: number }[] {
	const patch = sheet.desk?.patch.find((each) => each.fixture === id);
	if (!patch || !sheet.desk) return [];
	return sheet.desk.levels.filter(
		({ universe, slot }) => universe === patch.universe && slot >= patch.address && slot < patch.address + footprint,
	);
}
