import type { Profile, SettingKey, SettingValue } from '../../shared/profile/index.ts';

/** What a setting is called, whatever a panel calls it: 'Start address'. */
export function settingTitle(key: SettingKey): string {
	return key;
}

/** A value of a setting in words: 'data on the line', '80 %', '30 seconds'. */
export function settingValueText(_profile: Profile, _key: SettingKey, value: SettingValue): string {
	return `${value}`;
}
