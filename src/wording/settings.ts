import { type Says, settingTitles, settingValues } from '#words/rig/index.ts';
import type { Profile, SettingKey, SettingValue } from '../../shared/profile/index.ts';
import { fill } from './fill.ts';
import { plainKinds, profileKinds } from './kinds.ts';

const titles: Readonly<Record<SettingKey, string>> = settingTitles;
const values: Readonly<Record<SettingKey, Says>> = settingValues;

/** What a setting is called, whatever a panel calls it: 'Start address'. */
export function settingTitle(key: SettingKey): string {
	return titles[key];
}

/** A value of a setting in words: 'data on the line', '80 %', '30 seconds'. */
export function settingValueText(profile: Profile, key: SettingKey, value: SettingValue): string {
	return fill(values[key], { value }, { ...plainKinds, ...profileKinds(profile) });
}
