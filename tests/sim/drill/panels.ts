import {
	BUNDLED,
	type KeyedPanel,
	type PanelKey,
	type Profile,
	readProfile,
	SETTING_KEYS,
	type SettingKey,
	type SettingValue,
	type SomeSettings,
} from '../../../shared/profile/index.ts';
import type { Random } from '../../../shared/random/index.ts';
import { panelWay, viewOf } from '../../../sim/drill/way/panel.ts';
import { staticWay } from '../../../sim/drill/way/script.ts';
import { menuMap } from '../../../sim/drill/way/tour.ts';
import { allows, type SettingDomain, type Wish } from '../../../sim/drill/wish.ts';
import { type FixtureState, itemAt, panelOf, startFixture, stepFixture } from '../../../sim/fixture/index.ts';

export const [tallow, picket] = BUNDLED as readonly [Profile, Profile, ...Profile[]];

/** A fixture with a menu so small that all its states can be walked: a wrapping and a stopping number, lists, one of them on top, two menus, one place to set all back. */
export const small: Profile = readProfile({
	...tallow,
	id: 'small',
	defaults: { ...tallow.defaults, address: 1, code: 1, sleep: 10, lock: 'off' },
	panel: {
		kind: 'code',
		columns: 4,
		keys: ['back', 'down', 'up', 'set'],
		repeat: { after: 500, every: 100, quickAfter: 2, bigStep: 3 },
		unlockHold: 2000,
		lockAfter: 5000,
		menu: [
			{
				kind: 'menu',
				id: 'one',
				label: 'ONE',
				title: 'One',
				items: [
					{ kind: 'number', id: 'code', label: 'CODE', title: 'Code', setting: 'code', least: 1, most: 4, wraps: true },
					{
						kind: 'choice',
						id: 'lock',
						label: 'LOCK',
						title: 'Lock',
						setting: 'lock',
						options: [
							{ value: 'off', label: 'OFF' },
							{ value: 'on', label: 'ON' },
						],
					},
				],
			},
			{
				kind: 'choice',
				id: 'loss',
				label: 'GONE',
				title: 'Loss',
				setting: 'loss',
				options: [
					{ value: 'hold', label: 'HOLD' },
					{ value: 'dark', label: 'DARK' },
					{ value: 'programme', label: 'PROG' },
				],
			},
			{ kind: 'info', id: 'charge', label: 'CHRG', title: 'Charge', shows: 'charge' },
			{
				kind: 'menu',
				id: 'two',
				label: 'TWO',
				title: 'Two',
				items: [
					{
						kind: 'choice',
						id: 'sensor',
						label: 'EYE',
						title: 'Sensor',
						setting: 'sensor',
						options: [
							{ value: 'open', label: 'OPEN' },
							{ value: 'shut', label: 'SHUT' },
						],
					},
					{ kind: 'action', id: 'defaults', label: 'DFLT', title: 'Defaults', action: 'defaults', ask: 'YES?' },
				],
			},
		],
	},
});

export function open(profile: Profile, settings: SomeSettings): FixtureState {
	return startFixture(profile, {
		now: 0,
		settings: { ...profile.defaults, ...settings },
		switches: [],
		slides: [],
		on: true,
		live: true,
		battery: profile.power.battery && { wattHours: 100, at: 0, capacity: 100, takesCharge: false },
	});
}

/** A value the panel can show for this setting, or the default where it has no item for it. */
function anyValue(random: Random, profile: Profile, key: SettingKey): SettingValue {
	const item = menuMap(profile.panel as KeyedPanel).bySetting.get(key)?.item;
	if (item?.kind === 'choice') return random.pick(item.options).value as SettingValue;
	return item ? random.int(item.least, item.most) : profile.defaults[key];
}

export function anySettings(random: Random, profile: Profile): SomeSettings {
	const spoilt = SETTING_KEYS.filter(() => random.chance(0.3)).map((key) => [key, anyValue(random, profile, key)]);
	return Object.fromEntries(spoilt);
}

/** A wish for some settings or for all: near what is, or anything. */
export function anyWish(random: Random, profile: Profile, near: SomeSettings): Wish {
	const share = random.pick([0.1, 0.3, 1]);
	const wild = random.pick([0.1, 0.5, 1]);
	const isDefaults = random.chance(0.3);
	return new Map(
		SETTING_KEYS.filter(() => random.chance(share)).map((key): [SettingKey, SettingDomain] => {
			const value = isDefaults
				? profile.defaults[key]
				: random.chance(wild)
					? anyValue(random, profile, key)
					: (near[key] ?? profile.defaults[key]);
			const isRange = typeof value === 'number' && key === 'address' && random.chance(0.5);
			return [key, isRange ? { within: [{ from: value, to: Math.min(512, value + random.int(0, 20)) }] } : { value }];
		}),
	);
}

/** Presses needed from a state, whatever key is held in it. */
export function needed(profile: Profile, state: FixtureState, wish: Wish): number {
	return state.context.held ? staticWay(profile, state, wish).presses : panelWay(profile, viewOf(state), wish).presses;
}

/**
 * Whether a key goes no longer way round, counted in taps, to where the value being edited should come to: the only keys anybody is
 * told to press there.
 */
export function goesTowards(profile: Profile, state: FixtureState, wish: Wish, key: PanelKey): boolean {
	const { draft, path } = state.context;
	if (draft === null || panelOf(state) !== 'editing' || (key !== 'up' && key !== 'down')) return true;
	const item = itemAt(profile.panel as KeyedPanel, path);
	const allowed = item.kind === 'choice' || item.kind === 'number' ? wish.get(item.setting) : undefined;
	if (!allowed) return true;
	const taps = (by: 'up' | 'down'): number => {
		let at = state;
		for (let n = 0; n < 600; n++) {
			if (allows(allowed, at.context.draft as SettingValue)) return n;
			const next = stepFixture(profile, stepFixture(profile, at, { type: 'key.down', key: by }), {
				type: 'key.up',
				key: by,
			});
			if (next.context.draft === at.context.draft) break;
			at = next;
		}
		return Number.POSITIVE_INFINITY;
	};
	return taps(key) <= taps(key === 'up' ? 'down' : 'up');
}

/** Time passes. */
export function later(profile: Profile, state: FixtureState, ms: number): FixtureState {
	return stepFixture(profile, state, { type: 'clock.advance', now: state.context.now + ms });
}
