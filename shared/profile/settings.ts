import * as v from 'valibot';
import { ID, SETTING_RULES, type SettingKey, type Settings, type SomeSettings } from './rules.ts';

/**
 * What a fixture can be set to, whatever its panel looks like, as a schema made from the rules. A profile says which of these its
 * panel can reach; the rest stay at the profile's defaults.
 */

const idText = v.pipe(v.string(), v.regex(ID, 'id'));
const whole = (least: number, most: number) => v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));

function entry(rule: (typeof SETTING_RULES)[SettingKey]): v.GenericSchema {
	if ('oneOf' in rule) return v.picklist(rule.oneOf);
	return 'idOf' in rule ? idText : whole(rule.from, rule.to);
}

type SettingEntries = { [K in SettingKey]: v.GenericSchema<Settings[K]> };

export const settingsSchema: v.StrictObjectSchema<SettingEntries, undefined> = v.strictObject(
	Object.fromEntries(Object.entries(SETTING_RULES).map(([key, rule]) => [key, entry(rule)])) as SettingEntries,
);

export const someSettingsSchema = v.strictObject(
	Object.fromEntries(
		Object.entries(settingsSchema.entries).map(([key, schema]) => [key, v.exactOptional(schema as v.GenericSchema)]),
	),
) as unknown as v.GenericSchema<SomeSettings>;

export { idText, whole };
