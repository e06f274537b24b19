import { levelsShownAs } from '../../../shared/dmx/index.ts';
import { type Band, modeOf, type Profile, type Slot } from '../../../shared/profile/index.ts';
import type { Random } from '../../../shared/random/index.ts';
import { compileMode, makeAsk } from '../../light/index.ts';
import type { DrillCondition, Range } from '../types.ts';
import {
	COBBLE,
	type DrillDraft,
	desk,
	fixture,
	footprint,
	idOf,
	ids,
	levelsFor,
	line,
	PICKET,
	rangesOf,
	setting,
	TALLOW,
} from './stage.ts';

// Kinds done at the desk. What a value does is asked of the data plane, never typed.

const hands = ['panel', 'power', 'desk'] as const;

export function deskPercent(random: Random): DrillDraft {
	const profile = random.pick([TALLOW, PICKET, COBBLE]);
	// the mode by cells would be the same entry eight times over
	const mode = random.pick(ids(profile.modes).filter((id) => id !== 'cells'));
	const { one, rig } = patched(
		random,
		profile,
		mode,
		'rig',
		random.chance(0.5) ? random.pick(ids(profile.held)) : null,
	);
	const percent = random.int(2, 19) * 5;
	const emitters = random.shuffle(ids(profile.emitters)).slice(0, random.pick([1, 1, 2]));
	const hasIntensity = slotsOf(one).some(({ drives }) => drives.kind === 'intensity');
	return {
		scene: 'rig',
		rig,
		goal: [
			...othersQuiet(one),
			...slotsOf(one).flatMap((it): DrillCondition[] => {
				if (it.drives.kind === 'intensity') return [slot(one, it, shown(percent))];
				if (it.drives.kind !== 'emitter') return [];
				const isUp = emitters.includes(it.drives.emitter);
				return [slot(one, it, shown(isUp ? (hasIntensity ? 100 : percent) : 0))];
			}),
			{ is: 'lit', fixture: one.id },
		],
		hands,
		facts: { fixture: one.id, profile: profile.id, mode, address: one.address, emitters, percent },
	};
}

/** How far off the speed may be, either way, of 1 to 100. */
const SPEED_OFF = 2;

export function deskBand(random: Random): DrillDraft {
	const modes = [TALLOW, PICKET, COBBLE].flatMap((profile) =>
		profile.modes
			.filter(({ slots }) => slots.some(({ drives }) => drives.kind === 'speed'))
			.map(({ id }) => ({ profile, mode: id })),
	);
	const { profile, mode } = random.pick(modes);
	const { one, rig } = patched(random, profile, mode, 'rig', random.pick(ids(profile.held)));
	const slots = slotsOf(one);
	const bands = slots.flatMap((it) =>
		it.drives.kind === 'bands' ? it.drives.bands.map((band) => ({ it, effect: band.effect })) : [],
	);
	const timed = bands.flatMap(({ it, effect }) => {
		const programme = effect.do === 'programme' ? effect.programme : null;
		const kind = profile.programmes.find(({ id }) => id === programme)?.kind;
		return programme !== null && kind !== 'sound' ? [{ it, programme }] : [];
	});
	const { it: at, programme } = random.pick(timed);
	const speedSlot = slots.find(({ drives }) => drives.kind === 'speed') ?? at;
	const speed = random.int(5, 95);
	const which = profile.programmes.findIndex(({ id }) => id === programme);
	return {
		scene: 'rig',
		rig,
		goal: [
			...othersQuiet(one, at),
			slot(
				one,
				at,
				valuesThat(one, at, (ask) => ask.programme === which),
			),
			slot(
				one,
				speedSlot,
				valuesThat(one, speedSlot, (ask) => Math.abs(ask.speed - speed) <= SPEED_OFF),
			),
			...slots.flatMap((it) => (it.drives.kind === 'intensity' ? [slot(one, it, shown(100))] : [])),
		],
		hands,
		facts: { fixture: one.id, profile: profile.id, mode, address: one.address, programme, speed, off: SPEED_OFF },
	};
}

/** Values of one slot at which a frame that is otherwise at rest asks for this. */
function valuesThat(one: PatchedFixture, at: Slot, isSo: (ask: ReturnType<typeof makeAsk>) => boolean): Range[] {
	const chart = compileMode(one.profile, one.mode);
	const frame = new Uint8Array(512);
	for (const it of slotsOf(one))
		if (it.drives.kind === 'bands') frame[it.at - 1] = quiet(it.drives.bands)[0]?.from ?? 0;
	const ask = makeAsk(one.profile);
	return rangesOf(
		Array.from({ length: 256 }, (_, value) => value).filter((value) => {
			frame[at.at - 1] = value;
			chart.read(frame, 1, ask);
			return isSo(ask);
		}),
	);
}

/** Something flashes: at its own panel, or in a band of a slot. */
export function strobeLeftOn(random: Random): DrillDraft {
	return random.chance(0.5) ? strobeByPanel(random) : strobeByDesk(random);
}

function strobeByPanel(random: Random): DrillDraft {
	const profile = random.pick([TALLOW, PICKET]);
	const count = random.int(1, 3);
	const row = Array.from({ length: count }, (_, i) => idOf(profile, i + 1));
	const flashing = random.pick(row);
	const rate = random.int(1, 20);
	const fixtures = row.map((id, i) =>
		fixture('show', profile, i + 1, {
			work: 'held',
			held: random.pick(ids(profile.held)),
			strobe: id === flashing ? rate : 0,
		}),
	);
	return {
		scene: 'show',
		rig: { fixtures },
		goal: [setting(flashing, 'strobe', 0), { is: 'steady', fixture: flashing }, { is: 'lit', fixture: flashing }],
		hands: ['panel', 'power'],
		facts: { fixture: flashing, profile: profile.id, by: 'panel', rate },
	};
}

function strobeByDesk(random: Random): DrillDraft {
	const places = [TALLOW, PICKET, COBBLE].flatMap((profile) =>
		profile.modes.flatMap(({ id, slots }) =>
			slots.flatMap((it) => {
				const strobe =
					it.drives.kind === 'bands' ? it.drives.bands.find(({ effect }) => effect.do === 'strobe') : undefined;
				return strobe && it.drives.kind === 'bands' ? [{ profile, mode: id, it, strobe, bands: it.drives.bands }] : [];
			}),
		),
	);
	const { profile, mode, it, strobe, bands } = random.pick(places);
	const { one, rig } = patched(random, profile, mode, 'show', random.pick(ids(profile.held)));
	const at = one.address + it.at - 1;
	const level = random.int(strobe.from, strobe.to);
	const levels = [...rig.desk.levels.filter((each) => each.slot !== at), { universe: UNIVERSE, slot: at, level }];
	return {
		scene: 'show',
		rig: { ...rig, desk: { ...rig.desk, levels } },
		goal: [slot(one, it, quiet(bands)), { is: 'steady', fixture: one.id }, { is: 'lit', fixture: one.id }],
		hands: ['panel', 'power', 'desk'],
		facts: { fixture: one.id, profile: profile.id, by: 'desk', mode, address: one.address, slot: at, level },
	};
}

// A desk with two fixtures patched, for the kinds done at the desk.

/** The one universe of these rigs. */
const UNIVERSE = 1;

/** A fixture as the desk has it, and as it is. */
export interface PatchedFixture {
	readonly profile: Profile;
	readonly mode: string;
	readonly address: number;
	readonly id: string;
}

/**
 * One fixture to work on, a neighbour to leave alone, both on a desk's line and right.
 * @param up the held colour the desk has up on the first; null where it has none
 */
function patched(random: Random, profile: Profile, mode: string, scene: DrillDraft['scene'], up: string | null) {
	const address = random.int(1, 400);
	const one: PatchedFixture = { profile, mode, address, id: idOf(profile, 1) };
	const otherMode = random.pick(ids(TALLOW.modes));
	const other: PatchedFixture = {
		profile: TALLOW,
		mode: otherMode,
		address: address + footprint(profile, mode),
		id: idOf(TALLOW, 2),
	};
	const both = [one, other];
	return {
		one,
		rig: {
			fixtures: both.map((each, i) =>
				fixture(scene, each.profile, i + 1, { work: 'line', mode: each.mode, address: each.address }),
			),
			desk: desk(
				[UNIVERSE],
				both.map((each) => ({ fixture: each.id, universe: UNIVERSE, address: each.address, mode: each.mode })),
				both.flatMap((each) => {
					const held = each === one ? up : random.pick(ids(TALLOW.held));
					return held === null
						? []
						: levelsFor(each.profile, each.mode, { universe: UNIVERSE, address: each.address }, held);
				}),
			),
			...line('desk:a', ids(both)),
		},
	};
}

/** The slots of its mode's chart. */
const slotsOf = ({ profile, mode }: PatchedFixture): readonly Slot[] => modeOf(profile, mode).slots;

/** A slot of its chart, asked to lie in some ranges at the desk. */
const slot = (one: PatchedFixture, at: Slot, within: readonly Range[]): DrillCondition => ({
	is: 'slot',
	universe: UNIVERSE,
	slot: one.address + at.at - 1,
	within,
});

/** Values shown as this percent. */
const shown = (percent: number): Range[] => rangesOf(levelsShownAs(percent));
const isQuiet = ({ effect }: Band): boolean => effect.do === 'open' || effect.do === 'nothing';

/** Values of bands that leave the light alone. */
const quiet = (bands: readonly Band[]): Range[] => bands.filter(isQuiet).map(({ from, to }) => ({ from, to }));

/** Every slot with bands out of the way, but this one. */
function othersQuiet(one: PatchedFixture, but?: Slot): DrillCondition[] {
	return slotsOf(one).flatMap((it) =>
		it.drives.kind === 'bands' && it !== but ? [slot(one, it, quiet(it.drives.bands))] : [],
	);
}
