import { SETTING_KEYS, type SettingKey, type Settings, type SettingValue } from '../../shared/profile/index.ts';
import { profileFor, type SheetCable } from '../../shared/sheet/index.ts';
import { inputFrom } from '../fixture/index.ts';
import type { DrillCondition, Range, Task } from './types.ts';

/** What a setting may be. */
export type SettingDomain = { readonly value: SettingValue } | { readonly within: readonly Range[] };

/** What a fixture's settings must come to; a key that is not there is free. */
export type Wish = ReadonlyMap<SettingKey, SettingDomain>;

export const isInside = (within: readonly Range[], value: number): boolean =>
	within.some(({ from, to }) => from <= value && value <= to);

export function allows(allowed: SettingDomain, value: SettingValue): boolean {
	return 'value' in allowed ? allowed.value === value : isInside(allowed.within, Number(value));
}

/** The wish's keys that these settings do not meet. */
export function unmetKeys(wish: Wish, settings: Settings): SettingKey[] {
	return [...wish].filter(([key, allowed]) => !allows(allowed, settings[key])).map(([key]) => key);
}

/** Settings a fixture has at the start of a drill. @throws InputError `sheet.reference` */
function startSettings(sheet: Task['sheet'], fixture: string): Settings {
	const placed = sheet.fixtures.find(({ id }) => id === fixture);
	if (!placed) throw new RangeError(`no fixture '${fixture}' in the drill's sheet`);
	return inputFrom(profileFor(sheet, placed.profile), placed, false).settings;
}

/** What one condition asks of its fixture's settings, key by key; empty where it asks nothing of any. */
export function wishOfCondition(sheet: Task['sheet'], condition: DrillCondition): [SettingKey, SettingDomain][] {
	switch (condition.is) {
		case 'setting':
			return [[condition.key, { value: condition.value }]];
		case 'setting-within':
			return [[condition.key, { within: condition.within }]];
		case 'kept': {
			const settings = startSettings(sheet, condition.fixture);
			return condition.keys.map((key) => [key, { value: settings[key] }]);
		}
		case 'defaults': {
			const placed = sheet.fixtures.find(({ id }) => id === condition.fixture);
			const { defaults } = profileFor(sheet, placed?.profile ?? '');
			return SETTING_KEYS.map((key) => [key, { value: defaults[key] }]);
		}
		default:
			return [];
	}
}

/** What a drill's goal asks of one fixture's settings, taken together. */
export function wishFor(drill: Pick<Task, 'sheet' | 'goal'>, fixture: string): Wish {
	return new Map(
		drill.goal.flatMap((condition) =>
			'fixture' in condition && condition.fixture === fixture ? wishOfCondition(drill.sheet, condition) : [],
		),
	);
}

export type Join = Extract<DrillCondition, { readonly is: 'joined' }>;

/** Whether this cable could make the join, wherever its ends are now: right kind, short enough, every wire sound. */
export function isFit(join: Join, cable: SheetCable): boolean {
	return (
		cable.kind === 'data' &&
		cable.length <= join.metres &&
		cable.common === 'sound' &&
		cable.minus === 'sound' &&
		cable.plus === 'sound' &&
		!cable.swapped
	);
}

/** Whether this cable makes the join. */
export function isGoodJoin(join: Join, cable: SheetCable): boolean {
	const { from, to } = cable;
	const across = (from === join.a && to === join.b) || (from === join.b && to === join.a);
	return across && isFit(join, cable);
}
