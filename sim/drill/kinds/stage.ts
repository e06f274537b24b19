import { LAST_SLOT, TOP_LEVEL } from '../../../shared/dmx/index.ts';
import { InputError } from '../../../shared/error/index.ts';
import {
	BUNDLED,
	bundledProfile,
	footprintOf,
	modeOf,
	type Profile,
	type SettingKey,
	type SettingValue,
	type SomeSettings,
} from '../../../shared/profile/index.ts';
import type { Random } from '../../../shared/random/index.ts';
import {
	GOOD_WIRES,
	type Port,
	type RigSheet,
	type SheetCable,
	type SheetDesk,
	type SheetFixture,
} from '../../../shared/sheet/index.ts';
import { ALL_DOWN } from '../../fixture/index.ts';
import { frameOf, staticLevels } from '../../light/index.ts';
import type { DrillCondition, DrillFacts, DrillScene, HandsOn, Range } from '../types.ts';
import { dipWay } from '../way/index.ts';
import type { SettingDomain } from '../wish.ts';

type PatchLine = SheetDesk['patch'][number];

/** What a kind makes of a stream of chance; what must be kept is added by `finish`. */
export interface DrillDraft {
	readonly scene: DrillScene;
	readonly rig: Pick<RigSheet, 'fixtures'> &
		Partial<Pick<RigSheet, 'desk' | 'cables' | 'terminators' | 'remote' | 'profiles'>>;
	readonly goal: readonly DrillCondition[];
	readonly hands: readonly HandsOn[];
	readonly facts: DrillFacts;
	/** Settings of fixtures with targets that are neither asked nor kept. */
	readonly free?: readonly SettingKey[];
}

/** A bundled profile, which is there. */
function profileOf(id: 'tallow-6' | 'picket-8' | 'cobble'): Profile {
	const profile = bundledProfile(id);
	if (!profile) throw new RangeError(`no bundled profile '${id}'`);
	return profile;
}

export const TALLOW = profileOf('tallow-6');
export const PICKET = profileOf('picket-8');
export const COBBLE = profileOf('cobble');
export const KEYED = Object.freeze([TALLOW, PICKET]);

/** Bundled fixtures with keys whose panel obeys another law than those two. */
export const OTHER_LAW: readonly Profile[] = Object.freeze(
	BUNDLED.filter(({ panel }) => panel.kind !== 'dip' && panel.law !== undefined),
);

const NAMES: Readonly<Record<string, readonly [id: string, name: string]>> = Object.freeze({
	'tallow-6': ['wash', 'Wash'],
	'picket-8': ['bar', 'Bar'],
	cobble: ['floor', 'Floor'],
	'thimble-4': ['small', 'Small'],
});

/** The id of the nth fixture (from 1) of a profile on a drill's rig: `wash-1`, `bar-1`, `floor-1`. */
export const idOf = (profile: Profile, n: number): string => `${NAMES[profile.id]?.[0]}-${n}`;

/** What a fixture that is not bundled is called on a drill's rig, by its shape. */
const BY_SHAPE: Readonly<Record<Profile['shape'], readonly [id: string, name: string]>> = Object.freeze({
	wash: ['wash', 'Wash'],
	bar: ['bar', 'Bar'],
});

/**
 * The nth fixture (from 1) of a rig, on mains, its display never going dark unless told: reading a task costs no press.
 * @param settings what differs from the profile's defaults; a fixture with switches is stood so that it has them
 * @throws InputError `drill.stuck` where no switches have them
 */
export function fixture(scene: DrillScene, profile: Profile, n: number, settings: SomeSettings): SheetFixture {
	const overhead = scene !== 'bench' && profile !== COBBLE;
	const [id, name] = NAMES[profile.id] ?? BY_SHAPE[profile.shape];
	const placed = {
		id: `${id}-${n}`,
		name: `${name} ${n}`,
		profile: profile.id,
		place: { x: 1 + 2 * n, y: overhead ? 4 : 0.5, throw: 3, overhead },
		on: true,
		plug: 'wall',
		charge: 1,
		hidden: false,
	};
	if (profile.panel.kind !== 'dip') return { ...placed, settings: { sleep: 0, ...settings } };
	return { ...placed, settings: {}, ...standing(profile, settings) };
}

/** How switches and slides stand for some settings, with as few up as will do. */
function standing(profile: Profile, settings: SomeSettings): { switches: boolean[]; slides: number[] } {
	const down = profile.panel.kind === 'dip' ? profile.panel.slides.map(() => 0) : [];
	const wish = new Map(Object.entries(settings).map(([key, value]) => [key as SettingKey, { value } as SettingDomain]));
	const events = dipWay(profile, 'new', ALL_DOWN, down, wish);
	if (!events) throw new InputError('drill.stuck', 'settings', { trouble: 'cannot-be-finished' });
	const switches = [...ALL_DOWN];
	const slides = [...down];
	for (const event of events) {
		if (event.type === 'switch.flip') switches[event.switch - 1] = event.up;
		if (event.type === 'slide.move' && profile.panel.kind === 'dip')
			slides[profile.panel.slides.findIndex(({ id }) => id === event.slide)] = event.to;
	}
	return { switches, slides };
}

/** Data cables from a first socket through every fixture in turn, and a terminator in the last. */
export function line(
	first: Port | null,
	ids: readonly string[],
	metres = 8,
): { cables: SheetCable[]; terminators: Port[] } {
	const cables = ids.flatMap((id, i): SheetCable[] => {
		const from = i === 0 ? first : `${ids[i - 1]}:out`;
		const name = from === first ? `${from?.replace(':', '-')}-${id}` : `${ids[i - 1]}-${id}`;
		return from === null ? [] : [{ id: name, kind: 'data', length: metres, from, to: `${id}:in`, ...GOOD_WIRES }];
	});
	return { cables, terminators: ids.length === 0 ? [] : [`${ids.at(-1)}:out`] };
}

/** Levels that bring up one held colour of a fixture from a desk, by its mode's chart. */
export function levelsFor(
	profile: Profile,
	mode: string,
	at: Pick<PatchLine, 'universe' | 'address'>,
	held: string,
): SheetDesk['levels'][number][] {
	const levels = new Float32Array(profile.cells * profile.emitters.length);
	staticLevels(
		profile,
		profile.held.findIndex(({ id }) => id === held),
		levels,
	);
	return [...frameOf(profile, mode, levels, 1)]
		.map((level, i) => ({ universe: at.universe, slot: at.address + i, level }))
		.filter(({ level, slot }) => level > 0 && slot <= LAST_SLOT);
}

/** A desk with these outputs, each sending, and its master full. */
export function desk(outputs: readonly number[], patch: PatchLine[], levels: SheetDesk['levels'][number][]): SheetDesk {
	return {
		name: 'Desk',
		outputs: outputs.map((universe, i) => ({ id: 'abcdefgh'.charAt(i), universe, on: true })),
		patch,
		levels,
		master: TOP_LEVEL,
	};
}

export const setting = (fixtureId: string, key: SettingKey, value: SettingValue): DrillCondition => ({
	is: 'setting',
	fixture: fixtureId,
	key,
	value,
});

export const footprint = (profile: Profile, mode: string): number => footprintOf(modeOf(profile, mode));

/**
 * The least start address to ask of a fixture. Switches are never asked for 1: some makers give it to no switch up as well, and
 * others read none up as something else, so nothing may hang on it.
 */
export const leastAddress = (profile: Profile): number => (profile.panel.kind === 'dip' ? 2 : 1);

/** A start address at which the mode fits; none that switches cannot say, or say in a way that differs by maker. */
export function anyAddress(random: Random, profile: Profile, mode: string): number {
	const address = random.int(1, LAST_SLOT + 1 - Math.max(2, footprint(profile, mode)));
	// drawn from all and then moved, so that a seed gives the drill it always gave
	return Math.max(leastAddress(profile), address);
}

/** One of the items that is not this one. */
export function another<T>(random: Random, items: readonly T[], not: T): T {
	return random.pick(items.filter((item) => item !== not));
}

export const ids = (things: readonly { readonly id: string }[]): string[] => things.map(({ id }) => id);

/** Rising numbers as ranges. */
export function rangesOf(numbers: readonly number[]): Range[] {
	const ranges: { from: number; to: number }[] = [];
	for (const number of numbers) {
		const last = ranges.at(-1);
		if (last && number === last.to + 1) last.to = number;
		else ranges.push({ from: number, to: number });
	}
	return ranges;
}
