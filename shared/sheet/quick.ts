import { LAST_SLOT, switchesFor } from '../dmx/index.ts';
import { InputError, requireWhole } from '../error/index.ts';
import {
	type DipPanel,
	footprintOf,
	type Mode,
	modeOf,
	type Profile,
	profileAtHand,
	type Slot,
	type SomeSettings,
} from '../profile/index.ts';
import { GOOD_WIRES, noBoxes, type SheetDesk, type SheetFixture } from './devices.ts';
import type { RigSheet, SheetCable } from './schema.ts';

/** How a rig without a sheet is linked: on a desk, behind a leader, not at all, or on a desk with two universes. */
export const QUICK_LINKS = Object.freeze(['desk', 'leader', 'alone', 'two-universes'] as const);
export type QuickLink = (typeof QUICK_LINKS)[number];

/** Most fixtures of a rig without a sheet. */
export const QUICK_MOST = 24;

export interface QuickRig {
	/** 1 to `QUICK_MOST`; a leader needs a follower and a second universe a second fixture, so those take 2 or more. */
	readonly count: number;
	readonly linked: QuickLink;
	/** Id of a bundled profile. */
	readonly profile: string;
}

/** Metres between fixtures, room at both ends of the wall, throw, and length of a data cable. */
const PITCH = 2;
const MARGIN = 2;
const THROW = 3;
const CABLE = 5;

/** Where a fixture hangs on the desk: universe and start address. */
type DeskSpot = { readonly universe: number; readonly address: number };

/**
 * A rig sheet made from three answers, for a tech who has no sheet: like fixtures in a row, set as that link needs, addresses
 * one footprint after another from 1, everything switched on, fed and lit as meant.
 * A page awaits `loadProfile` first.
 * @throws InputError `quick.count`, `quick.linked` or `quick.profile`
 */
export function quickSheet({ profile: id, ...rest }: QuickRig): RigSheet {
	const profile = profileAtHand(id);
	if (!profile) throw new InputError('quick.profile', 'profile', { trouble: 'no-such-profile', id });
	return quickSheetOf(profile, rest);
}

/** The same for a profile of one's own, which the sheet then has to carry. @throws InputError `quick.count` or `quick.linked` */
export function quickSheetOf(profile: Profile, { count, linked }: Omit<QuickRig, 'profile'>): RigSheet {
	if (!QUICK_LINKS.includes(linked))
		throw new InputError('quick.linked', 'linked', { expected: 'one-of', known: QUICK_LINKS });
	requireWhole(count, {
		lo: linked === 'leader' || linked === 'two-universes' ? 2 : 1,
		hi: QUICK_MOST,
		code: 'quick.count',
		path: 'count',
		of: 'fixtures',
	});
	const mode = modeOf(profile, profile.defaults.mode);
	const spots = linked === 'desk' || linked === 'two-universes' ? spotsFor(count, linked, footprintOf(mode)) : null;
	const names = Array.from({ length: count }, (_, i) => `${profile.shape}-${i + 1}`);
	return {
		version: 1,
		name: `${count} × ${profile.name}`,
		hall: { width: Math.max(8, 2 * MARGIN + PITCH * (count - 1)), height: 6 },
		fixtures: names.map((name, i) => fixture(profile, name, i, settingsFor(linked, i, spots?.[i]))),
		desk: spots && desk(linked, names, spots, profile, mode),
		cables: linked === 'alone' ? [] : chains(linked, names),
		...noBoxes(),
		terminators: linked === 'alone' ? [] : ends(linked, names).map((name) => `${name}:out`),
		remote: profile.sensor ? { code: profile.defaults.code, battery: true } : null,
		profiles: [],
	};
}

/** How many of them hang on the first output: half, the odd one with the first. */
const firstHalf = (count: number): number => Math.ceil(count / 2);

function spotsFor(count: number, linked: QuickLink, footprint: number): DeskSpot[] {
	const first = linked === 'two-universes' ? firstHalf(count) : count;
	return Array.from({ length: count }, (_, i) => ({
		universe: i < first ? 1 : 2,
		address: 1 + footprint * (i < first ? i : i - first),
	}));
}

function settingsFor(linked: QuickLink, i: number, spot: DeskSpot | undefined): SomeSettings {
	if (spot) return { work: 'line', address: spot.address };
	if (linked === 'leader') return i === 0 ? { work: 'held', lead: 'on' } : { work: 'follow' };
	return { work: 'held' };
}

function fixture(profile: Profile, id: string, i: number, settings: SomeSettings): SheetFixture {
	return {
		id,
		name: id.replace('-', ' '),
		profile: profile.id,
		place: { x: MARGIN + PITCH * i, y: 0, throw: THROW, overhead: false },
		...(profile.panel.kind === 'dip'
			? { settings: {}, switches: switchesSetting(profile.panel, settings) }
			: { settings }),
		on: true,
		plug: profile.power.battery ? 'none' : 'wall',
		charge: 1,
		hidden: false,
	};
}

/** Ten switches that set this: nine for an address, or the tenth up and each field at the choice that sets it. */
function switchesSetting(panel: DipPanel, settings: SomeSettings): boolean[] {
	if (settings.work === 'line') return [...switchesFor(settings.address ?? 1, panel.wiring), false];
	const switches = Array.from({ length: 10 }, (_, i) => i === 9);
	for (const { switches: numbers, choices } of panel.fields) {
		const at = choices.findIndex(({ sets }) =>
			Object.entries(sets).some(([key, value]) => settings[key as keyof SomeSettings] === value),
		);
		for (const [bit, number] of numbers.entries()) switches[number - 1] = at > 0 && (at & (2 ** bit)) !== 0;
	}
	return switches;
}

function desk(
	linked: QuickLink,
	names: readonly string[],
	spots: readonly DeskSpot[],
	profile: Profile,
	mode: Mode,
): SheetDesk {
	const levels = spots.flatMap((spot) => litLevels(profile, mode, spot));
	return {
		name: 'desk',
		outputs: (linked === 'two-universes' ? ['a', 'b'] : ['a']).map((id, i) => ({ id, universe: i + 1, on: true })),
		patch: names.map((name, i) => ({ fixture: name, ...(spots[i] as DeskSpot), mode: mode.id })),
		levels,
		master: 255,
	};
}

/** The levels that light a fixture at a universe and start address, as a desk's list of what stands up; none past slot 512. */
export const litLevels = (profile: Profile, mode: Mode, { universe, address }: DeskSpot): SheetDesk['levels'] =>
	mode.slots.flatMap((slot) => {
		const level = litLevel(profile, slot);
		const slots = slotNumbers(slot).map((at) => address + at - 1);
		return level > 0 ? slots.flatMap((at) => (at <= LAST_SLOT ? [{ universe, slot: at, level }] : [])) : [];
	});

/** A slot's own number, and that of its fine half where it has one. */
const slotNumbers = ({ at, fine }: Slot): number[] => (fine === undefined ? [at] : [at, fine]);

/** The level at which a slot gives light and nothing else: colours and intensity full, functions at rest, ultraviolet out. */
function litLevel({ emitters }: Profile, { drives }: Slot): number {
	if (drives.kind === 'intensity') return 255;
	if (drives.kind === 'emitter') return emitters.find(({ id }) => id === drives.emitter)?.ultraviolet ? 0 : 255;
	if (drives.kind !== 'bands') return 0;
	const rest = drives.bands.find(({ effect }) => effect.do === 'nothing' || effect.do === 'open');
	return rest ? Math.floor((rest.from + rest.to) / 2) : 0;
}

/** The runs of fixtures, each with the socket that feeds the first of them. */
function runsOf(linked: QuickLink, names: readonly string[]): { from: string; to: readonly string[] }[] {
	if (linked === 'leader') return [{ from: `${names[0]}:out`, to: names.slice(1) }];
	if (linked === 'desk') return [{ from: 'desk:a', to: names }];
	const half = firstHalf(names.length);
	return [
		{ from: 'desk:a', to: names.slice(0, half) },
		{ from: 'desk:b', to: names.slice(half) },
	];
}

function chains(linked: QuickLink, names: readonly string[]): SheetCable[] {
	return runsOf(linked, names)
		.flatMap(({ from, to }) => to.map((name, i) => ({ from: i === 0 ? from : `${to[i - 1]}:out`, to: `${name}:in` })))
		.map((plugs, i) => ({ id: `cable-${i + 1}`, kind: 'data', length: CABLE, ...plugs, ...GOOD_WIRES }));
}

const ends = (linked: QuickLink, names: readonly string[]): string[] =>
	runsOf(linked, names).flatMap(({ to }) => to.slice(-1));
