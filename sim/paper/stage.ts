import { DIP_REACH, switchesFor } from '../../shared/dmx/index.ts';
import {
	bundledProfile,
	type DipPanel,
	type Profile,
	type SettingKey,
	type SomeSettings,
} from '../../shared/profile/index.ts';
import {
	GOOD_WIRES,
	noBoxes,
	type Port,
	type RigSheet,
	type SheetCable,
	type SheetDesk,
	type SheetFixture,
} from '../../shared/sheet/index.ts';
import { ALL_DOWN, settingsFromDip } from '../fixture/index.ts';
import { frameOf, staticLevels } from '../light/index.ts';

/** Metres between fixtures, throw, and length of a data cable. */
const PITCH = 2;
const THROW = 3;
const CABLE = 5;

/** The id of the nth fixture (from 1) on a question's rig: `wash-1`, `bar-2`. */
export const idAt = ({ shape }: Profile, n: number): string => `${shape}-${n}`;

/** What the crew calls it: `wash 1`. */
export const nameAt = (profile: Profile, n: number): string => `${profile.shape} ${n}`;

/**
 * The nth fixture of a question's rig, on mains, its dim curve straight, its display never going dark: what is asked hangs on
 * what is said alone. Null where its switches and slides cannot say these settings.
 */
export function stand(profile: Profile, n: number, settings: SomeSettings): SheetFixture | null {
	const set = setting(profile, settings);
	if (!set) return null;
	return {
		id: idAt(profile, n),
		name: nameAt(profile, n),
		profile: profile.id,
		place: { x: PITCH * n, y: 0, throw: THROW, overhead: false },
		...set,
		on: true,
		plug: 'wall',
		charge: 1,
		hidden: false,
	};
}

type FixtureSetup = Pick<SheetFixture, 'settings' | 'switches' | 'slides'>;

function setting(profile: Profile, settings: SomeSettings): FixtureSetup | null {
	const { panel } = profile;
	if (panel.kind !== 'dip') return { settings: { sleep: 0, lock: 'off', curve: 'straight', ...settings } };
	const slides = panel.slides.map(({ positions }) => {
		const straight = { curve: 'straight', ...settings } as const;
		const at = positions.findIndex(({ sets }) => agrees(sets, straight));
		return Math.max(0, at);
	});
	const switches = switchesSaying(panel, settings);
	if (!switches) return null;
	// one that dims by another curve, and has no slide for it, does not show what a chart says of its intensity
	return agrees({ curve: 'straight', ...settings }, settingsFromDip(profile, panel, switches, slides))
		? { settings: {}, switches, slides }
		: null;
}

/** Whether none of these settings is another in those. */
const agrees = (some: SomeSettings, all: SomeSettings): boolean =>
	Object.entries(some).every(([key, value]) => {
		const other = all[key as SettingKey];
		return other === undefined || other === value;
	});

/** Nine switches as an address, or the tenth up and each field at the first choice that agrees; null past their reach. */
function switchesSaying(panel: DipPanel, settings: SomeSettings): boolean[] | null {
	const { work = 'line', address = 1 } = settings;
	if (work === 'line') {
		return address > DIP_REACH[panel.wiring].highest ? null : [...switchesFor(address, panel.wiring), false];
	}
	const switches = ALL_DOWN.map((_, i) => i === 9);
	for (const { switches: numbers, choices } of panel.fields) {
		// a choice that sets what is asked comes before one that merely does not speak of it
		const fits = choices.flatMap(({ sets }, i) => (agrees(sets, settings) ? [i] : []));
		const says = fits.find((i) => Object.keys(choices[i]?.sets ?? {}).some((key) => key in settings)) ?? fits[0] ?? 0;
		for (const [bit, number] of numbers.entries()) switches[number - 1] = (says & (2 ** bit)) !== 0;
	}
	return switches;
}

/** Data cables from a first socket (null: from the first fixture on) through every fixture, and a terminator in the last. */
export function lineThrough(first: Port | null, ids: readonly string[]): Pick<RigSheet, 'cables' | 'terminators'> {
	const cables = ids.flatMap((id, i): SheetCable[] => {
		const from = i === 0 ? first : `${ids[i - 1]}:out`;
		return from === null
			? []
			: [{ id: `cable-${id}`, kind: 'data', length: CABLE, from, to: `${id}:in`, ...GOOD_WIRES }];
	});
	return { cables, terminators: ids.length > 0 ? [`${ids.at(-1)}:out`] : [] };
}

/** A desk with one output that carries universe 1, its master full. */
export function deskWith(patch: SheetDesk['patch'], levels: ReadonlyMap<number, number>): SheetDesk {
	return {
		name: 'desk',
		outputs: [{ id: 'a', universe: 1, on: true }],
		patch,
		levels: [...levels].flatMap(([slot, level]) => (level > 0 ? [{ universe: 1, slot, level }] : [])),
		master: 255,
	};
}

/** Levels by slot that bring up one held colour of a fixture from a desk. */
export function levelsOf(profile: Profile, mode: string, address: number, held: string): Map<number, number> {
	const levels = new Float32Array(profile.cells * profile.emitters.length);
	staticLevels(
		profile,
		profile.held.findIndex(({ id }) => id === held),
		levels,
	);
	return new Map([...frameOf(profile, mode, levels, 1)].map((level, i) => [address + i, level]));
}

/** A whole sheet of a question's rig. */
export function sheetFor(
	name: string,
	profiles: readonly Profile[],
	rest: Pick<RigSheet, 'fixtures'> & Partial<RigSheet>,
): RigSheet {
	return {
		version: 1,
		name,
		hall: { width: Math.max(8, PITCH * (rest.fixtures.length + 1)), height: 6 },
		desk: null,
		...noBoxes(),
		cables: [],
		terminators: [],
		remote: null,
		profiles: profiles.filter(
			(profile, i) => bundledProfile(profile.id) !== profile && profiles.indexOf(profile) === i,
		),
		...rest,
	};
}
