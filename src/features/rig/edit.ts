import { type Profile, profileAtHand } from '../../../shared/profile/index.ts';
import { type RigSheet, splitPort } from '../../../shared/sheet/index.ts';

/** Metres between fixtures that are set down in a row, and room left at both ends of the wall. */
const PITCH = 2;
const MARGIN = 2;
/** The longest wall, and furthest place along it, that a rig sheet takes, metres. */
const WIDEST = 200;
/** Throw of a fixture that is set down, metres. */
const THROW = 3;

/**
 * The sheet with one more fixture at the end of the row: switched off, unplugged, as it left its maker.
 * A profile of the crew's own goes into the sheet with it.
 * @param kind what the crew calls its like: 'Wash'; a number is put behind
 */
export function withFixture(sheet: RigSheet, profile: Profile, kind: string): RigSheet {
	const id = freeId(sheet.fixtures, profile.shape);
	const last = Math.max(MARGIN - PITCH, ...sheet.fixtures.map(({ place }) => place.x));
	// past the longest wall it goes into the widest gap of the row
	const x = last + PITCH <= WIDEST ? last + PITCH : inWidestGap(sheet.fixtures.map(({ place }) => place.x));
	const name = `${kind} ${id.slice(id.lastIndexOf('-') + 1)}`;
	const isCarried = profileAtHand(profile.id) !== undefined || sheet.profiles.some((each) => each.id === profile.id);
	return {
		...sheet,
		profiles: isCarried ? sheet.profiles : [...sheet.profiles, profile],
		hall: { ...sheet.hall, width: Math.min(WIDEST, Math.max(sheet.hall.width, x + MARGIN)) },
		fixtures: [
			...sheet.fixtures,
			{
				id,
				name,
				profile: profile.id,
				place: { x, y: 0, throw: THROW, overhead: false },
				settings: {},
				on: false,
				plug: 'none',
				charge: 1,
				hidden: false,
			},
		],
	};
}

/** The middle of the widest gap between places, the start of the wall among them: metres along it. */
function inWidestGap(places: readonly number[]): number {
	const along = [0, ...places].sort((a, b) => a - b);
	const gaps = along.slice(1).map((to, i) => ({ from: along[i] ?? 0, wide: to - (along[i] ?? 0) }));
	const { from, wide } = gaps.reduce((best, gap) => (gap.wide > best.wide ? gap : best), { from: 0, wide: 0 });
	return from + wide / 2;
}

/** The sheet without a fixture: what was plugged into it hangs loose, what it fed has no mains. A profile of the crew's own goes with its last. */
export function withoutFixture(sheet: RigSheet, id: string): RigSheet {
	const isGone = (port: string | null) => port !== null && splitPort(port).device === id;
	const gone = sheet.fixtures.find((fixture) => fixture.id === id);
	const stay = sheet.fixtures.filter((fixture) => fixture.id !== id);
	return {
		...sheet,
		profiles: sheet.profiles.filter(
			({ id: own }) => own !== gone?.profile || stay.some(({ profile }) => profile === own),
		),
		fixtures: stay.map((fixture) => (fixture.plug === id ? { ...fixture, plug: 'none' } : fixture)),
		cables: sheet.cables.map((cable) => ({
			...cable,
			from: isGone(cable.from) ? null : cable.from,
			to: isGone(cable.to) ? null : cable.to,
		})),
		terminators: sheet.terminators.filter((port) => !isGone(port)),
		desk: sheet.desk && { ...sheet.desk, patch: sheet.desk.patch.filter(({ fixture }) => fixture !== id) },
	};
}

/** The sheet with a fixture called otherwise. */
export function withName(sheet: RigSheet, id: string, name: string): RigSheet {
	return { ...sheet, fixtures: sheet.fixtures.map((fixture) => (fixture.id === id ? { ...fixture, name } : fixture)) };
}

/** The sheet with a desk of two outputs and nothing patched, if it had none. */
export function withDesk(sheet: RigSheet, name: string): RigSheet {
	const output = (id: string, universe: number) => ({ id, universe, on: true });
	return {
		...sheet,
		desk: sheet.desk ?? { name, outputs: [output('a', 1), output('b', 2)], patch: [], levels: [], master: 255 },
	};
}

/** The first id of a kind that is free: `wash-3`. */
export function freeId(taken: readonly { readonly id: string }[], kind: string): string {
	for (let n = 1; ; n++) if (taken.every(({ id }) => id !== `${kind}-${n}`)) return `${kind}-${n}`;
}
