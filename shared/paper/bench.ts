import { LAST_SLOT, middleOf, switchesFor } from '../dmx/index.ts';
import { bundledProfile, type DipPanel, footprintOf, type Mode, type Profile, type Slot } from '../profile/index.ts';
import { GOOD_WIRES, noBoxes, type RigSheet, type SheetFixture } from '../sheet/index.ts';

/** How one fixture stands on the bench of a question. */
export interface FixtureOnBench {
	readonly profile: Profile;
	readonly mode: Mode;
	/** Start address, 1 to 512. */
	readonly address: number;
	readonly universe?: number;
	/** What the desk sends it, by slot within the fixture, 0 to 255; any other slot stands where it gives light. */
	readonly levels?: Readonly<Record<number, number>>;
	/** A slot within the fixture: where it is a colour, the other colours are out. */
	readonly alone?: number;
}

/**
 * A bench with one fixture on a desk, the levels up: a sheet that a rig opens. Null where the fixture cannot be set so (its
 * footprint would run past 512, or its switches reach neither that address nor that mode).
 */
export function benchWith(stand: FixtureOnBench): RigSheet | null {
	const { profile, mode, address, universe = 1, levels = {}, alone } = stand;
	if (address + footprintOf(mode) - 1 > LAST_SLOT) return null;
	const set = settingOf(profile, mode, address);
	if (!set) return null;
	const isColour = (n: number | undefined): boolean =>
		mode.slots.some(({ at, drives }) => at === n && drives.kind === 'emitter');
	const lit = (n: number): number => {
		if (n === alone) return isColour(n) ? 255 : litLevel(profile, mode, n);
		return isColour(alone) && isColour(n) ? 0 : litLevel(profile, mode, n);
	};
	const up = Array.from({ length: footprintOf(mode) }, (_, i) => levels[i + 1] ?? lit(i + 1));
	const id = `${profile.shape}-1`;
	return {
		version: 1,
		name: profile.name,
		hall: { width: 8, height: 6 },
		fixtures: [
			{
				id,
				name: profile.name,
				profile: profile.id,
				place: { x: 4, y: 0, throw: 3, overhead: false },
				...set,
				on: true,
				plug: profile.power.battery ? 'none' : 'wall',
				charge: 1,
				hidden: false,
			},
		],
		desk: {
			name: 'desk',
			outputs: [{ id: 'a', universe, on: true }],
			patch: [{ fixture: id, universe, address, mode: mode.id }],
			levels: up.flatMap((level, i) => (level > 0 ? [{ universe, slot: address + i, level }] : [])),
			master: 255,
		},
		cables: [{ id: 'cable-1', kind: 'data', length: 5, from: 'desk:a', to: `${id}:in`, ...GOOD_WIRES }],
		...noBoxes(),
		terminators: [`${id}:out`],
		remote: null,
		profiles: bundledProfile(profile.id) === profile ? [] : [profile],
	};
}

type Setting = Pick<SheetFixture, 'settings' | 'switches' | 'slides'>;

function settingOf({ panel }: Profile, mode: Mode, address: number): Setting | null {
	if (panel.kind !== 'dip') return { settings: { work: 'line', mode: mode.id, address } };
	const slides = slidesFor(panel, mode.id);
	if (!slides || (panel.wiring === 'sum' && address > 511)) return null;
	return { settings: {}, switches: [...switchesFor(address, panel.wiring), false], slides };
}

/** Each slide's position, the mode's own where one slide sets modes; null where none sets this one. */
function slidesFor(panel: DipPanel, mode: string): number[] | null {
	const at = panel.slides.map(({ positions }) => positions.findIndex(({ sets }) => sets.mode === mode));
	return at.some((position) => position >= 0) ? at.map((position) => Math.max(0, position)) : null;
}

/** The level at which a slot gives light and nothing else; ultraviolet stays out. */
function litLevel({ emitters }: Profile, mode: Mode, n: number): number {
	const slot = mode.slots.find(({ at, fine }) => at === n || fine === n);
	if (!slot) return 0;
	const { drives } = slot;
	if (drives.kind === 'intensity') return 255;
	if (drives.kind === 'emitter') return emitters.find(({ id }) => id === drives.emitter)?.ultraviolet ? 0 : 255;
	return drives.kind === 'bands' ? restOf(drives.bands) : 0;
}

/** Where a slot with bands stays out of the way. */
function restOf(bands: Extract<Slot['drives'], { kind: 'bands' }>['bands']): number {
	const rest = bands.find(({ effect }) => effect.do === 'nothing' || effect.do === 'open');
	return rest ? middleOf(rest) : 0;
}
